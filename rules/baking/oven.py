"""Oven: a little hotter sets the crumb before its gas has swelled too far."""

from __future__ import annotations

from rules.baking import bands, components
from rules.baking.batch import Batch
from rules.baking.change import Shift
from rules.baking.mark import TempAt
from rules.book import Part, rule
from rules.physics.units import K_PER_F
from rules.said import Words, number, sentences

# Cooler than that an oven dries or keeps warm.
BAKED_FROM_C = 90.0
say = sentences("baking/oven")


@rule("baking.oven", "uwyo-altitude-adjusters", "csu-high-altitude-food-prep", "common-practice")
def setting(at: TempAt) -> Part | None:
    """A little hotter, for a crumb that sets before its gas has swelled too far."""
    return shift(at.batch) if at.mark.what == "oven" and at.mark.low_c >= BAKED_FROM_C else None


def shift(batch: Batch) -> Part | None:
    """How the oven setting moves for this style; None where the style has no advice on it."""
    part = components.share(batch.style, "oven")
    if part is None or not batch.expects("oven"):
        return None
    sources = components.sources(batch.style, "oven")
    if not part.value:
        return Part(shift=Shift(bands.NOTHING, "oven", stays=True), because=batch.stays(part), sources=sources)
    degrees_f = components.difference(batch.style, "oven", batch.from_m, batch.to_m)
    return Part(shift=Shift(degrees_f.map(lambda f: f * K_PER_F), "oven"), because=why(batch), sources=sources)


def why(batch: Batch) -> Words:
    """The reason."""
    if not batch.up:
        return say("cooler", place=batch.place)
    return say("hotter", swell=number(1 / batch.pressure_ratio), baseline=batch.baseline)
