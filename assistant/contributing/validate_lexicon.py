"""The validator's part on the lexicon's rows: every word is heard as its own row, every number is plausible."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from functools import cache
from typing import Any

from assistant.reading.text import fold
from assistant.understanding import lexicon
from rules import tables
from rules.foods.dishes import Dish, Span, classes, dishes, in_row, sea_level_time
from rules.foods.methods import marked
from rules.physics.air import HIGHEST_M, LOWEST_M

Problem = tuple[str, str, str]

DISHES, INGREDIENTS, PORTIONS = "lexicon/dishes", "lexicon/ingredients.toml", "tables/portions_common-practice.csv"
A_DAY_MIN = 24 * 60
LONGEST_MIN = {"sous_vide": 48 * 60}  # a cured or tough cut
OPEN_POT, SIMMERED = ("boil", "simmer", "braise", "stew"), ("simmer", "braise", "stew")

# Last words, ending in s, of names that have no singular that a cook would say.
NO_SINGULAR = """
arrugadas asparagus bangus bass bigos blettes bogracs bolas bourekas bravas bretonnes camarones capuns carnitas
chilaquiles coulis couscous cristianos csirkepaprikas dauphinois divorciados dois dorados droewors duxelles eddoes
escamoles faggots fours fries fritas fritos gandules geschnetzeltes giblets glass gras grits guisadas haggis hummus
jus keftedes khorovats kourabiedes kumis langos leftovers loukoumades maas machboos maluns mariscos medames migas
molasses myrtilles octopus pericos potjiekos preserves quelites raisins rajas rancheros rellenas res rois rotos secas
speculoos stovies tibios tibs tournedos varnishkes vaudois verdolagas verts
"""
# Melted sugar is caramel and the sweets cut from it are caramels; chocolate and chocolates likewise.
TWO_THINGS = frozenset({"caramel", "chocolate"})

GRAMS_PER_CUP = (30, 400)  # bran is the lightest, syrup the heaviest
SPOONS_IN_A_CUP = {"tbsp_g": 16, "tsp_g": 48}
SPOON_TOLERANCE = 0.25
RAW_G, COOKED_G = (2, 1000), (20, 500)


def problems() -> Iterator[Problem]:
    """File, row and what is wrong with it, for every fault."""
    for row in dish_rows():
        for dish in in_row(row):
            yield from ((DISHES, dish.name, fault) for fault in dish_faults(dish))
    for row in tables.read_toml("lexicon/places.toml")["place"]:
        yield from (("lexicon/places.toml", row["name"], fault) for fault in place_faults(row))
    for row in tables.read_toml(INGREDIENTS)["ingredient"]:
        yield from ((INGREDIENTS, row["name"], fault) for fault in ingredient_faults(row))
    yield from class_faults()
    yield from check_faults()
    yield from unknown_dishes()
    yield from portion_faults()


def dish_rows() -> Iterator[dict[str, Any]]:
    """The rows of every family of dishes, in the order of their files."""
    for name in sorted(f.name for f in tables.data_path(DISHES).iterdir() if f.name.endswith(".toml")):
        yield from tables.read_toml(f"{DISHES}/{name}")["dish"]


def dish_faults(dish: Dish) -> Iterator[str]:
    """What is wrong with one dish."""
    yield from word_faults(dish)
    yield from number_faults(dish)
    yield from time_faults(dish)


def word_faults(dish: Dish) -> Iterator[str]:
    """Words that are not heard as the dish, are not plain, or follow from another word of it."""
    phrases = (dish.name, *dish.heard_as)
    for phrase in phrases:
        if owners()[phrase.casefold()] != {dish.name}:
            yield f'"{phrase}" names another dish too'
        elif named(phrase) != {dish.name}:
            yield f'"{phrase}" is not heard as it'
        if phrase != phrase.strip().lower():
            yield f'"{phrase}" is not plain lower case'
    folded = [fold(phrase) for phrase in phrases]
    yield from (f'"{p}" stands twice' for i, p in enumerate(folded) if p in folded[:i])
    yield from (
        f'"{p}" follows from "{p[:-1]}"' for p in folded[1:] if p[-1:] == "s" and len(p) > 4 and p[:-1] in folded
    )


def number_faults(dish: Dish) -> Iterator[str]:
    """One rib or many ribs: the other number names this dish, and no other."""
    if {dish.name, dish.name[:-1]} & TWO_THINGS or " and " in dish.name:
        return
    if not dish.name.endswith("s"):
        if not named(dish.name + "s") <= {dish.name}:
            yield "more than one of it is heard as something else"
        return
    heard = {name for one in singulars(dish.name) for name in named(one)}
    if heard != {dish.name} and dish.name.split()[-1] not in NO_SINGULAR.split():
        yield "its singular is not heard as it: list it, or its last word among NO_SINGULAR"


def time_faults(dish: Dish) -> Iterator[str]:
    """Times that are missing, implausible, or on the wrong side of the open pot's."""
    if len(set(dish.methods)) != len(dish.methods):
        yield "a method stands twice"
    times = {m: sea_level_time(dish.name, dish.dish_class, m) for m in dish.methods if m not in marked("untimed")}
    for method, time in times.items():
        if time is None:
            yield f"has no time to {method}, neither its own nor of its class"
        elif not 0 < time.low_min <= time.high_min <= LONGEST_MIN.get(method, A_DAY_MIN):
            yield f"{time.low_min:g} to {time.high_min:g} min to {method} is no time"
        elif time.source not in tables.sources():
            yield f'source "{time.source}" unknown'
    yield from slower_faults(times)


def slower_faults(times: dict[str, Span | None]) -> Iterator[str]:
    """At 15 psi nothing takes as long as in the open pot; a crock works below the simmer and never beats it."""
    pressed, crock = times.get("pressure_cook"), times.get("slow_cook")
    for method in OPEN_POT:
        pot = times.get(method)
        if pot and pressed and not (pressed.low_min < pot.low_min and pressed.high_min < pot.high_min):
            yield f"takes as long in the pressure cooker as to {method}"
        if pot and crock and method in SIMMERED and crock.high_min <= pot.high_min:
            yield f"takes no longer in the slow cooker than to {method}"


def place_faults(row: dict[str, Any]) -> Iterator[str]:
    """An airport or an elevation, one of them, at which one can cook."""
    if ("airport" in row) == ("elevation_m" in row):
        yield "give an airport or an elevation, one of them"
    elif "elevation_m" in row and row.get("source") not in tables.sources():
        yield f'source "{row.get("source")}" unknown'
    elif "elevation_m" in row and not LOWEST_M <= row["elevation_m"] <= HIGHEST_M:
        yield f"{row['elevation_m']} m is no elevation to cook at"


def ingredient_faults(row: dict[str, Any]) -> Iterator[str]:
    """A weight, spoons that go with the cup, and parts of no more than the whole."""
    cup_g = row.get("grams_per_cup")
    if cup_g is not None and not GRAMS_PER_CUP[0] <= cup_g <= GRAMS_PER_CUP[1]:
        yield f"{cup_g} g a cup is not plausible"
    if not any(key in row for key in ("grams_per_cup", "each_g", *SPOONS_IN_A_CUP)):
        yield "it has no weight at all"
    if sum(row.get(f"{part}_pct", 0) for part in ("water", "sugar", "fat")) > 101:
        yield "water, sugar and fat are more than the whole"
    for spoon, share in SPOONS_IN_A_CUP.items():
        if cup_g and spoon in row and abs(row[spoon] * share / cup_g - 1) > SPOON_TOLERANCE:
            yield f"{spoon} does not go with the cup"
    if "tsp_g" in row and "tbsp_g" in row and abs(row["tsp_g"] * 3 / row["tbsp_g"] - 1) > 0.08:
        yield "three teaspoons of it are not a tablespoon"


def class_faults() -> Iterator[Problem]:
    """Classes without a dish, or without a time for their usual method."""
    peopled = {dish.dish_class for dish in dishes().values()}
    for one in classes().values():
        if one.id not in peopled:
            yield "lexicon/classes.toml", one.id, "has no dish"
        if one.default_method not in marked("untimed") and not sea_level_time(None, one.id, one.default_method):
            yield "lexicon/classes.toml", one.id, f"has no time to {one.default_method}, its usual method"


def check_faults() -> Iterator[Problem]:
    """Signs of dishes that are none, or by methods that are none."""
    known = {"of": set(dishes()), "by": {row["id"] for row in tables.read_toml("lexicon/methods.toml")["method"]}}
    for row in tables.read_toml("lexicon/checks.toml")["check"]:
        for key, names in known.items():
            yield from (
                ("lexicon/checks.toml", word, f"no such {key}") for word in row.get(key, ()) if word not in names
            )


def _equipment() -> list[dict[str, Any]]:
    rows: list[dict[str, Any]] = tables.read_toml("lexicon/equipment.toml")["equipment"]
    return rows


def unknown_dishes() -> Iterator[Problem]:
    """Rows of tables that name a dish that is none: a table that a dish was renamed under would fall silent."""
    known = {*dishes(), *(f"class:{id}" for id in classes()), *(f"equipment:{row['id']}" for row in _equipment())}
    for file in sorted(f.name for f in tables.data_path("tables").iterdir() if f.name.endswith(".csv")):
        rows = tables.read_csv(f"tables/{file}").rows
        for column in {"dish", "drink", "of"}.intersection(rows[0]):
            for word in sorted({row[column] for row in rows} - known):
                yield f"tables/{file}", column, f'dish "{word}" unknown'


def portion_faults() -> Iterator[Problem]:
    """A portion of every class, in weights that one person eats."""
    found = {row["dish"]: row for row in tables.read_csv(PORTIONS).rows}
    yield from ((PORTIONS, f"class:{id}", "missing") for id in classes() if f"class:{id}" not in found)
    for dish, row in found.items():
        for column, (low, high) in (("raw_g", RAW_G), ("cooked_g", COOKED_G)):
            if not low <= float(row[column]) <= high:
                yield PORTIONS, dish, f"{row[column]} g is no portion ({column})"


@cache
def owners() -> dict[str, set[str]]:
    """Which dishes each phrase names."""
    heard: dict[str, set[str]] = defaultdict(set)
    for dish in dishes().values():
        for phrase in (dish.name, *dish.heard_as):
            heard[phrase.casefold()].add(dish.name)
    return heard


def named(phrase: str) -> set[str]:
    """The dishes that the language hears in a phrase, its plurals included."""
    return {id for kind, id in lexicon.meanings(fold(phrase)) if kind == "dish"}


def singulars(plural: str) -> set[str]:
    """Plain guesses at the singular of a plural.

    >>> sorted(singulars("loaves"))
    ['loaf', 'loav', 'loave', 'loavesy']
    """
    guesses = {
        plural[:-1], plural.removesuffix("es"), plural.removesuffix("ies") + "y", plural.removesuffix("ves") + "f"
    }  # fmt: skip
    return guesses - {plural}
