"""Answer -> its text and spoken line, through the templates."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from assistant.replies import shown
from assistant.replies.figures import figure_line
from assistant.replies.headline import headline as headline_of
from assistant.replies.quantities import Say
from assistant.replies.sentences import worded
from assistant.replies.speech_text import speakable
from assistant.replies.template_files import environment
from assistant.replies.worded import in_words
from rules import book, tables
from rules.catalogue import marked
from rules.model import Answer
from rules.said import Said, elevation, sentences

say = sentences("replies/wording")


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

    @property
    def reasons(self) -> tuple[str, ...]:
        """The reasons as they stand in a text: the first with what it is before it."""
        first, *others = self.because or ("",)
        return (worded(say("why", text=first), "us"), *others) if first else ()

    @property
    def warnings(self) -> tuple[tuple[str, str], ...]:
        """The cautions, each with its level, as they stand in a text."""
        return tuple((level, worded(_warning(level, text), "us")) for level, text in self.cautions)

    @property
    def told(self) -> tuple[str, ...]:
        """Reasons, then warnings, a line each."""
        return (*self.reasons, *(text for _, text in self.warnings))


def _warning(level: str, text: str) -> Said:
    return say("stop", text=text) if level == "stop" else say("take-care", text=text)


def dress(answer: Answer) -> Answer:
    """The answer in words, with text and spoken filled in."""
    answer = in_words(answer)
    parts = sections(answer)
    text = environment("assistant.replies").get_template("reply.j2").render(parts=parts).strip()
    return replace(answer, headline=parts.headline, text=text, spoken=_spoken(parts))


def sections(answer: Answer) -> Sections:
    """The answer cut into what is said first, what is noted, and so on; less of it at a lesser depth."""
    units, headline, notes = Say(answer.request.units), headline_of(answer), _notes(answer)
    steps, because = shown.steps(answer), shown.reasons(answer, headline)
    cautions = tuple((c.level, str(c.text)) for c in shown.cautions(answer, headline))
    beside = (*steps, *(text for _, text in cautions))
    figures, sources = shown.figures(answer, headline, beside, units), _sources(answer)
    if answer.request.depth == shown.USUAL and "\n" not in headline:
        others = 1 + len(notes) + len(because) + len(cautions) + bool(sources)
        figures, steps = shown.fitted(figures, steps, others)
    return Sections(
        headline=headline,
        notes=notes,
        figures=tuple(figure_line(f, units) for f in figures),
        steps=steps,
        because=because,
        cautions=cautions,
        sources=sources,
    )


def _notes(answer: Answer) -> tuple[str, ...]:
    """What was assumed, and what was heard but could not be used."""
    request = answer.request
    asked = answer.missing[0] if answer.missing else None
    notes = [u.reason for u in request.unused if u.reason and u.kind != asked]
    placed = request.elevation_from == "place" and request.elevation_m is not None
    if placed and (answer.figures or answer.missing) and request.topic not in marked("passing"):
        taken = elevation(request.elevation_m or 0.0)
        named = say("taken-from-named", name=request.place, elevation=taken) if request.place else None
        notes.append(named or say("taken-from-place", elevation=taken))
    return tuple(dict.fromkeys(worded(note, request.units) for note in notes))


def _sources(answer: Answer) -> tuple[str, ...]:
    full = answer.request.depth > shown.USUAL
    return (
        cited(shown.cited(answer))
        if full
        else tuple(s.short for s in book.sources_of(shown.cited(answer)))[: shown.MOST_SOURCES]
    )


def cited(ids: Iterable[str]) -> tuple[str, ...]:
    """The entries of the bibliography as a reader sees them, in the order asked for, each once."""
    return tuple(_cite(source) for source in book.sources_of(tuple(ids)))


def _cite(source: tables.Source) -> str:
    unread = source.basis == "from memory" and source.short != source.basis
    return worded(say("from-memory", short=source.short), "us") if unread else source.short


def _spoken(parts: Sections) -> str:
    """The headline, and the gravest caution if there is one worth interrupting for."""
    grave = next((text for level, text in parts.cautions if level == "stop"), None)
    grave = grave or next((text for level, text in parts.cautions if level == "warn"), None)
    first = speakable(parts.headline.partition("\n")[0])
    if not grave or grave in parts.headline:
        return first
    return f"{first} {speakable(grave.split('. ')[0].rstrip('.'))}."
