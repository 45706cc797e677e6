"""The two temperatures of fat that food goes into twice: blanched at 150, finished at 180."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.reading.units import to_si
from assistant.understanding.cue_words import cues

FAT, STAGES = frozenset(cues("fried_twice", "fat")), frozenset(cues("fried_twice", "stages"))
OTHER = frozenset(cues("fried_twice", "other"))
# how hot fat is that food is fried in
IN_C, IN_F = (115.0, 205.0), (240.0, 400.0)
FURTHEST, SECOND = 9, "second"


def temperatures_c(doc: Doc) -> tuple[float, ...]:
    """Both temperatures [degC], in the order said; none where food is fried once."""
    words = norms(doc)
    if FAT.isdisjoint(words) or STAGES.isdisjoint(words):
        return ()
    # 185 second is the second fat, and no length of time
    degrees = {m.start for m in doc._.measures if m.kind in ("temperature", "degree") or words[m.end - 1] == SECOND}
    taken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)} - degrees
    told = [(n.start, n.value) for n in doc._.numbers if n.start not in taken and not _counts(words, n.end)]
    for (first, one), (second, two) in pairwise(told):
        between = words[first + 1 : second]
        if len(between) > FURTHEST or STAGES.isdisjoint((*between, *words[max(0, first - 2) : first])):
            continue
        for (low, high), unit in ((IN_C, "degC"), (IN_F, "degF")):
            if low <= min(one, two) and max(one, two) <= high and one != two:
                return to_si(one, unit), to_si(two, unit)
    return ()


def _counts(words: Sequence[str], behind: int) -> bool:
    """Whether a number counts something else: 150 portions, 180 covers, 300 g."""
    return behind < len(words) and words[behind] in OTHER
