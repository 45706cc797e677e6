"""What is in the stores already: a list or a table of amounts, in grams by item."""

from __future__ import annotations

import csv
import re
from dataclasses import dataclass

from assistant.planning.items import item_of
from assistant.recipes.lines import read_line
from rules.amounts.stores import kept
from rules.foods.dishes import dishes
from rules.said import Said, sentences

MOST_BYTES, MOST_LINES = 1024 * 1024, 5000
_PACKED = re.compile(
    r"^\s*(?P<count>\d+(?:\.\d+)?)\s+(?:#\s?10\s+)?(?P<pack>[a-z]+)\s+(?:of\s+)?(?P<item>.+)$", re.IGNORECASE
)
# packs that are named by a word of their own
CANS = {"no10": "can"}
# a figure in front of a sign of something missing
_NEGATIVE = re.compile(r"[-−]\s*\d")
say = sentences("planning/order")


@dataclass(frozen=True, slots=True)
class OnHand:
    """Grams by item; what could not be read, a sentence each."""

    grams: dict[str, float]
    faults: tuple[Said, ...]


def read_on_hand(content: bytes) -> OnHand:
    """Read a list of what there is: "20 lb flour", "3 cans tomatoes", "flour, 20 lb"."""
    if len(content) > MOST_BYTES or b"\x00" in content:
        return OnHand({}, (say("stock-unreadable"),))
    text = content.decode("utf-8-sig", errors="replace")
    grams: dict[str, float] = {}
    faults = []
    for at, row in enumerate(text.splitlines()[:MOST_LINES], start=1):
        line = row.strip()
        if not line or line.startswith("#"):
            continue
        found = _amount(line)
        if found is None:
            faults.append(say("stock-line", line=at, text=line[:80]))
        else:
            grams[found[0]] = grams.get(found[0], 0.0) + found[1]
    return OnHand(grams, tuple(faults))


def _amount(line: str) -> tuple[str, float] | None:
    """The item of a line and its grams."""
    if _NEGATIVE.search(line):
        return None
    cells = [cell.strip() for cell in next(csv.reader([line]), [])]
    if len(cells) >= 2 and not cells[0][:1].isdigit():
        # a table with the item first, its amount and perhaps the unit behind
        line = " ".join((*cells[1:3], cells[0]))
    if packs := _in_packs(line):
        return packs
    read = read_line(line)
    if read is None or read.amount is None:
        return None
    item = item_of(read.item)
    if read.mass_g:
        return item, read.mass_g
    each = kept(item).each_g
    return (item, read.amount * each) if each and read.unit in (None, "piece") else None


def _in_packs(line: str) -> tuple[str, float] | None:
    """So many packs, as the supplier sells them: 3 cans of tomatoes, 2 cases spaghetti."""
    found = _PACKED.match(line)
    if not found:
        return None
    for named in (f"canned {found['item']}", found["item"]):
        item = item_of(named)
        of = kept(item, dishes()[item].dish_class if item in dishes() else "")
        if of.grams and found["pack"].lower().rstrip("s") == CANS.get(of.pack, of.pack):
            return item, float(found["count"]) * of.grams
    return None
