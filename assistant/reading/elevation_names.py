"""Places as elevations: towns by name, the sea and the valleys, and a town with its figure as one."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

from assistant.reading import places
from assistant.reading.spans import Elevation, Found
from assistant.reading.units import to_si
from assistant.understanding.cue_words import cues
from assistant.understanding.spelling import plain_words
from rules.physics.units import M_PER_FT

# before the sea level that a barometer's figure is corrected to, and within so many words
REDUCED_TO, REACH = frozenset(cues("elevation", "reduced_to")), 3
OF_AIR = frozenset(cues("elevation", "of_air"))
PLACE_LEADS, SEA, LEVEL = cues("elevation", "place_leads"), cues("elevation", "sea"), cues("elevation", "level")
COASTS = tuple(phrase.split() for phrase in cues("elevation", "coasts"))
LOWLANDS = tuple(phrase.split() for phrase in cues("elevation", "lowlands"))
ADDRESS, NO_ADDRESS_BEFORE = cues("elevation", "address"), cues("elevation", "no_address_before")
FOOD_BEHIND, PARTED = cues("elevation", "food_behind"), cues("elevation", "parted")
FOODS = ("dish", "ingredient")
# a town and a figure are one kitchen where they stand so near each other, in words and in height
NEAR_WORDS, NEAR_M, NEAR_PART = 6, 250.0, 0.15
# words that may stand between a lowland and its figure: the valley at 4,500 ft
TO_FIGURE = ("at", "(", "is", "=", "of", ",")


def named(words: Sequence[str], found: Sequence[Found]) -> list[Elevation]:
    """Places by name, but those in an address or in the name of a dish.

    A name that is also an everyday word needs a word of place before it.
    """
    heard = [f for f in found if f.kind == "place" and _is_place(words, f) and not _is_address(words, f)]
    kept = [f for f in heard if not _names_food(words, f, found, alone=len(heard) == 1)]
    return [Elevation(f.start, f.end, 0.0, "", "here", f.id) for f in kept]


def _is_place(words: Sequence[str], found: Found) -> bool:
    if len(found) > 1 or words[found.start] not in plain_words():
        return True
    return len(words) == 1 or (found.start > 0 and words[found.start - 1] in PLACE_LEADS)


def _is_address(words: Sequence[str], found: Found) -> bool:
    """12 Denver Street, Aspen Ave."""
    behind = words[found.end] if found.end < len(words) else ""
    return behind in ADDRESS and not (found.end + 1 < len(words) and words[found.end + 1] in NO_ADDRESS_BEFORE)


def _names_food(words: Sequence[str], place: Found, found: Sequence[Found], *, alone: bool) -> bool:
    """Santa Fe enchiladas, Madras curry: a town before its dish, with no word of place before it.

    alone: whether no other place is named; then only towns that are known to name dishes do
    """
    if place.start and words[place.start - 1] in PLACE_LEADS and words[place.start - 1] not in ("the", "a", "of", "my"):
        return False
    behind = words[place.end] if place.end < len(words) else ""
    if not alone and places.names_dishes(place.id) and any(f.kind in FOODS and f.end == place.start for f in found):
        # a cheesecake New York, beside the town where it is baked
        return True
    dish = any(f.kind in FOODS and f.start == place.end for f in found) or behind in FOOD_BEHIND
    return behind in ("style", "styled") or (dish and (not alone or places.names_dishes(place.id)))


def sea_level(words: Sequence[str]) -> list[Elevation]:
    """Sea level and the coast, and of a baseline the valley; also as a recogniser may mishear them.

    Sea level at the end of a figure is none, 200 ft above sea level; nor is that to which a pressure is reduced.
    """
    hits = [(i, i + 2) for i, (one, two) in enumerate(pairwise(words)) if one in SEA and two in LEVEL]
    hits += [(i, i + 1) for i, word in enumerate(words) if word in ("sealevel", "sealvl")]
    level = [hit for hit in hits if not hit[0] or words[hit[0] - 1] not in ("above", "below")]
    if not OF_AIR.isdisjoint(words):
        level = [hit for hit in level if REDUCED_TO.isdisjoint(words[max(0, hit[0] - REACH) : hit[0]])]
    coasts = [hit for phrase in COASTS for hit in _stands(words, phrase)]
    low = [hit for phrase in LOWLANDS for hit in _stands(words, phrase) if not _has_figure(words, hit[1])]
    found = [Elevation(start, end, 0.0, "m", "here") for start, end in _apart([*level, *coasts])]
    taken = {i for mention in found for i in range(mention.start, mention.end)}
    low = [hit for hit in _apart(low) if taken.isdisjoint(range(*hit))]
    return found + [Elevation(start, end, 0.0, "m", "from", sure=True) for start, end in low]


def _stands(words: Sequence[str], phrase: Sequence[str]) -> list[tuple[int, int]]:
    n = len(phrase)
    return [(i, i + n) for i in range(len(words) - n + 1) if list(words[i : i + n]) == phrase]


def _apart(hits: Iterable[tuple[int, int]]) -> list[tuple[int, int]]:
    """The spans without those that begin in another one, the longer first."""
    kept: list[tuple[int, int]] = []
    for start, end in sorted(hits, key=lambda hit: hit[0] - hit[1]):
        if not any(start < k[1] and k[0] < end for k in kept):
            kept.append((start, end))
    return sorted(kept)


def _has_figure(words: Sequence[str], at: int) -> bool:
    """Whether the elevation of a valley follows: the valley at 4,500 ft, the valley (4,500 ft)."""
    return at + 1 < len(words) and words[at] in TO_FIGURE and words[at + 1][0].isdigit()


def at_one(words: Sequence[str], figures: Sequence[Elevation], towns: Sequence[Elevation]) -> list[Elevation]:
    """All mentions in their order, where a town and a figure that agree are one, and the figure holds."""
    mentions = sorted([*figures, *towns], key=lambda mention: mention.start)
    merged: list[Elevation] = []
    for mention in mentions:
        last = merged[-1] if merged else None
        one = last and _as_one(words, last, mention)
        if one:
            merged[-1] = one
        else:
            merged.append(mention)
    return merged


def _as_one(words: Sequence[str], first: Elevation, second: Elevation) -> Elevation | None:
    """Leadville, 10,150 or so; 9,200 ft in Silverton. The mention goes from the one to the other."""
    if bool(first.place) == bool(second.place):
        return None
    between = words[first.end : second.start]
    if len(between) > NEAR_WORDS or any(word in PARTED for word in between):
        return None
    town, figure = (first, second) if first.place else (second, first)
    unit = unit_that_fits(town.place or "", figure)
    return None if unit is None else replace(figure, start=first.start, end=second.end, unit=unit)


def unit_that_fits(place: str, figure: Elevation) -> str | None:
    """The unit in which a figure agrees with a place; None where it does in none."""
    town_m = places.elevation_m(place)
    if town_m is None:
        return None
    units = (figure.unit,) if figure.unit else ("ft", "m")
    near_m = max(NEAR_M, NEAR_PART * abs(town_m))
    return next((unit for unit in units if abs(_in_m(figure.said, unit) - town_m) <= near_m), None)


def _in_m(said: float, unit: str) -> float:
    return said * M_PER_FT if unit == "ft" else to_si(said, unit)
