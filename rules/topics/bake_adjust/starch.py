"""Starch that thickens a filling: where water boils cooler it thickens less, and wants more of it and a full bubble."""

from __future__ import annotations

from rules.baking.parts import part_of
from rules.book import Case, Part, rule
from rules.model import Figure
from rules.physics.units import FT_PER_M
from rules.said import number, sentences, temp
from rules.topics.bake_adjust.asked import asked, baked

# above this the extension text sends it from the double boiler to direct heat; how much more cooks take at the most [%]
FROM_FT, MOST_MORE_PERCENT = 5000.0, 20.0
say = sentences("topics/bake_adjust/starch")


def thickens(case: Case) -> bool:
    """Whether the starch of a filling is asked about, where water boils too cool for it to thicken as at sea level."""
    subject = case.request.subject
    if asked(case) != "flour" or not subject or "starch_thickened" not in case.traits:
        return False
    return part_of(subject).name == "starch" and case.here.elevation_m * FT_PER_M > FROM_FT


@rule("bake_adjust.starch", "csu-high-altitude-food-prep", "common-practice")
def starch_rule(case: Case) -> Part | None:
    """Starch of a filling or a sauce: up to a fifth more, over direct heat and at a full bubble."""
    if not thickens(case):
        return None
    item, most = case.request.subject or "", number(MOST_MORE_PERCENT, 0)
    return Part(
        figures=(
            Figure("starch_change", say("change", item=item), MOST_MORE_PERCENT / 2, "percent", 0.0, MOST_MORE_PERCENT),
        ),
        headline=say("headline", most=most, item=item, baked=baked(case), place=case.place),
        steps=(say("direct-heat"), say("other-starch")),
        because=say("because", boil=temp(case.here.boiling_c)),
    )
