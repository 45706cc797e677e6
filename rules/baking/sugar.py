"""Sugar: as water leaves faster the batter sweetens, and sugar keeps it from setting."""

from __future__ import annotations

from collections.abc import Iterator

from rules.baking.batch import Batch, percent, scale_lines
from rules.baking.change import Change
from rules.physics import evaporation
from rules.say import number

LEAST_G = 20.0


def changes(batch: Batch) -> Iterator[Change]:
    """Every sugar of the batter times the style's ratio."""
    yield from scale_lines(batch, batch.parts("sugar", "icing_sugar", least_g=LEAST_G), "sugar", "sugar", why(batch))


def why(batch: Batch) -> str:
    """The reason, with the table's figure."""
    ratio = batch.ratio("sugar")
    if not batch.up:
        return (
            f"In the denser air at {batch.here} less water leaves the batter, so it takes {percent(ratio.value)} "
            "more sugar "
            "again without weakening."
        )
    drying = number(evaporation.drying_ratio(batch.to_m) / evaporation.drying_ratio(batch.from_m))
    return (
        f"Thin air dries a batter {drying} times as fast, and what stays behind is sweeter. Sugar raises the "
        "temperature at "
        f"which the crumb sets, so the tables take off {percent(ratio.value)} at {batch.here} for this kind of bake."
    )
