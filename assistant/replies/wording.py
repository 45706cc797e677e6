"""Answer -> its text and spoken line, through the templates."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cache
from importlib.resources import files
from typing import Any

from jinja2 import Environment, FunctionLoader, StrictUndefined, TemplateNotFound

from assistant.replies.figures import figure_line, span_text, value_text
from assistant.replies.speech_text import speakable
from rules import book, tables
from rules.catalogue import marked, topics
from rules.heat.batch_size import gist
from rules.model import Answer, Request
from rules.say import Say

BRIEF = 1


@dataclass(frozen=True, slots=True)
class Sections:
    """The parts of a reply in the order in which they are shown; front ends dress them their own way."""

    headline: str
    notes: tuple[str, ...]
    figures: tuple[str, ...]
    steps: tuple[str, ...]
    because: tuple[str, ...]
    cautions: tuple[tuple[str, str], ...]
    sources: tuple[str, ...]


def dress(answer: Answer) -> Answer:
    """The answer with text and spoken filled in."""
    parts = sections(answer)
    text = _environment().get_template("reply.j2").render(parts=parts).strip()
    return replace(answer, headline=parts.headline, text=text, spoken=_spoken(parts))


def sections(answer: Answer) -> Sections:
    """The answer cut into what is said first, what is noted, and so on; less of it at depth 1."""
    request = answer.request
    say = Say(request.units)
    full = request.depth > BRIEF
    cautions = tuple(c for c in answer.cautions if full or c.level != "note")
    headline = _headline(answer, say)
    return Sections(
        headline=headline,
        notes=_notes(answer, say),
        figures=tuple(figure_line(f, say) for f in answer.figures) if full else (),
        steps=answer.steps if full else (),
        because=tuple(b.text for b in answer.because if b.text != headline) if full else (),
        cautions=tuple((c.level, c.text) for c in cautions if c.text not in headline),
        sources=_sources(answer) if full else (),
    )


@cache
def _environment() -> Environment:
    folder = files("assistant.replies") / "templates"

    def load(name: str) -> str | None:
        path = folder / name
        return path.read_text(encoding="utf-8") if path.is_file() else None

    environment = Environment(
        loader=FunctionLoader(load), undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True, autoescape=False
    )
    environment.filters["at_sea_level"] = lambda figure: replace(figure, value=figure.sea_level)
    return environment


def line(name: str, /, **values: Any) -> str:
    """A line worded by templates/headline/<name>.j2."""
    return " ".join(_environment().get_template(f"headline/{name}.j2").render(**values).split())


def _headline(answer: Answer, say: Say) -> str:
    request = answer.request
    if answer.missing:
        return _ask(request, answer.missing[0])
    if answer.headline:
        return _with_amount(answer.headline, request)
    figures = {f.id: f for f in answer.figures}
    values = {
        "request": request,
        "figures": figures,
        "food": request.dish or "it",
        "gerund": _gerund(request.method),
        "place": say.elevation(request.elevation_m or 0.0),
        "baseline": say.elevation(request.from_elevation_m or 0.0),
        "value": lambda figure: value_text(figure, say),
        "span": lambda figure: span_text(figure, say),
    }
    if not answer.covered and request.topic not in marked("passing"):
        return line("not_covered", **values, topic=topics().get(request.topic))
    for name in (f"{request.topic}_{request.method}", request.topic):
        try:
            return _with_amount(line(name, **values), request)
        except TemplateNotFound:
            continue
    return line("not_covered", **values, topic=topics().get(request.topic))


def _with_amount(headline: str, request: Request) -> str:
    """A time with what the amount does to it, where one was said."""
    more = gist(request) if request.topic == "time" else ""
    return f"{headline} {more}".rstrip() if more not in headline else headline


def _ask(request: Request, word: str) -> str:
    """The question that asks for what is missing; a value that cannot be right is asked back by its reason."""
    doubt = next((u.reason for u in request.unused if u.kind == word and u.reason), None)
    if doubt:
        return doubt
    asks = topics()[request.topic].ask if request.topic in topics() else {}
    return asks.get(word) or line("missing", word=word, food=request.dish or "it", gerund=_gerund(request.method))


@cache
def _gerunds() -> dict[str, str]:
    return {row["id"]: row["gerund"] for row in tables.read_toml("lexicon/methods.toml")["method"]}


def _gerund(method: str | None) -> str:
    return _gerunds().get(method or "", "cooking")


def _notes(answer: Answer, say: Say) -> tuple[str, ...]:
    """What was assumed, and what was heard but could not be used."""
    request = answer.request
    asked = answer.missing[0] if answer.missing else None
    notes = [u.reason for u in request.unused if u.reason and u.kind != asked]
    if request.elevation_from == "place" and request.elevation_m is not None:
        taken = say.elevation(request.elevation_m)
        notes.append(f"Elevation taken as {taken}, from the place you named; a town is seldom flat.")
    return tuple(dict.fromkeys(notes))


def _sources(answer: Answer) -> tuple[str, ...]:
    used = [i for b in answer.because for i in b.sources] + [i for c in answer.cautions for i in c.sources]
    return cited(used)


def cited(ids: Iterable[str]) -> tuple[str, ...]:
    """The entries of the bibliography as a reader sees them, in the order asked for, each once."""
    return tuple(_cite(source) for source in book.sources_of(tuple(ids)))


def _cite(source: tables.Source) -> str:
    unread = source.basis == "from memory" and source.short != source.basis
    return f"{source.short} (from memory)" if unread else source.short


def _spoken(parts: Sections) -> str:
    """The headline, and the gravest caution if there is one worth interrupting for."""
    grave = next((text for level, text in parts.cautions if level == "stop"), None)
    grave = grave or next((text for level, text in parts.cautions if level == "warn"), None)
    first = speakable(parts.headline)
    if not grave or grave in parts.headline:
        return first
    return f"{first} {speakable(grave.split('. ')[0].rstrip('.'))}."
