"""A roux: flour browned in fat, which is far hotter than any boil."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.said import duration_span, sentences

# by its colour, over a medium flame, stirred [min]
BLOND_MIN, NUT_MIN, DARK_MIN = (4.0, 6.0), (15.0, 20.0), (30.0, 45.0)
say = sentences("safety/subjects/roux")


@rule("safety.roux", "common-practice")
def roux(case: Case) -> Part:
    """How long it takes to its colour, which elevation leaves alone."""
    return Part(
        headline=say(
            "headline", blond=duration_span(*BLOND_MIN), nut=duration_span(*NUT_MIN), dark=duration_span(*DARK_MIN)
        ),
        figures=(Figure("dark_roux_time", say("dark-label"), sum(DARK_MIN) / 2, "min", *DARK_MIN),),
        steps=(say("by-colour"), say("then-liquid")),
        cautions=(Caution("warn", say("sticks"), ("common-practice",)),),
        because=say("because"),
    )


NEEDS: tuple[str, ...] = ()
RULES = (roux,)
