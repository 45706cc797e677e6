"""An order as text: what every form shows, in order, in the units of the reader."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from assistant.planning.order_sheet import Line, Loose, Part, Served, Sheet
from assistant.recipes.scale import numbered
from assistant.replies.quantities import Say, duration
from assistant.replies.sentences import worded
from rules.amounts.stores import Kept
from rules.foods.dishes import dishes
from rules.model import Request, Units
from rules.physics.units import FT_PER_M, ML_PER_CUP
from rules.said import Said, sentences
from rules.tables import sources
from rules.topics.order.words import bought

say = sentences("planning/order")
# from here up it matters where the kitchen stands [m]
AT_SEA_M = 30.0
COMMON = "common-practice"
# a time that changes by less is not told [share]
NOTICED = 0.08
NOTICED_MIN = 2.0
# gas for which nobody orders another bottle [kg]
NOTICED_GAS_KG = 0.1
ML_PER_QT = 4 * ML_PER_CUP
# as near to a whole quart as packs are filled [share]
NEARLY = 0.03
# what is told as many, though it is weighed
COUNTED = ("egg yolk", "egg white")


@dataclass(frozen=True, slots=True)
class Row:
    """One thing to order, as text. on_hand: "" where nothing was deducted"""

    item: str
    need: str
    on_hand: str
    order: str
    parts: str


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """The sheet as text: its title and summary, rows by the name of their store, and what stands below them.

    made: dishes that a recipe has to tell more of; effects: what the elevation changes; fuel: of that the burners'
    """

    title: str
    summary: tuple[str, ...]
    heads: dict[str, str]
    stores: tuple[tuple[str, tuple[Row, ...]], ...]
    made: tuple[str, ...]
    effects: tuple[str, ...]
    fuel: str
    blocks: tuple[tuple[str, tuple[str, ...]], ...]
    left_out: tuple[str, ...]
    foot: str


def view(sheet: Sheet, units: Units) -> View:
    """The sheet in the reader's units."""
    return _Writer(sheet, units).view()


def name_of(line: Line, units: Units = "us") -> str:
    """What is bought, in words: bone-in short ribs, unpeeled potatoes."""
    if line.bought:
        return line.bought
    if line.kept.each_g or line.item in COUNTED:
        return numbered(line.item, many=True)
    known = dishes().get(line.item)
    request = Request(dish=line.item, dish_class=known.dish_class if known else None)
    own = known is None or _is_bought_as_another(request)
    return line.item if own else worded(bought(request), units)


def _is_bought_as_another(request: Request) -> bool:
    from rules.amounts.portion import portion

    return bool(portion(request.dish, request.dish_class or "general").bought_as)


@dataclass(frozen=True, slots=True)
class _Writer:
    """Words for one sheet and one reader."""

    sheet: Sheet
    units: Units

    @property
    def say(self) -> Say:
        return Say(self.units)

    @property
    def place(self) -> str:
        feet, metres = self.sheet.elevation_m * FT_PER_M, self.sheet.elevation_m
        return f"{round(feet):,} ft" if self.units == "us" else f"{round(metres):,} m"

    def words(self, said: Said) -> str:
        return worded(said, self.units)

    def view(self) -> View:
        stores = ((self.words(say("store", id=name)), tuple(map(self.row, lines))) for name, lines in self.sheet.stores)
        return View(
            title=self.words(say("title", named="yes" if self.sheet.title else "no", title=self.sheet.title)),
            summary=tuple(self.summary()),
            heads=self.heads(),
            stores=tuple(stores),
            made=self.made(),
            effects=tuple(self.effects()) if self.sheet.served else (),
            fuel=self.fuel(),
            blocks=tuple(self.blocks()),
            left_out=tuple(map(self.words, self.sheet.faults)),
            foot=self.foot(),
        )

    def summary(self) -> Iterator[str]:
        covers = self.sheet.covers
        yield self.words(
            say("for-covers", counted="yes" if covers else "no", covers=f"{covers or 0:,}", place=self.place)
        )
        if self.sheet.service:
            yield self.words(say("served-at", service=self.sheet.service))
        if self.sheet.margin:
            yield self.words(say("margin-told", margin=f"{self.sheet.margin * 100:g}"))

    def heads(self) -> dict[str, str]:
        """What stands over the columns of a row."""
        heads = {
            "item": say("columns-item"),
            "need": say("columns-need"),
            "on_hand": say("columns-on-hand"),
            "order": say("columns-order"),
            "parts": say("columns-parts", place=self.place),
            "left_out": say("left-out-heading"),
        }
        return {name: self.words(head) for name, head in heads.items()}

    # a row

    def row(self, line: Line) -> Row:
        return Row(
            item=name_of(line, self.units),
            need=self.amount(line.wanted_g, line.kept),
            on_hand=self.amount(line.on_hand_g, line.kept) if line.on_hand_g else "",
            order=self.order(line),
            parts=", ".join(map(self.part, line.parts)),
        )

    def amount(self, grams: float, of: Kept) -> str:
        if of.g_per_ml:
            return self.say.ladled(grams / of.g_per_ml)
        if of.each_g:
            return f"{-int(-(grams / of.each_g - 1e-9) // 1):,}"
        return self.say.scaled(grams)

    def size(self, grams: float, of: Kept) -> str:
        """The size of a pack as it is printed on it: whole quarts, gallons, or else millilitres."""
        if not of.g_per_ml or self.units == "metric":
            return self.amount(grams, of)
        quarts = grams / of.g_per_ml / ML_PER_QT
        if round(quarts) < 1 or abs(quarts / round(quarts) - 1) > NEARLY:
            return f"{grams / of.g_per_ml:.0f} ml"
        return f"{round(quarts) // 4} gal" if round(quarts) % 4 == 0 else f"{round(quarts)} qt"

    def order(self, line: Line) -> str:
        packs, of = line.packs, line.kept
        if line.order_g <= 0:
            return self.words(say("nothing"))
        if packs is None:
            return self.amount(line.order_g, of)
        parts = []
        if packs.full:
            size = self.size(of.grams or 0.0, of)
            parts.append(say("full-packs", count=packs.full, amount=f"{packs.full:,}", pack=of.pack, size=size))
        if packs.splits:
            parts.append(say("splits", amount=f"{packs.splits:,}", size=self.size(of.split_g or 0.0, of)))
        return " + ".join(map(self.words, parts))

    def part(self, part: Part) -> str:
        if not part.there_g:
            return self.words(say("part-new", dish=part.dish))
        if not part.change:
            return self.words(say("part", dish=part.dish))
        percent = f"{max(1, round(abs(part.change) * 100))}"
        way = "more" if part.change > 0 else "less"
        return self.words(say("part-changed", dish=part.dish, percent=percent, way=way))

    # what stands below

    def blocks(self) -> Iterator[tuple[str, tuple[str, ...]]]:
        if self.sheet.loose:
            yield self.words(say("loose-heading")), tuple(map(self.loose, self.sheet.loose))
        if made := self.made():
            yield self.words(say("made-heading")), made
        if self.sheet.served:
            yield self.words(say("effects-heading", place=self.place)), tuple(self.effects())
            yield self.words(say("plates-heading")), tuple(map(self.plates, self.sheet.served))
        if self.sheet.notes:
            yield self.words(say("notes-heading")), tuple(map(self.words, self.sheet.notes))

    def loose(self, one: Loose) -> str:
        if not one.amount:
            return self.words(say("loose-some", item=one.item, dishes=", ".join(one.dishes)))
        unit = numbered(one.unit, many=one.amount > 1) if one.unit else ""
        amount = self.say.ladled(one.amount) if one.unit == "ml" else f"{one.amount:g} {unit}".strip()
        return self.words(say("loose-line", amount=amount, item=one.item, dishes=", ".join(one.dishes)))

    def made(self) -> tuple[str, ...]:
        return tuple(self.made_of(one) for one in self.sheet.served if one.made or one.of_its_kind)

    def made_of(self, one: Served) -> str:
        if one.of_its_kind:
            return self.words(say("kind-line", dish=one.name))
        return self.words(say("made-line", dish=one.name, amount=self.cooked(one), covers=one.covers))

    def cooked(self, one: Served) -> str:
        grams = one.cooked_g or 0.0
        return self.say.ladled(grams) if one.poured else self.say.scaled(grams)

    def plates(self, one: Served) -> str:
        weighed = one.cooked_g is not None
        return self.words(
            say(
                "plates-line",
                dish=one.name,
                covers=one.covers,
                way=one.way,
                weighed="yes" if weighed else "no",
                amount=self.cooked(one) if weighed else "",
            )
        )

    def effects(self) -> Iterator[str]:
        if abs(self.sheet.elevation_m) < AT_SEA_M:
            yield self.words(say("same-place"))
            return
        for one in self.sheet.served:
            if one.here_min is None or one.there_min is None:
                continue
            if abs(one.here_min - one.there_min) < max(NOTICED_MIN, NOTICED * one.there_min):
                continue
            told = {"dish": one.name, "here": duration(one.here_min), "there": duration(one.there_min)}
            yield self.words(say("longer", **told) if one.here_min > one.there_min else say("shorter", **told))
        for one in self.sheet.served:
            if one.extra_ml >= 0.01 * one.water_ml > 0:
                water, extra = self.say.ladled(one.water_ml), self.say.ladled(one.extra_ml)
                yield self.words(say("water-more", dish=one.name, water=water, extra=extra))
        yield self.fuel()
        yield self.words(say("unchanged"))

    def fuel(self) -> str:
        if self.sheet.gas_kg < NOTICED_GAS_KG:
            return self.words(say("fuel-same"))
        gas = self.say.scaled(self.sheet.gas_kg * 1000)
        return self.words(say("fuel-more", gas=gas, electricity=f"{self.sheet.electricity_kwh:.2g}"))

    def foot(self) -> str:
        if not self.sheet.served:
            return self.words(say("empty"))
        named = {one.source for one in self.sheet.served if one.source and one.source != COMMON}
        cited = "; ".join(f"{sources()[id].short} ({sources()[id].basis})" for id in sorted(named))
        told = self.words(say("by-source", sources=cited)) if cited else ""
        basis = self.words(say("basis-line", sources=told)) if told else self.words(say("basis-alone"))
        return f"{basis} {self.words(say('not-included'))}"
