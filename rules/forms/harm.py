"""Will it make us sick: a reading of the centre that was told, judged whatever else is spoken of."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked


@rule("harm.core", "usda-fsis-safe-temperatures", "fda-food-code-2022")
def core(asked: Asked) -> Part | None:
    """A reading of the centre in a question about harm, judged as doneness is."""
    request = asked.request
    if request.topic == "doneness" or request.temperature_c is None or request.dish_class is None:
        return None
    if request.temperature_of not in ("core", None):
        return None
    other = asked.otherwise(topic="doneness", method=None, forms=("harm",))
    if not other.judged:
        return None
    stops = tuple(c for c in other.answer.cautions if c.level == "stop")
    return Part(headline=other.answer.headline, cautions=stops)


RULES = (core,)
