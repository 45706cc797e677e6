"""Several answers as one: the answer of each in a paragraph, and what is noted or warned of once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.replies.sentences import worded
from assistant.replies.template_files import environment
from assistant.replies.wording import sections
from rules.model import Answer, Units
from rules.said import sentences

say = sentences("replies/together")
JOINS = ("and", "also", "plus", "n", "&", "then")


def together(answers: Sequence[Answer], text: str, left_out: Sequence[str] = ()) -> Answer:
    """One answer of several that are in words.

    text: the utterance that asked for them; left_out: what else it asked, in its own words
    """
    parts = [sections(answer) for answer in answers]
    units = answers[0].request.units
    out = lines_left_out(left_out, units)
    shown = environment("assistant.replies").get_template("several.j2")
    lines = shown.render(
        parts=parts,
        notes=dict.fromkeys(note for part in parts for note in part.notes),
        cautions=dict.fromkeys(caution for part in parts for _, caution in part.warnings),
        left_out=" ".join(out),
    )
    return replace(
        answers[0],
        request=replace(answers[0].request, text=text),
        figures=tuple(figure for answer in answers for figure in answer.figures),
        because=tuple(reason for answer in answers for reason in answer.because),
        cautions=tuple(dict.fromkeys(caution for answer in answers for caution in answer.cautions)),
        missing=answers[-1].missing,
        parts=tuple(answers),
        text=lines.strip(),
        spoken=" ".join(answer.spoken for answer in answers),
    )


def lines_left_out(left_out: Sequence[str], units: Units) -> list[str]:
    """That pieces of an utterance were not answered, a line each, in the words they were asked in."""
    return [worded(say("left-out", words=_bare(words)), units) for words in left_out]


def _bare(words: str) -> str:
    """A piece of an utterance without the signs and words that join it to the others."""
    first, _, rest = words.strip(" ,;.?!").partition(" ")
    return rest if first.casefold() in JOINS else f"{first} {rest}".strip()
