"""Mentions of elevations -> metres, or a kind question where the figure cannot be right."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from assistant.reading import places
from assistant.reading.spans import Elevation
from assistant.reading.units import to_si
from rules.model import ElevationFrom, Units, Unused
from rules.physics import air
from rules.physics.units import M_PER_FT

METRIC_BARE = (300.0, 5500.0)
SMALLEST_BARE_FT = 1000.0
SAME = 0.02


@dataclass(frozen=True, slots=True)
class Heights:
    """Where the cook is and where the baseline was [m], how that is known, and what could not be used."""

    here_m: float | None = None
    known_from: ElevationFrom | None = None
    from_m: float | None = None
    metric: bool | None = None
    unused: tuple[Unused, ...] = ()


def settle(mentions: Sequence[Elevation], words: Sequence[str], units: Units) -> Heights:
    """The elevations of a text, in metres.

    mentions: from the component kitchen_elevation; words: of the text, for wording what is not usable
    units: of the kitchen; they decide what a bare number means
    """
    wanted = [m for m in plausible(mentions, units) if m.role != "rejected"]
    here, unused_here = _first([m for m in wanted if m.role == "here"], words, units)
    baseline, unused_from = _first([m for m in wanted if m.role == "from"], words, units)
    spoken = {m.unit in ("m", "km") for m in wanted if m.unit and m.said}
    return Heights(
        here_m=here[1] if here else None,
        known_from=("place" if here[0].place else "stated") if here else None,
        from_m=baseline[1] if baseline else None,
        metric=spoken.pop() if len(spoken) == 1 else None,
        unused=(*unused_here, *unused_from),
    )


def plausible(mentions: Sequence[Elevation], units: Units) -> list[Elevation]:
    """The mentions without bare numbers too small for feet: `bake at 350` is an elevation only in a metric kitchen."""
    return [m for m in mentions if m.unit or m.place or units == "metric" or m.said >= SMALLEST_BARE_FT]


def _first(
    mentions: Sequence[Elevation], words: Sequence[str], units: Units
) -> tuple[tuple[Elevation, float] | None, list[Unused]]:
    """The first usable mention with its height; the others are noted, unless they say the same in another unit."""
    used: tuple[Elevation, float] | None = None
    unused: list[Unused] = []
    for mention in mentions:
        height, text = height_m(mention, units), " ".join(words[mention.start : mention.end])
        doubt = question(mention, height, text, units)
        if doubt:
            unused.append(Unused("elevation", text, doubt))
        elif used is None and height is not None:
            used = (mention, height)
        elif used and height is not None and abs(height - used[1]) > SAME * max(height, 500.0):
            unused.append(
                Unused("elevation", text, "I worked with the first elevation you gave; ask again for this one.")
            )
    return used, unused


def height_m(mention: Elevation, units: Units) -> float | None:
    """Height of a mention [m]; a bare number is in feet, or in metres where a metric kitchen could be so high."""
    if mention.place:
        return places.elevation_m(mention.place)
    if mention.unit:
        return to_si(mention.said, mention.unit)
    low, high = METRIC_BARE
    return mention.said if units == "metric" and low <= mention.said <= high else mention.said * M_PER_FT


def question(mention: Elevation, height: float | None, text: str, units: Units) -> str | None:
    """What to ask back about a height no kitchen has; None where the height is fine."""
    if height is None:
        return f"I do not know how high {text} is. What is the elevation there, in feet or metres?"
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
