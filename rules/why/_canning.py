"""The caution that goes with every explanation of canning."""

from rules.model import Caution

TESTED = Caution(
    "warn",
    "Can only by a tested recipe, with the time and pressure printed for your elevation. Never work out your own: "
    "food that is underprocessed can carry botulism without looking or smelling spoiled.",
    ("usda-aib-539",),
)
