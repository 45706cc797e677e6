"""How to tell that it is done: by the sign that tells it, with the reading where one counts."""

from __future__ import annotations

from rules import safety
from rules.book import Part, rule
from rules.catalogue import marked
from rules.foods.dishes import check_of, classes
from rules.forms import Asked
from rules.forms.enough import readings
from rules.heat import done_readings
from rules.heat.dry import heated_through
from rules.safety.holding_limits import placed
from rules.said import Said, sentences, temp, temp_span, together

say = sentences("forms/done")

UNSAID = "general"


@rule("done.sign", "common-practice", "usda-fsis-safe-temperatures")
def sign(asked: Asked) -> Part | None:
    """The sign of a dish that is done by softening, or by eye: the safe reading comes long before or there is none."""
    request, dish_class = asked.request, asked.case.dish_class
    safe = safety.safe_temperature(request.dish, dish_class)
    if (
        request.temperature_c is not None
        or request.topic not in marked("of_a_sign")
        or dish_class == UNSAID
        or request.wanted_doneness
        or request.ahead
    ):
        return None
    if safe and heated_through(dish_class):
        return None
    of = done_readings.reading(request.dish, dish_class)
    here = of.here(asked.case.here, asked.case.sea) if of else None
    return Part(headline=together(_sign(asked, safe, here), asked.answer.headline if request.topic == "time" else ""))


def _sign(asked: Asked, safe: safety.SafeTemperature | None, here: tuple[float, float] | None) -> Said:
    request, dish_class = asked.request, asked.case.dish_class
    return say(
        "sign",
        food=request.dish or classes()[dish_class].label,
        signs=check_of(request.dish, dish_class, request.method),
        safe="yes" if safe else "no",
        core=temp(safe.temp_c) if safe else "",
        reads="yes" if here else "no",
        reading=temp_span(*here) if here else "",
        where="here" if placed(request) else "anywhere",
        place=asked.case.place,
    )


RULES = (readings.reading, sign)
