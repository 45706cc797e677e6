"""Infant formula: what elevation does to the water; all else is for the label, the doctor and public health."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, rule
from rules.foods import infant
from rules.model import Caution
from rules.safety.holding_limits import placed
from rules.safety.subjects.drinking_water import agency_times
from rules.say import duration


@rule("safety.formula", "who-formula-2007")
def formula(case: Case) -> Part | None:
    """How hot the water is for mixing powder."""
    part = infant.formula(Case(replace(case.request, dish=None, dish_class=infant.INFANT)))
    return replace(part, headline=_headline(case)) if part else None


def _headline(case: Case) -> str:
    hot = case.say.temp(infant.MIX_C)
    boil = f"The boil, {case.say.temp(case.here.boiling_c)} at {case.place}," if placed(case.request) else "The boil"
    return (
        f"Follow the label and your doctor; WHO mixes powder with boiled water no cooler than {hot}. {boil} is hotter "
        "than that wherever people live, so the temperature does not change."
    )


@rule("safety.formula_water", "cdc-eid-2025-boil", "pediatrics-2019-formula")
def water(case: Case) -> Part:
    """Water that has to be made safe first, and that agencies differ."""
    steps: tuple[str, ...] = ()
    if placed(case.request):
        longest = duration(max(agency_times(case.here.elevation_m).values()))
        steps = (f"Where the water itself is in doubt, boil it hard for {longest} at {case.place} first.",)
    return Part(
        steps=steps,
        because="Agencies differ on how hot the mixing water should be, and on whether to boil it at all where tap "
        "water is safe.",
        cautions=(
            Caution(
                "warn",
                "Water cools slower or faster with the vessel, not with the elevation: measure it, and test a drop on "
                "the wrist. For a newborn, a premature or an ill baby ask about sterile ready-to-feed formula.",
                ("pediatrics-2019-formula", "who-formula-2007"),
            ),
        ),
    )


NEEDS: tuple[str, ...] = ()
RULES = (formula, water)
