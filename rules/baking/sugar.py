"""Sugar: as water leaves faster the batter sweetens, and sugar keeps it from setting."""

from __future__ import annotations

from rules.baking.batch import Batch, changed, percent_apart, scale_lines
from rules.book import Part, rule
from rules.physics import evaporation
from rules.said import Words, number, sentences

LEAST_G = 20.0
KINDS = ("sugar", "icing_sugar", "syrup")
say = sentences("baking/sugar")


@rule(
    "baking.sugar",
    "uwyo-altitude-adjusters",
    "usu-faq-204",
    "csu-cakes-2002",
    "csu-high-altitude-food-prep",
    "common-practice",
)
def scaled(batch: Batch) -> Part | None:
    """Every sugar of the batter times the style's ratio; icing sugar or syrup only where it has no other."""
    sugars = next((found for name in KINDS if (found := batch.parts(name, least_g=LEAST_G))), ())
    return changed(scale_lines(batch, sugars, "sugar", "sugar", why(batch)))


def why(batch: Batch) -> Words:
    """The reason, with the table's figure."""
    percent = percent_apart(batch.ratio("sugar").value)
    if not batch.up:
        return say("more", place=batch.place, percent=percent)
    drying = number(evaporation.drying_ratio(batch.to_m) / evaporation.drying_ratio(batch.from_m))
    return say("less", drying=drying, percent=percent, place=batch.place)
