"""Lines that were broken in the middle of a sentence or of an ingredient -> whole lines."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from assistant.reading.units import spellings, unit_of
from assistant.recipes.lines import any_of, read_line
from assistant.recipes.looks import heading, is_unmeasured, like_step, measured
from assistant.recipes.pasting.marks import Line
from assistant.recipes.pasting.scanned import hyphened_words
from assistant.recipes.yields import read_yields

SHORTEST_BROKEN, LONGEST_NAME, LONG_TITLE = 14, 5, 28
# how far a line that grows is looked at, and how long it may become
SEEN, LONGEST = 300, 8_000
# of how wide a column its full lines are at least
FULL = 0.8
_ENDED = re.compile(r"[.!?:;][)\"'”’]*\s*$")
_GOES_ON = re.compile(rf"(?:\b{any_of('lines', 'goes_on')}|[,&+/(–—]|\b\d+(?:[./]\d+)?)$", re.IGNORECASE)
_NEW_SENTENCE = re.compile(r"[.!?]\s+[A-Z]")
_FIRST = re.compile(r"\S+")


def joined(lines: Sequence[Line]) -> list[Line]:
    """Whole lines.

    >>> [line.text for line in joined([Line("Beat butter and sugar until"), Line("pale. Add eggs.")])]
    ['Beat butter and sugar until pale. Add eggs.']
    """
    blocks = list(_blocks(lines))
    narrow = any(_is_broken(block) and like_step(block[0].text) for block in blocks)
    return [line for block in blocks for line in _unbroken(block, narrow)]


def _blocks(lines: Sequence[Line]) -> Iterator[list[Line]]:
    """Runs of lines without a blank one between them."""
    block: list[Line] = []
    for line in lines:
        if block and line.apart:
            yield block
            block = []
        block.append(line)
    if block:
        yield block


def _unbroken(block: list[Line], narrow: bool) -> Iterator[Line]:
    width = max(len(line.text) for line in block)
    prose = _is_broken(block)
    whole, before = block[0], block[0].text
    for line in block[1:]:
        free = not line.mark and whole.mark != "note"
        if free and narrow and _is_rest(whole.text, line.text, len(block)):
            whole = replace(whole, text=f"{whole.text} {line.text}")
        elif free and _continues(whole.text, before, line.text, width, prose):
            whole = replace(whole, text=_put_together(whole.text, line.text))
        else:
            yield whole
            whole = line
        before = line.text
    yield whole


def _is_rest(whole: str, line: str, count: int) -> bool:
    """Whether a word or two are the end of a title or yield that did not fit on its line, in a narrow column."""
    little = len(line.split()) < 3 and not (measured(line) or read_yields(line) or _ENDED.search(whole))
    title = count == 2 and len(whole) >= LONG_TITLE and not measured(whole) and not heading(line)
    return little and (title or (read_yields(whole) is not None and line[:1].islower()))


def _is_broken(block: Sequence[Line]) -> bool:
    """Whether the sentences of a block run on over its lines: those begin with capitals, and lines do not."""
    texts = [line.text for line in block if line.mark != "note"]
    starts = [text for text in texts if text[:1].islower()]
    behind_an_end = sum(bool(_ENDED.search(a)) and b[:1].islower() for a, b in pairwise(texts))
    writes_capitals = any(_NEW_SENTENCE.search(text) for text in texts) or (texts[:1] and texts[0][:1].isupper())
    return bool(starts) and bool(writes_capitals) and not behind_an_end and bool(texts) and not texts[0][:1].islower()


def _continues(whole: str, before: str, line: str, width: int, prose: bool) -> bool:
    """Whether a line goes on with the one before it. whole: that one with what was joined to it already"""
    if len(whole) > LONGEST or heading(line) or heading(whole) or read_yields(line):
        return False
    end, whole = whole[-SEEN:], whole[:SEEN]
    if measured(whole) and not like_step(whole):
        return _completes(whole, line)
    if _GOES_ON.search(end) and len(whole) >= SHORTEST_BROKEN:
        return not (measured(line, known=True) and end.endswith((",", "+", "&")) and not like_step(whole))
    if not prose or not (like_step(whole) or len(whole.split()) > LONGEST_NAME):
        return False
    if not _ENDED.search(end):
        return line[:1].islower() or line[:1].isdigit()
    first = _FIRST.match(line)
    return len(before) >= FULL * width and first is not None and len(before) + 1 + len(first[0]) > width


def _completes(whole: str, line: str) -> bool:
    """Whether a line is the rest of an ingredient: "1 cup packed light" and "brown sugar"."""
    if whole.endswith("(") or whole.count("(") > whole.count(")"):
        return True
    bare_unit = line.split()[0].lower().strip(".,") in spellings()
    if re.search(r"\d$", whole) and bare_unit:
        return True
    cut = re.search(r"\d\s+([A-Za-z]+)$", whole)
    if cut and unit_of(cut[1]) is not None and line[:1].islower():
        return True
    if measured(line) or is_unmeasured(line) or (not line[:1].islower() and line[:1] != "("):
        return False
    read, more = read_line(whole), read_line(f"{whole} {line}")
    return bool(
        read
        and more
        and (
            (more.known and (not read.known or _names_both(more.item, read.item, line)))
            or re.search(r"(?:,|\b(?:or|and|with|of))$", whole)
        )
    )


def _names_both(item: str, begun: str, line: str) -> bool:
    """Whether an ingredient is called by words of both lines: "whole wheat" and "flour"."""
    named, rest = set(item.lower().split()), line.lower().strip(" .").split(",")[0].split()
    return item != begun and bool(named & set(begun.lower().split())) and bool(rest) and set(rest) <= named


def _put_together(whole: str, line: str) -> str:
    """A line with what goes on behind it; a hyphen at the end of a line parts a word, or belongs to it."""
    parted, rest = re.search(r"(?<![\w-])([a-z]+)-$", whole[-40:]), re.match(r"[a-z]+", line)
    if not parted or not rest:
        return f"{whole} {line}"
    return f"{whole}{line}" if f"{parted[1]}-{rest[0]}" in hyphened_words() else f"{whole[:-1]}{line}"
