"""What a menu takes, reckoned: a line for everything that is bought, merged over the dishes, with where it comes from.

Dishes of the lexicon are reckoned by the rules that answer a question about them; recipes of the cook's own are scaled
and converted as `simmerline convert` does it. Amounts are grams wherever a weight is known; what has none keeps the
measure of its recipe, summed by kind.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from pathlib import Path

from assistant.errors import AssistantError
from assistant.planning.items import as_bought_g, item_of
from assistant.planning.menu import Menu, MenuLine, is_meatless, plain_dishes
from assistant.reading.units import unit_of
from rules import engine
from rules.amounts.eaters import is_of_meat
from rules.amounts.makings import of_its_kind
from rules.amounts.portion import PORTION, portion
from rules.amounts.stores import STORES, Kept, Packed, kept, packed
from rules.errors import RulesError
from rules.foods.dishes import dishes, usual_method
from rules.heat import fuel
from rules.model import Quantity, Request, Units
from rules.recipe import IngredientLine
from rules.recipes.convert import Converted
from rules.recipes.sheet import line_added
from rules.said import Said, sentences
from rules.topics.order import menu as menus
from rules.topics.order import taken

# what is put on top of what the guests are reckoned to take, for what is dropped, burnt and eaten twice
MARGIN = 0.05
# methods that cook in a pot on a flame, whose fuel goes by the time
IN_POTS = ("boil", "simmer", "poach", "braise", "stew", "steam")
# share of a hob's electricity that reaches the pot
ELECTRIC_SHARE = 0.7
KJ_PER_KWH = 3600.0
# what is bought so goes to the table as it is
UNCOOKED = "salad"
# a difference of time smaller than this is none that a cook keeps [min]
NOTICED_MIN = 1.0
# recipes are taken to be written for the sea, as `simmerline convert` takes them [m]
WRITTEN_FOR_M = 0.0
say = sentences("planning/order")


@dataclass(frozen=True, slots=True)
class Part:
    """What one dish takes of an item. grams: here; there_g: at the elevation the formula or recipe is for"""

    dish: str
    grams: float
    there_g: float

    @property
    def change(self) -> float:
        """How much more of it here, as a share; 0 where it makes no difference."""
        return taken.change(self.grams, self.there_g)


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One thing to order. need_g: what the dishes take; wanted_g: with the margin; on_hand_g: of it there already

    order_g: what is left to buy; packs: the packs that hold it, None where it is bought loose; bought: the name it is
    bought by, where that is not its own
    """

    item: str
    bought: str
    store: str
    need_g: float
    wanted_g: float
    on_hand_g: float
    order_g: float
    kept: Kept
    packs: Packed | None
    parts: tuple[Part, ...]


@dataclass(frozen=True, slots=True)
class Loose:
    """What has no known weight: so much of a measure ("ml" or a unit of a count; "" for none)."""

    item: str
    unit: str
    amount: float
    dishes: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Served:
    """A dish of the menu as it was reckoned. covers: how many take it; cooked_g: on their plates, None for a recipe

    here_min, there_min: how long it cooks here and at sea level; water_ml, extra_ml: of the tap, and how much of it is
    for the elevation; energy_kj: more heat than at sea level; made: only its recipe tells what it takes
    of_its_kind: reckoned by a formula of its kind, to which its own recipe adds what makes it what it is
    """

    name: str
    way: str
    covers: int
    cooked_g: float | None = None
    poured: bool = False
    here_min: float | None = None
    there_min: float | None = None
    water_ml: float = 0.0
    extra_ml: float = 0.0
    energy_kj: float = 0.0
    made: bool = False
    of_its_kind: bool = False
    source: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """An order. faults: what was left out, a sentence each; notes: what was taken for granted"""

    title: str
    elevation_m: float
    covers: int | None
    service: str
    margin: float
    lines: tuple[Line, ...]
    loose: tuple[Loose, ...]
    served: tuple[Served, ...]
    faults: tuple[Said, ...]
    notes: tuple[Said, ...]

    @property
    def stores(self) -> Iterator[tuple[str, tuple[Line, ...]]]:
        """The lines by the store they go to, in the order in which a delivery is put away."""
        for store in STORES:
            if inside := tuple(line for line in self.lines if line.store == store):
                yield store, inside

    @property
    def energy_kj(self) -> float:
        """The heat that the menu takes more than at sea level [kJ]."""
        return sum(one.energy_kj for one in self.served)

    @property
    def gas_kg(self) -> float:
        """The same as gas that is burnt [kg]."""
        return fuel.gas_g(self.energy_kj)[1] / 1000

    @property
    def electricity_kwh(self) -> float:
        """The same as electricity of a hob [kWh]."""
        return self.energy_kj / ELECTRIC_SHARE / KJ_PER_KWH


@dataclass
class _Reckoning:
    """What has been reckoned so far."""

    parts: dict[str, list[Part]] = field(default_factory=lambda: defaultdict(list))
    bought: dict[str, str] = field(default_factory=dict)
    classes: dict[str, str] = field(default_factory=dict)
    loose: dict[tuple[str, str], tuple[float, tuple[str, ...]]] = field(default_factory=dict)
    served: list[Served] = field(default_factory=list)
    faults: list[Said] = field(default_factory=list)
    notes: list[Said] = field(default_factory=list)


def order_sheet(
    menu: Menu,
    *,
    elevation_m: float,
    covers: int | None = None,
    margin: float = MARGIN,
    on_hand: dict[str, float] | None = None,
    units: Units = "us",
    watched: Callable[[Sequence[MenuLine]], Iterable[MenuLine]] = iter,
) -> Sheet:
    """The order of a menu. covers: of all of it, where the menu does not say; on_hand: grams by item.

    watched: goes through the lines, for a bar that shows how far it is
    """
    guests = covers or menu.covers
    reckoning = _Reckoning(faults=list(menu.faults))
    mains = has_mains(menu)
    for line in watched(menu.lines):
        count = takers(line, guests)
        if count is None:
            reckoning.faults.append(say("covers-unknown", line=line.line, text=line.text))
        elif line.recipe:
            _recipe(reckoning, line.recipe, count, elevation_m, units)
        else:
            _dish(reckoning, line, count, elevation_m, mains)
    there = on_hand or {}
    lines = (_line(reckoning, item, margin, there) for item in reckoning.parts)
    return Sheet(
        title=menu.title,
        elevation_m=elevation_m,
        covers=guests,
        service=menu.service,
        margin=margin,
        lines=tuple(sorted(lines, key=lambda line: (STORES.index(line.store), -line.need_g, line.item))),
        loose=tuple(Loose(*key, *told) for key, told in sorted(reckoning.loose.items())),
        served=tuple(reckoning.served),
        faults=tuple(reckoning.faults),
        notes=(*menu.notes, *reckoning.notes),
    )


def takers(line: MenuLine, guests: int | None) -> int | None:
    """How many take a dish: as its line says, else its share of the guests, rounded up; None where nobody says.

    >>> takers(MenuLine(line=1, text="", share=0.4), 90), takers(MenuLine(line=1, text="", covers=12), None)
    (36, 12)
    """
    if line.covers is not None:
        return line.covers
    if guests is None:
        return None
    return -int(-(guests * (line.share or 1.0) - 1e-9) // 1)


def _asked(line: MenuLine) -> Request:
    return Request(dish=line.dish, dish_class=dishes()[line.dish].dish_class)


def _line(reckoning: _Reckoning, item: str, margin: float, on_hand: dict[str, float]) -> Line:
    parts = reckoning.parts[item]
    need = sum(part.grams for part in parts)
    wanted = need * (1 + margin)
    there = min(on_hand.get(item, 0.0), wanted)
    of = kept(item, dishes()[item].dish_class if item in dishes() else reckoning.classes.get(item, ""))
    left = wanted - there
    return Line(
        item=item,
        bought=reckoning.bought.get(item, ""),
        store=of.store,
        need_g=need,
        wanted_g=wanted,
        on_hand_g=there,
        order_g=left,
        kept=of,
        packs=packed(left, of),
        parts=tuple(_joined(parts)),
    )


def _joined(parts: list[Part]) -> Iterator[Part]:
    """A part a dish, the largest first."""
    by_dish: dict[str, list[Part]] = defaultdict(list)
    for part in parts:
        by_dish[part.dish].append(part)
    sums = (Part(dish, sum(p.grams for p in all_), sum(p.there_g for p in all_)) for dish, all_ in by_dish.items())
    yield from sorted(sums, key=lambda part: (-part.grams, part.dish))


# A dish of the lexicon


def has_mains(menu: Menu) -> bool:
    """Whether a dish of the menu can only be a main, beside which what can be a side is one."""
    return any(line.dish and "side" not in menus.ways_of(_asked(line)) for line in menu.lines)


def request_of(line: MenuLine, covers: int, elevation_m: float, mains: bool) -> Request:
    """The order of a dish of a menu. mains: whether the menu has some"""
    some = line.covers is not None or (line.share or 1.0) < 1.0
    way = line.course or ("side" if mains and menus.is_a_side(_asked(line), some=some) else None)
    request = taken.of_dish(line.dish, portions=covers, course=way, elevation_m=elevation_m)
    if line.portion_g:
        request = replace(request, quantity=Quantity(line.portion_g, "g"), quantity_of=PORTION)
    return request


def _dish(reckoning: _Reckoning, line: MenuLine, covers: int, elevation_m: float, mains: bool) -> None:
    request = request_of(line, covers, elevation_m, mains)
    needs = taken.needs(request)
    if is_meatless(line.text) and (left := _without_meat(needs)) != needs:
        reckoning.notes.append(say("without-meat", line=line.line, dish=line.dish))
        needs = left
    for need in needs:
        item = need.item
        if (need.bought or item == line.dish) and (named := portion(line.dish, request.dish_class or "").bought_as):
            item = line.dish if line.dish in named else item_of(named)
            reckoning.bought[item] = named
            reckoning.classes[item] = request.dish_class or ""
        reckoning.parts[item].append(Part(line.dish, need.grams, need.there_g))
    reckoning.served.append(_served(request, covers))


def _without_meat(needs: tuple[taken.Need, ...]) -> tuple[taken.Need, ...]:
    """What a dish takes where it is made without its meat: as much in all, of the rest."""
    kept = tuple(need for need in needs if need.bought or not is_of_meat(Request(dish=need.item)))
    rest = sum(need.grams for need in kept)
    more = sum(need.grams for need in needs) / rest if rest else 1.0
    return tuple(replace(need, grams=need.grams * more, there_g=need.there_g * more) for need in kept)


def _served(request: Request, covers: int) -> Served:
    from rules.amounts.portion import way_of
    from rules.topics.order.buy import DRAWN
    from rules.topics.order.words import is_poured

    name, dish_class = request.dish or "", request.dish_class or "general"
    one = portion(name, dish_class)
    water = taken.water(request)
    method, times = usual_method(name, dish_class), time_of(name, request.elevation_m or 0.0)
    longer = times if times and abs(times[0] - times[1]) >= NOTICED_MIN else None
    return Served(
        name=name,
        way=way_of(request),
        covers=covers,
        cooked_g=taken.raw_g(request) * one.yields,
        poured=is_poured(request) or dish_class in DRAWN,
        here_min=times[0] if times else None,
        there_min=times[1] if times else None,
        water_ml=water.ml if water else 0.0,
        extra_ml=water.extra_ml if water else 0.0,
        energy_kj=taken.energy_kj(request, *longer) if longer and method in IN_POTS else 0.0,
        made=taken.is_made(request),
        of_its_kind=of_its_kind(name, dish_class) and name not in plain_dishes(),
        source=one.source,
    )


@lru_cache(maxsize=1024)
def time_of(dish: str, elevation_m: float) -> tuple[float, float] | None:
    """How long a dish cooks here and at sea level [min], as a question is answered; None where it has no time."""
    if portion(dish, dishes()[dish].dish_class).state == UNCOOKED:
        return None
    asked = Request(topic="time", dish=dish, dish_class=dishes()[dish].dish_class, elevation_m=elevation_m)
    figure = engine.answer(asked).figure("cook_time")
    if figure is None or figure.unit != "min" or figure.sea_level is None:
        return None
    return figure.value, figure.sea_level


# A recipe of the cook's own


def _recipe(reckoning: _Reckoning, path: Path, covers: int, elevation_m: float, units: Units) -> None:
    from assistant.recipes.converting import convert_recipe
    from assistant.recipes.read import bytes_of

    try:
        content = bytes_of(path)
        here, there = (
            convert_recipe(content, to_elevation_m=m, servings=float(covers), units=units, name=path.name)
            for m in (elevation_m, WRITTEN_FOR_M)
        )
    except (AssistantError, RulesError) as fault:
        reckoning.faults.append(say("bad-recipe", fault=str(fault)))
        return
    except OSError:
        reckoning.faults.append(say("unread-recipe", file=path.name))
        return
    name = here.recipe.title or path.stem
    for line, here_g, there_g in _bought(here, there):
        _of_recipe(reckoning, name, line, here_g, there_g)
    reckoning.served.append(Served(name=name, way="recipe", covers=covers))


def _bought(here: Converted, there: Converted) -> Iterator[tuple[IngredientLine, float | None, float | None]]:
    """The lines of a recipe with their masses here and where it was written for [g], and what the elevation adds."""
    for line, before in zip(here.plain.ingredients, there.plain.ingredients, strict=True):
        yield line, as_bought_g(line), as_bought_g(before)
    for change in here.changes:
        if added := line_added(change):
            yield added, added.mass_g, 0.0


def _of_recipe(
    reckoning: _Reckoning, dish: str, line: IngredientLine, here_g: float | None, there_g: float | None
) -> None:
    item = item_of(line.item)
    if item in taken.FREE:
        return
    if here_g:
        reckoning.parts[item].append(Part(dish, here_g, there_g or 0.0))
        return
    unit = unit_of(line.unit) if line.unit else None
    volume = unit is not None and unit.kind == "volume"
    key = (item, "ml" if volume else line.unit or "")
    amount = (line.amount or 0.0) * (unit.size if volume and unit else 1.0)
    before, names = reckoning.loose.get(key, (0.0, ()))
    reckoning.loose[key] = (before + amount, tuple(dict.fromkeys((*names, dish))))
