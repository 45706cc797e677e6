"""What one dish of a menu takes: what is bought for it, in grams, here and at sea level, and how much longer it cooks.

The figures are those that a question about the dish is answered with: portions, yields, liquids, usual formulas.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from rules.amounts import liquid, makings
from rules.amounts.portion import head, over, portion
from rules.book import Case
from rules.foods.dishes import dishes, usual_method
from rules.heat import fuel
from rules.model import Request
from rules.recipes import formulas

# classes that are liquid in the pot and in the ladle
LIQUID_CLASSES = ("stock", "water")
G_PER_ML = 1.0
# what is poured in is bought under these names
POURED_IN = ("stock", "wine", "milk")
# methods that keep their lid on; other pots stand open on the range
LIDDED = ("braise", "stew", "steam")
# liquid that is boiled down in an open pan is not bought again, water comes out of the tap
FREE = ("water",)
# what elevation changes by less than this is not told [share]
NOTICED = 0.005


@dataclass(frozen=True, slots=True)
class Need:
    """Something bought for a dish. grams: here; there_g: at sea level; bought: whether it is the dish itself"""

    item: str
    grams: float
    there_g: float
    bought: bool = False

    @property
    def change(self) -> float:
        """How much more of it here, as a share; less below zero, nothing where it makes no difference."""
        return change(self.grams, self.there_g)


@dataclass(frozen=True, slots=True)
class Water:
    """Water from the tap for a dish [ml], here, and how much of it is for the elevation."""

    ml: float
    extra_ml: float


def change(grams: float, there_g: float) -> float:
    """How much more of a thing is taken here than there, as a share; 0 where it makes no difference.

    >>> change(110, 100) > 0, change(100.1, 100), change(20, 0)
    (True, 0.0, 0.0)
    """
    share = grams / there_g - 1 if there_g else 0.0
    return share if abs(share) >= NOTICED else 0.0


def raw_g(request: Request) -> float:
    """What the guests take of the dish, as it is bought or made [g]."""
    one = head(request)
    return one.raw_g * (request.portions or 1) * over(one.way)


def is_made(request: Request) -> bool:
    """Whether it is a finished thing without a usual formula, so that only its recipe tells what it takes."""
    dish_class = request.dish_class or "general"
    one = portion(request.dish, dish_class)
    unknown = not makings.makings(request.dish, dish_class) and not one.bought_as
    return unknown and one.state in ("finished", "in_pot", "dough", "batter")


def needs(request: Request) -> tuple[Need, ...]:
    """What is bought for the dish; nothing where only its recipe can tell."""
    dish_class, grams = request.dish_class or "general", raw_g(request)
    if is_made(request):
        return ()
    there_m, here_m = request.from_elevation_m or 0.0, request.elevation_m or 0.0
    inside = formulas.at(request.dish, dish_class, there_m, here_m)
    if inside:
        made = [Need(one.item, one.here * grams, one.there * grams) for one in inside if one.item not in FREE]
    else:
        made = [Need(request.dish or dish_class, grams, grams, bought=True)]
    names = {one.item for one in made}
    return (*made, *(one for one in _poured_in(request) if one.item not in names))


def _poured_in(request: Request) -> tuple[Need, ...]:
    """Stock, wine or milk that it is cooked in."""
    wet = liquid.needed(Case(request)) if request.dish_class not in LIQUID_CLASSES else None
    if wet is None or wet.ratio.liquid not in POURED_IN or request.dish_class == "soup":
        return ()
    return (Need(wet.ratio.liquid, wet.here_ml * G_PER_ML, wet.sea_ml * G_PER_ML),)


def water(request: Request) -> Water | None:
    """Water that the dish takes up or is cooked in; None for what is not cooked in water."""
    wet = liquid.needed(Case(request))
    if wet is None or wet.ratio.liquid != FREE[0]:
        return None
    return Water(wet.here_ml, wet.extra_ml)


def pot_litres(request: Request) -> float:
    """What stands in the pots for the guests: the food and its liquid [l]."""
    wet = liquid.needed(Case(request))
    return (raw_g(request) + (wet.here_ml if wet else 0.0)) / 1000


def energy_kj(request: Request, here_min: float, there_min: float) -> float:
    """Heat that goes into the pots more than at sea level: longer at a simmer, to a boil that is sooner reached [kJ].

    here_min, there_min: how long it cooks here and at sea level
    source: computed
    """
    case, litres = Case(request), pot_litres(request)
    covered = usual_method(request.dish, case.dish_class) in LIDDED
    held = sum(
        sign * fuel.held_kw(litres, air, covered=covered) * minutes * 60
        for sign, air, minutes in ((1, case.here, here_min), (-1, case.sea, there_min))
    )
    return held + litres * (fuel.boil_kj_l(case.here) - fuel.boil_kj_l(case.sea))


def of_dish(name: str, **more: object) -> Request:
    """The request of an order of a dish by its name."""
    one = Request(topic="order", dish=name, dish_class=dishes()[name].dish_class)
    return replace(one, **more)  # type: ignore[arg-type]
