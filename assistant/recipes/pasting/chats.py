"""A chat in which somebody tells a recipe -> what was said, without the names and times in front of it."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from assistant.recipes.lines import any_of, read_line, words
from assistant.recipes.listing import items
from assistant.recipes.pasting.marks import Line

FEWEST_SAID, MOST_NAMES, LONGEST_NAME, LONGEST_LEAD = 3, 6, 24, 40
_FIGURE = re.compile(r"\d|[½¼¾⅐-⅞]")
_LEAD = re.compile(r"(?:^|(?<=\s))(?=[\d½¼¾⅐-⅞])")
_STAMP = r"(?:\[[^\]\n]{4,32}\]\s*|\d{1,4}[/.:-]\d{1,2}[^A-Za-z\n]{0,16}(?:[ap]\.?m\.?)?\s*[-–,]?\s*)"
_SAID = re.compile(
    rf"^\s*(?P<stamp>{_STAMP})?[<@]?(?P<name>[^\W\d_][\w.' -]{{0,{LONGEST_NAME}}}?)>?\s*:\s+(?P<said>\S.*)$"
)


def _is_heading(name: str) -> bool:
    low = name.strip().lower()
    last = low.split()[-1]
    headings = {word for kind in ("ingredients", "steps", "notes") for word in words("headings", kind)}
    facts = (word for kind in ("prep", "cook", "total", "flour", "dough") for word in words("facts", kind))
    other = (*facts, *words("yields", "lead"))
    return low in headings or low in other or last in words("headings", "parts") or low in words("steps", "verbs")


def speakers_dropped(lines: Sequence[Line]) -> list[Line]:
    """What was said in a chat, line by line, each by itself; any other text as it is.

    >>> chat = [Line("Mo: 2 eggs, 1 cup milk"), Line("Mo: whisk"), Line("Al: how long?"), Line("Mo: 20 min at 180C")]
    >>> [(line.text, line.mark) for line in speakers_dropped(chat)]
    [('2 eggs', 'said'), ('1 cup milk', 'said'), ('whisk', 'said'), ('how long?', 'note'), ('20 min at 180C', 'said')]
    """
    found = [_SAID.match(line.text) for line in lines]
    names = Counter(m["name"] for m in found if m and not _is_heading(m["name"]))
    said = sum(names.values())
    stamped = sum(bool(m and m["stamp"]) for m in found)
    again = said > len(names) or stamped >= FEWEST_SAID
    if said < FEWEST_SAID or len(names) > MOST_NAMES or not again or said * 2 < len(lines):
        return list(lines)
    told = Counter(m["name"] for m in found if m and m["name"] in names and _FIGURE.search(m["said"]))
    teller = max(told, key=lambda name: told[name], default="")
    heard: list[Line] = []
    for line, m in zip(lines, found, strict=True):
        if not m or m["name"] not in names:
            heard.append(line)
        elif m["said"].rstrip().endswith("?") or not (m["name"] == teller or _FIGURE.search(m["said"])):
            heard.append(replace(line, text=m["said"], mark="note"))
        else:
            heard += [replace(line, text=text, mark="said") for text in _pieces(m["said"])]
    return heard


def _pieces(said: str) -> list[str]:
    """A message as the list in it, with what leads up to it, or as the one line that it is."""
    if listed := items(said):
        return list(listed)
    for lead in (m.end() for m in _LEAD.finditer(said) if m.end() < LONGEST_LEAD):
        first = read_line(said[lead:].split(",")[0])
        if first and (first.unit or first.known) and (listed := items(said[lead:])):
            part = re.search(rf"\b{any_of('headings', 'parts')}", said[:lead], re.IGNORECASE)
            return [f"For the {part[0].lower()}:" if part else said[:lead].strip(" ,"), *listed]
    return [said]
