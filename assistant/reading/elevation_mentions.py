"""Mentions of elevations -> metres, or a kind question where the figure cannot be right."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from assistant.reading import places
from assistant.reading.spans import Elevation
from assistant.reading.units import to_si
from rules.model import ElevationFrom, Units, Unused
from rules.physics import air
from rules.physics.units import M_PER_FT
from rules.said import elevation, sentences

say = sentences("reading/elevation")

METRIC_BARE = (300.0, 5500.0)
SMALLEST_BARE_FT = 1000.0
SAME = 0.02
# a town is seldom flat: a figure so near it is one of it [m, part]
NEAR_M, NEAR_PART = 250.0, 0.15
# an elevation that was asked about beside the one that is worked with; who answers for all of them leaves it out
TOO = "elevations"


@dataclass(frozen=True, slots=True)
class Heights:
    """Where the cook is and where the baseline was [m], how that is known, and what could not be used.

    place: that was named where the cook is; bare: the figure of where the cook is, if it was said without a unit
    all_m: every elevation that was asked about, in the order said, where there are two or more
    """

    here_m: float | None = None
    known_from: ElevationFrom | None = None
    place: str = ""
    bare: float | None = None
    from_m: float | None = None
    all_m: tuple[float, ...] = ()
    metric: bool | None = None
    unused: tuple[Unused, ...] = ()


@dataclass(frozen=True, slots=True)
class Height:
    """A mention with its height [m]."""

    mention: Elevation
    m: float


def settle(mentions: Sequence[Elevation], words: Sequence[str], units: Units) -> Heights:
    """The elevations of a text, in metres.

    mentions: from the component kitchen_elevation; words: of the text, for wording what is not usable
    units: of the kitchen; they decide what a bare number means
    """
    wanted = _without_slips(mentions, [m for m in plausible(mentions, units) if m.role in ("here", "from")])
    doubted = [Unused("elevation", _text(m, words), doubt) for m in wanted if (doubt := question(m, words, units))]
    heights = [Height(m, height) for m in wanted if (height := _usable_m(m, words, units)) is not None]
    heres = [height for height in heights if height.mention.role == "here"]
    stated, passed_over = without_towns(heres)
    here = stated[0] if stated else None
    baseline = next((height.m for height in heights if height.mention.role == "from"), None)
    spoken = {m.unit in ("m", "km") for m in wanted if m.unit and m.said}
    return Heights(
        here_m=here.m if here else None,
        known_from=("place" if here.mention.place else "stated") if here else None,
        place=here.mention.place or "" if here else "",
        bare=here.mention.said if here and not here.mention.place and not here.mention.unit else None,
        from_m=baseline,
        all_m=asked_about([height for height in heights if height.mention.compared or height in stated]),
        metric=spoken.pop() if len(spoken) == 1 else None,
        unused=(*doubted, *_others(stated, words), *_towns_left_out(passed_over, here, words)),
    )


def _without_slips(mentions: Sequence[Elevation], wanted: list[Elevation]) -> list[Elevation]:
    """The mentions, where one was held for a baseline only beside a figure that is no elevation: 5,900 ft, at 325."""
    slipped = any(m.role == "here" for m in mentions) and not any(m.role == "here" for m in wanted)
    if not slipped or len(wanted) != 1 or wanted[0].sure:
        return wanted
    return [replace(wanted[0], role="here")]


def plausible(mentions: Sequence[Elevation], units: Units) -> list[Elevation]:
    """The mentions without bare numbers too small for feet: `bake at 350` is an elevation only in a metric kitchen."""
    return [m for m in mentions if m.unit or m.place or units == "metric" or m.said >= SMALLEST_BARE_FT]


def without_towns(heres: Sequence[Height]) -> tuple[list[Height], list[Height]]:
    """The heights of the cook without towns where a figure was given beside them, and those towns that disagree.

    What was asked about together stays.
    """
    figures = [h for h in heres if not h.mention.place]
    if not figures:
        return list(heres), []
    kept = [h for h in heres if not h.mention.place or h.mention.compared]
    left = [h for h in heres if h not in kept and not any(is_near(figure.m, h.m) for figure in figures)]
    return kept, left


def is_near(one_m: float, town_m: float) -> bool:
    """Whether a figure can be one of a town.

    >>> is_near(2200.0, 2184.0), is_near(1524.0, 3094.0)
    (True, False)
    """
    return abs(one_m - town_m) <= max(NEAR_M, NEAR_PART * abs(town_m))


def asked_about(heights: Iterable[Height]) -> tuple[float, ...]:
    """The distinct heights [m]; none where there are not two."""
    distinct: list[Height] = []
    for height in heights:
        if not any(_is_said_again(height, other) for other in distinct):
            distinct.append(height)
    return tuple(height.m for height in distinct) if len(distinct) > 1 else ()


def _is_said_again(height: Height, other: Height) -> bool:
    """Whether two are one: 7,000 ft (2,134 m). Two towns of one height are two."""
    one, two = height.mention.place, other.mention.place
    return one == two if one and two else _is_same(height.m, other.m)


def _is_same(one_m: float, other_m: float) -> bool:
    return abs(one_m - other_m) <= SAME * max(one_m, 500.0)


def _others(stated: Sequence[Height], words: Sequence[str]) -> list[Unused]:
    """What was said beside the first height, unless it says the same in another unit."""
    others = [h for h in stated[1:] if not _is_said_again(h, stated[0])]
    return [Unused(TOO, _text(h.mention, words), say("first-of-several")) for h in others]


def _towns_left_out(left: Sequence[Height], here: Height | None, words: Sequence[str]) -> list[Unused]:
    if here is None:
        return []
    return [
        Unused(
            "place",
            _text(h.mention, words),
            say("figure-before-town", here=elevation(here.m), town=elevation(h.m), name=h.mention.place or ""),
        )
        for h in left
    ]


def _text(mention: Elevation, words: Sequence[str]) -> str:
    return " ".join(words[mention.start : mention.end])


def _usable_m(mention: Elevation, words: Sequence[str], units: Units) -> float | None:
    return None if question(mention, words, units) else height_m(mention, units)


def height_m(mention: Elevation, units: Units) -> float | None:
    """Height of a mention [m]; a bare number is in feet, or in metres where a metric kitchen could be so high."""
    if mention.place:
        return places.elevation_m(mention.place)
    if mention.unit:
        return to_si(mention.said, mention.unit)
    low, high = METRIC_BARE
    return mention.said if units == "metric" and low <= mention.said <= high else mention.said * M_PER_FT


def question(mention: Elevation, words: Sequence[str], units: Units) -> str | None:
    """What to ask back about a height no kitchen has; None where the height is fine."""
    height = height_m(mention, units)
    if height is None:
        return f"I do not know how high {_text(mention, words)} is. What is the elevation there, in feet or metres?"
    if air.LOWEST_M <= height <= air.HIGHEST_M:
        return None
    said = f"{mention.said:,.7g} {mention.unit or ('m' if units == 'metric' else 'ft')}"
    if height < air.LOWEST_M:
        return f"{said} is below any kitchen on land. What is the elevation there?"
    in_feet = mention.said * M_PER_FT
    if mention.unit == "m" and in_feet <= air.HIGHEST_M:
        return f"{said} is above any kitchen. Did you mean {mention.said:,.7g} ft ({round(in_feet, -1):,.0f} m)?"
    limit = "higher than any mountain" if height > 8850 else "above any kitchen I can work for"
    tenth = mention.said / 10
    if math.isfinite(tenth) and height > 8850 and air.LOWEST_M <= height / 10 <= air.HIGHEST_M:
        return f"{said} is {limit}. Did you mean {tenth:,.7g} {mention.unit or 'ft'}?"
    return f"{said} is {limit}. What is your elevation?"
