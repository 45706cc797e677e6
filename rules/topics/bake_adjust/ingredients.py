"""Ingredients by amount: leavening, yeast, sugar, liquid, flour, fat; and salt, which stays."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from rules.baking import bands, components, leavening, liquid, sugar, yeast
from rules.baking import flour as flour_component
from rules.baking.bands import Span
from rules.baking.batch import Batch, percent_apart, towards
from rules.baking.parts import pantry, part_of
from rules.baking.rounding import IN_TSP, in_unit, same_measure
from rules.baking.usual import usual
from rules.book import Case, Part, rule
from rules.heat.verdict import opened
from rules.model import Caution, Figure
from rules.said import Said, Value, Words, elevation, measure, number, sentences
from rules.topics.bake_adjust.asked import (
    COMPONENT_OF,
    SUBJECTS,
    asked,
    baked,
    batch,
    counted_from,
    percents,
    style,
    verdict_on_way,
    wanted,
)
from rules.topics.bake_adjust.starch import thickens
from rules.topics.bake_adjust.unchanged import has_none, lacks, no_need, stays

say = sentences("topics/bake_adjust/ingredients")
FINE = ("leavening", "yeast")
NOT_MEASURED = ("", "piece")
SPOONFULS_TSP, LIGHT_G, MOST_TSP = 6, 10, 9.0
AMOUNT_ASKED = frozenset(("how_much", "more", "which"))
# flour with powder in it, how much of it holds a teaspoon, and what a cup weighs [g]
SELF_RISING, FLOUR_G_PER_TSP, CUP_G = "self-rising flour", 75.0, 125.0
# sweets that soda foams, and how exactly it is told
SWEET, FOAM_MARGIN = "candy", 0.05


@dataclass(frozen=True, slots=True)
class Amount:
    """An amount and what becomes of it, all in one unit, the range about it.

    own: whether it is the cook's own, or a round one to show the change on; said: it, as it was named
    """

    base: float
    to: float
    low: float
    high: float
    unit: str
    own: bool
    said: Value

    @property
    def same(self) -> bool:
        """Whether the change is too small to be measured."""
        return abs(self.to - self.base) < 1e-9


def amount_part(case: Case, component: str, because: Callable[[Batch], Words]) -> Part | None:
    """What becomes of an amount of one component."""
    if not wanted(case, component):
        return None
    share, work, name = components.share(style(case), component), batch(case), _name(case, component)
    if lacks(case, component) and case.request.quantity is None:
        return has_none(case, component, name)
    if share is None or not share.value:
        return stays(case, component, "item", name)
    if not work.expects(component):
        return no_need(case, component)
    ratio = work.ratio(component)
    amount = _amount(case, component, ratio)
    if amount is None:
        return None
    told = asked(case) == component
    line = _line(case, component, amount, name)
    return Part(
        figures=(
            Figure(f"{component}_to", say("to", item=name, was=amount.said), amount.to, amount.unit, amount.low,
                   amount.high),
            Figure(f"{component}_change", say("change", item=name), *percents(ratio)),
        ),
        steps=() if told else (line,),
        because=because(work),
        headline=_headline(case, component, amount, name, ratio) if told else "",
        cautions=_beyond(case, component),
        sources=components.sources(style(case), component),
    )  # fmt: skip


def _amount(case: Case, component: str, ratio: Span) -> Amount | None:
    """The amount to change; None where it has no measure."""
    said, fine = case.request.quantity, component in FINE
    own = said is not None and asked(case) == component and said.unit not in NOT_MEASURED
    value, unit = (said.value, said.unit) if said and own else _usual(case, component)
    base, to_unit = same_measure(value, unit, fine=fine)
    if to_unit is None:
        return None
    to, low, high = (towards(base, r, to_unit, fine=fine) for r in (ratio.value, ratio.low, ratio.high))
    return Amount(base, to, min(low, to), max(high, to), to_unit, own, measure(value, shown_in(unit, value, own=own)))


def shown_in(unit: str, amount: float, *, own: bool) -> str:
    """The unit in which an amount is told: teaspoons of the cook's own stay teaspoons, while they are few."""
    return IN_TSP if own and unit == "tsp" and amount <= MOST_TSP else unit


def _usual(case: Case, component: str) -> tuple[float, str]:
    found = usual("adjust", component)
    return found.amount(case.request.units) if found else (0.0, "")


def _name(case: Case, component: str) -> str:
    """What to call the component: as the cook named it, else as recipes usually have it."""
    subject = case.request.subject
    if subject and subject not in SUBJECTS and COMPONENT_OF.get(part_of(subject).name) == component:
        return subject
    found = usual("adjust", component)
    return found.item if found else component


def _line(case: Case, component: str, amount: Amount, name: str) -> Said:
    """The change as a step."""
    span, was = _anywhere(amount), amount.said
    if amount.same:
        return say("keep", was=was, item=name, place=case.place, span=span)
    now = _weighed(amount, name, component)
    if amount.own:
        return say("use", now=now, item=name, was=was, place=case.place, span=span)
    return say("for-every", item=name, now=now, was=was, span=span)


def _headline(case: Case, component: str, amount: Amount, name: str, ratio: Span) -> Words:
    """The change as the answer to what was asked."""
    verdict = _verdict(case, amount)
    if amount.same or amount.own:
        line = counted_from(case, _line(case, component, amount, name))
        return opened(verdict, line) if verdict else line
    said = say(
        "headline", percent=percent_apart(ratio.value), way="less" if ratio.value < 1 else "more", item=name,
        baked=baked(case), place=case.place, now=_weighed(amount, name, component), was=amount.said,
        span=_anywhere(amount),
    )  # fmt: skip
    change = counted_from(case, said)
    return opened(verdict, change) if verdict else change


def _verdict(case: Case, amount: Amount) -> str:
    """Yes or no where it is asked whether it stays, or is too much; "" where an amount is asked."""
    request = case.request
    if not AMOUNT_ASKED.isdisjoint(request.forms[:1]):
        return ""
    way = "" if amount.same else "more_of" if amount.to > amount.base else "less_of"
    if verdict := verdict_on_way(request, way):
        return verdict
    if request.asked_way not in ("same", "either"):
        return ""
    if request.asked_way == "same":
        return "yes" if amount.same else "no"
    too_much = "enough" in request.forms and request.asked_way == "either"
    return "" if not too_much or amount.same else "yes" if amount.to < amount.base else "no"


def _anywhere(amount: Amount) -> Words:
    """The range that is as right, where there is one."""
    if amount.low == amount.high:
        return ""
    return say("anywhere", span=measure(amount.low, shown_in(amount.unit, amount.to, own=amount.own), amount.high))


def _weighed(amount: Amount, name: str, component: str) -> Value:
    """What becomes of it with its weight beside it, where the pantry knows the weight."""
    found, text = (
        usual("adjust", component),
        measure(amount.to, shown_in(amount.unit, amount.to, own=amount.own)),
    )
    row = pantry().get(name) or pantry().get(found.weighed_as if found else "", {})
    spoons = in_unit(amount.to, amount.unit, "tsp")
    each_g = _tsp_g(row, spoons or 0.0)
    if spoons is None or each_g is None:
        return text
    mass_g = spoons * each_g
    return say("weighed", amount=text, grams=number(mass_g, 1 if mass_g < LIGHT_G else 0))


def _tsp_g(row: dict[str, float], spoons: float) -> float | None:
    """What a teaspoon of it weighs [g]; a few by the spoon, more by the cup."""
    if spoons < SPOONFULS_TSP and row.get("tsp_g"):
        return row["tsp_g"]
    return row["grams_per_cup"] / 48 if "grams_per_cup" in row else None


def _beyond(case: Case, component: str) -> tuple[Caution, ...]:
    """That the table ends under this place."""
    top_m = bands.highest_m(component)
    if batch(case).to_m <= top_m * 1.001:
        return ()
    return (
        Caution(
            "note",
            say("beyond", top=elevation(top_m), by="gas" if component == bands.BY_GAS_LAW else "held"),
            bands.sources(component)[:1],
        ),
    )


def _self_rising(case: Case) -> tuple[float, str] | None:
    """The self-rising flour that was told; an ounce of it or a cup in grams too."""
    return next(((a.value, a.unit) for a in case.request.amounts if a.ingredient == SELF_RISING), None)


def _beside_flour(case: Case, value: float, unit: str) -> Part:
    """Powder beside self-rising flour: its own cannot be taken out, so the whole cut comes from the spoon.

    source: common-practice (about 1 tsp of powder in 75 g of such flour)
    """
    work, said = batch(case), case.request.quantity
    ratio = work.ratio("leavening")
    flour_g = in_unit(value, unit, "g") or (in_unit(value, unit, "cup") or 0.0) * CUP_G
    inside = flour_g / FLOUR_G_PER_TSP
    spoon = in_unit(said.value, said.unit, "tsp") if said and said.unit not in NOT_MEASURED else None
    spoon = 0.0 if spoon is None else spoon
    to, low, high = (
        max(round(4 * ((inside + spoon) * r - inside)) / 4, 0.0) for r in (ratio.value, ratio.low, ratio.high)
    )
    low, high = min(low, to), max(high, to)
    span = "" if low == high else say("anywhere", span=measure(low, "tsp", high))
    told = say(
        "beside-flour", keep="none" if to <= 0 else "some", now=measure(to, "tsp"), was=measure(spoon, "tsp"),
        inside=measure(max(round(2 * inside) / 2, 0.5), "tsp"), place=case.place, span=span,
    )  # fmt: skip
    cut = to < spoon and case.request.asked_way == "same"
    return Part(
        figures=(
            Figure("leavening_to", say("to", item="baking powder", was=measure(spoon, "tsp")), to, "tsp", low, high),
        ),
        headline=opened("no", told) if cut else told,
        because=leavening.why(work, ratio),
        sources=components.sources(style(case), "leavening"),
    )  # fmt: skip


def _foamed(case: Case) -> Part:
    """Soda that foams a boiled syrup: its gas swells as the air presses less, so it gets less by as much."""
    work, name = batch(case), case.request.subject or "baking soda"
    ratio = work.pressure_ratio
    share = Span(ratio, min(ratio, 1.0) - FOAM_MARGIN, max(ratio, 1.0) if ratio > 1 else (1 + ratio) / 2)
    said = case.request.quantity
    own = said is not None and said.unit not in NOT_MEASURED
    value, unit = (said.value, said.unit) if said and own else (1.0, "tsp")
    base, to_unit = same_measure(value, unit, fine=True)
    to, low, high = (towards(base, r, to_unit, fine=True) for r in (share.value, share.low, share.high))
    amount = Amount(base, to, min(low, to), max(high, to), to_unit or unit, own, measure(value, unit))
    return Part(
        figures=(Figure("leavening_change", say("change", item=name), *percents(share)),),
        headline=_headline(case, "leavening", amount, name, share),
        steps=(say("foam-pot"),),
        because=say("foam-because", swell=number(1 / ratio), place=case.place),
        cautions=(Caution("warn", say("foam-burns"), ("common-practice",)),),
        sources=("common-practice", "computed"),
    )


@rule("bake_adjust.leavening", "uwyo-altitude-adjusters", "usu-faq-204", "csu-cakes-2002")
def leavening_rule(case: Case) -> Part | None:
    """Baking powder or soda here."""
    if case.dish_class == SWEET and asked(case) == "leavening":
        return _foamed(case)
    if (flour := _self_rising(case)) and asked(case) == "leavening":
        return _beside_flour(case, *flour)
    part = amount_part(case, "leavening", lambda b: leavening.why(b, b.ratio("leavening")))
    if part is None or not part.figures or not case.request.subject or part_of(case.request.subject).name != "soda":
        return part
    sources = (*part.sources, "csu-high-altitude-food-prep", "from-memory")
    return replace(part, steps=(*part.steps, say("soda-floor")), sources=sources)


@rule("bake_adjust.yeast", "common-practice", "uwyo-altitude-adjusters")
def yeast_rule(case: Case) -> Part | None:
    """Yeast here."""
    if case.request.rise_min:
        return None
    return amount_part(case, "yeast", yeast.why)


@rule("bake_adjust.sugar", "uwyo-altitude-adjusters", "usu-faq-204")
def sugar_rule(case: Case) -> Part | None:
    """Sugar here."""
    return amount_part(case, "sugar", sugar.why)


@rule("bake_adjust.liquid", "uwyo-altitude-adjusters", "usu-faq-204")
def liquid_rule(case: Case) -> Part | None:
    """Liquid here."""
    return amount_part(case, "liquid", liquid.why)


@rule("bake_adjust.flour", "common-practice")
def flour_rule(case: Case) -> Part | None:
    """Flour here."""
    if thickens(case):
        return None
    return amount_part(case, "flour", flour_component.why)


@rule("bake_adjust.fat", "csu-high-altitude-food-prep")
def fat_rule(case: Case) -> Part | None:
    """Butter or other fat here."""
    from rules.baking import fat

    return amount_part(case, "fat", fat.why)


@rule("bake_adjust.salt", "common-practice")
def salt_rule(case: Case) -> Part | None:
    """Salt: it stays."""
    if asked(case) != "salt":
        return None
    return Part(headline=say("salt", place=case.place), because=say("salt-because"))
