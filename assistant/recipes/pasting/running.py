"""A recipe that runs on without line breaks -> its lines: inner headings, sentences, lists in a sentence."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache
from itertools import pairwise

from assistant.recipes.lines import any_of, words
from assistant.recipes.listing import begins_measured, items, run_together
from assistant.recipes.looks import heading, is_afterword, like_step, measured
from assistant.recipes.pasting.marks import Line
from assistant.recipes.steps import read_step

# how long a line is at least that holds a whole recipe, and how few lines there are then
LONG, FEW_LINES, LONGEST_TITLE = 80, 2, 9
# a longer line is none that somebody wrote
LONGEST = 20_000
# spoken text has a sign in so many words at most
SPOKEN_WORDS_A_SIGN, FEWEST_SPOKEN = 30, 3
_FLAGS = re.IGNORECASE
_SENTENCE = re.compile(
    r"""(?<=[a-z)\]\d°½¼¾"'℃℉CFT!?])[.!?]+\s+(?=["'(]?[A-Z\d])      # behind a sentence the next one begins
    (?<!\b[Tt]sp\.\ )(?<!\b[Tt]bsp\.\ )(?<!\blb\.\ )(?<!\boz\.\ )(?<!\blbs\.\ )
    (?<!\bmin\.\ )(?<!\bhr\.\ )(?<!\bpkg\.\ )""",
    re.VERBOSE,
)
_HEIGHT = re.compile(r"\d[\d,]*\s*(?:ft|feet|metres|meters|masl|m)\b", _FLAGS)
_NUMBERED = re.compile(r"(?:^|(?<=[.;!)\s]))\s*\(?\d{1,2}[.)]\s+(?=[A-Z])")


@cache
def _inner_heading() -> re.Pattern[str]:
    """A heading with its colon that stands inside a line: "... Method:"."""
    names = sorted(
        {w for kind in ("ingredients", "steps", "notes") for w in words("headings", kind) if len(w) > len("note")},
        key=len,
        reverse=True,
    )
    told = "|".join(re.escape(name).replace(r"\ ", r"\s+") for name in names)
    return re.compile(rf"(?:^|(?<=[.;,!)\s]))(?P<name>(?i:{told}))\s*(?:\([^()]{{1,30}}\)\s*)?:\s+(?=\S)")


def apart(lines: Sequence[Line]) -> list[Line]:
    """Lines with what runs on within one put on lines of its own.

    >>> [line.text for line in apart([Line("Rolls. Ingredients: 500 g flour; 1 egg. Method: Mix. Bake 20 minutes.")])]
    ['Rolls.', 'Ingredients:', '500 g flour', '1 egg.', 'Method:', 'Mix.', 'Bake 20 minutes.']
    """
    found: list[Line] = []
    for line in lines:
        pieces = _by_headings(line.text) if len(line.text) <= LONGEST else []
        found += [replace(line, text=text, apart=line.apart and not i) for i, text in enumerate(pieces)] or [line]
    if len(found) > FEW_LINES:
        return found
    return [piece for line in found for piece in (_told(line) if len(line.text) > LONG else [line])]


def _by_headings(text: str) -> list[str]:
    """A line cut at the headings inside it, where one of them is not at its beginning."""
    cuts = [m for m in _inner_heading().finditer(text) if m["name"][:1].isupper() or m.start() == 0]
    if not any(m.start() for m in cuts):
        return []
    pieces = [text[: cuts[0].start()].strip()]
    for m, end in zip(cuts, [*(m.start() for m in cuts[1:]), len(text)], strict=True):
        rest = text[m.end() : end].strip()
        pieces += [m[0].strip(), *(_sentences(rest) if _heads_steps(m["name"]) else run_together(rest))]
    return [piece for piece in pieces if piece]


def _heads_steps(name: str) -> bool:
    return " ".join(name.lower().split()) not in words("headings", "ingredients")


def _sentences(text: str) -> list[str]:
    """The sentences of a text, or its numbered steps."""
    if len(_NUMBERED.findall(text)) > 1:
        return [piece.strip() for piece in _NUMBERED.split(text) if piece.strip()]
    cuts = [0, *(m.end() for m in _SENTENCE.finditer(text)), len(text)]
    return [text[a:b].strip() for a, b in pairwise(cuts) if text[a:b].strip()]


def _told(line: Line) -> Iterator[Line]:
    """A whole recipe in one line, as lines: what it is called, what goes in, what is done."""
    spoken = _spoken(line.text)
    name, _, told = line.text.partition(": ")
    if told and not spoken and _names_it(name) and not run_together(told)[1:]:
        texts = [f"{name}.", *_sentences(told)]
    else:
        texts = spoken or _sentences(line.text)
    pieces = [piece for text in texts for piece in _listed(text)]
    for i, piece in enumerate(pieces):
        yield replace(_placed(piece, first=not i, spoken=bool(spoken)), apart=line.apart and not i)


def _names_it(name: str) -> bool:
    """Whether what stands before the first colon is what the recipe is called, and no heading or request."""
    short = len(name.split()) <= LONGEST_TITLE and not any(char in ".!?,;" or char.isdigit() for char in name)
    return short and not title_in(name) and heading(f"{name}:") is None and not like_step(name)


def _listed(text: str) -> list[str]:
    """A sentence as the list that it is, with what leads up to it by itself; else whole."""
    lead, colon, rest = text.partition(":")
    listed = run_together(rest.strip()) if colon and not measured(lead) else []
    return [f"{lead.strip()}:", *listed] if len(listed) > 1 else run_together(text)


def _placed(piece: str, *, first: bool, spoken: bool) -> Line:
    """A piece of a recipe told in one line, marked where it can be nothing but a title or a step."""
    if called := title_in(piece):
        return Line(called, "title")
    bare = _fillers().sub("", piece).strip(" .:")
    short = len(bare.split()) <= LONGEST_TITLE
    if first and short and bare and not measured(bare) and (spoken or not like_step(piece)):
        return Line(bare, "title")
    done = read_step(piece) if len(piece.split()) > FEW_LINES else None
    about = bool(_HEIGHT.search(piece)) and not (done and (done.times or done.temperatures))
    begun = not items(piece) and not begins_measured(piece)
    if (
        begun
        and not about
        and (like_step(bare) or (done and (done.times or done.temperatures)) or (spoken and not first))
    ):
        return Line(piece, "step")
    return Line(piece, "note" if begun and (about or is_afterword(piece)) else "")


def title_in(text: str) -> str:
    """What a recipe is called where somebody asks for it: "can you convert my plum cake please:".

    >>> title_in("Could you adjust my plum cake for me, please:"), title_in("Fold in the flour.")
    ('plum cake', '')
    """
    found = _asked().search(text)
    return found["title"].strip() if found and len(found["title"].split()) <= LONGEST_TITLE else ""


@cache
def _asked() -> re.Pattern[str]:
    return re.compile(
        rf"\b{any_of('lines', 'asked_by')}\s+(?:me\s+)?(?:my|our|this|the|your|these|a|an)?\s*"
        r"(?P<title>[a-z][\w' -]{2,50}?)"
        r"(?:\s+(?:recipe|one))?(?=\s+(?:please|for|to|from|at|up)\b|\s*[:?!,.]|$)",
        _FLAGS,
    )


@cache
def _fillers() -> re.Pattern[str]:
    return re.compile(rf"^(?:{any_of('lines', 'spoken_fillers')}[\s,]+)+", _FLAGS)


def _spoken(text: str) -> list[str]:
    """A text that was spoken, without the signs of writing, cut where the speaker goes on to something else."""
    signs = len(re.findall(r"[.,;:!?](?=\s|$)", text))
    if signs * SPOKEN_WORDS_A_SIGN > len(text.split()):
        return []
    pieces = [""]
    for piece in re.split(rf"\s+(?={any_of('lines', 'spoken_cuts')})", text, flags=_FLAGS):
        short = len(pieces[-1].split()) < FEWEST_SPOKEN
        pieces = [*pieces[:-1], f"{pieces[-1]} {piece}".strip()] if short else [*pieces, piece]
    return pieces
