"""Recipes made by hand: lines with masses, steps with their marks, without reading any text."""

from __future__ import annotations

import pytest

from rules.physics.units import to_c
from rules.recipe import Cue, IngredientLine, PressureMark, Recipe, Step, TempMark, TimeMark

ML = {"tsp": 4.929, "tbsp": 14.787, "cup": 236.588}


class Hand:
    """Writes recipe parts: the measure stands first in a line, the marks are found in a step's text."""

    @staticmethod
    def line(amount: float | None, unit: str | None, item: str, mass_g: float | None, **more) -> IngredientLine:
        measure = "" if amount is None else f"{amount:g}" + (f" {unit}" if unit else "")
        text = f"{measure} {item}".strip()
        more.setdefault("mass_from", "density")
        return IngredientLine(
            line=text,
            item=item.removeprefix("large "),
            amount=amount,
            unit=unit,
            mass_g=mass_g,
            start=0,
            end=len(measure),
            **more,
        )

    @staticmethod
    def step(text: str, *marks: tuple, component: str = "") -> Step:
        found: dict[str, list] = {"times": [], "temperatures": [], "pressures": [], "cues": []}
        for kind, words, *rest in marks:
            start = text.index(words)
            end = start + len(words)
            if kind == "time":
                low, high, what = rest
                found["times"].append(TimeMark(start, end, low, high, what))
            elif kind in ("degF", "degC"):
                low, high, what = rest
                ends = [to_c(t) if kind == "degF" else t for t in (low, high)]
                found["temperatures"].append(TempMark(start, end, *ends, kind, what))
            elif kind == "psi":
                found["pressures"].append(PressureMark(start, end, rest[0] * 6894.757293168))
            else:
                found["cues"].append(Cue(start, end, kind))
        return Step(text=text, component=component, **{k: tuple(v) for k, v in found.items()})


@pytest.fixture(scope="session")
def hand() -> type[Hand]:
    return Hand


@pytest.fixture(scope="session")
def layer_cake(hand) -> Recipe:
    """Timberfold Lodge's yellow cake, two 9-inch layers, as written at sea level."""
    return Recipe(
        title="Lodge yellow cake",
        ingredients=(
            hand.line(2.25, "cup", "all-purpose flour", 281),
            hand.line(2, "tsp", "baking powder", 9.2),
            hand.line(0.5, "tsp", "salt", 3),
            hand.line(0.5, "cup", "butter", 113),
            hand.line(1.5, "cup", "granulated sugar", 300),
            hand.line(3, None, "large eggs", 150),
            hand.line(1, "cup", "milk", 244),
            hand.line(2, "tsp", "vanilla extract", 8.4),
        ),
        steps=(
            hand.step(
                "Preheat the oven to 350 °F. Fill two 9-inch pans two-thirds full.",
                ("degF", "350 °F", 350, 350, "oven"),
            ),
            hand.step(
                "Bake at 350 °F for 30 to 35 minutes, until a tester comes out clean.",
                ("degF", "350 °F", 350, 350, "oven"),
                ("time", "30 to 35 minutes", 30, 35, "bake"),
            ),
            hand.step("Cool in the pans for 10 minutes.", ("time", "10 minutes", 10, 10, "cool")),
        ),
    )


@pytest.fixture(scope="session")
def bread(hand) -> Recipe:
    """A lean loaf of the bakery at 5,300 ft, by weight."""
    return Recipe(
        title="House loaf",
        ingredients=(
            hand.line(500, "g", "bread flour", 500),
            hand.line(340, "g", "water", 340),
            hand.line(2.25, "tsp", "instant yeast", 7.2),
            hand.line(10, "g", "salt", 10),
        ),
        steps=(
            hand.step(
                "Let rise until doubled, about 1 hour.",
                ("doubled", "until doubled"),
                ("time", "1 hour", 60, 60, "rise"),
            ),
            hand.step("Shape, then refrigerate for 12 hours.", ("time", "12 hours", 720, 720, "chill")),
            hand.step(
                "Bake at 230 °C for 35 minutes, to 96 °C inside.",
                ("degC", "230 °C", 230, 230, "oven"),
                ("time", "35 minutes", 35, 35, "bake"),
                ("degC", "96 °C", 96, 96, "food"),
            ),
        ),
    )


@pytest.fixture(scope="session")
def braise(hand) -> Recipe:
    """Short ribs for the lodge."""
    return Recipe(
        title="Braised short ribs",
        ingredients=(
            hand.line(4, "lb", "short ribs", 1814),
            hand.line(2, "cup", "beef stock", 474),
            hand.line(1, "cup", "red wine", 237),
            hand.line(2, "tbsp", "flour", 16),
        ),
        steps=(
            hand.step("Brown the ribs, 10 minutes.", ("time", "10 minutes", 10, 10, "fry")),
            hand.step(
                "Bring to a boil, cover and braise at 325 °F for 2 1/2 to 3 hours, until 203 °F inside.",
                ("boil", "Bring to a boil"),
                ("degF", "325 °F", 325, 325, "oven"),
                ("time", "2 1/2 to 3 hours", 150, 180, "braise"),
                ("degF", "203 °F", 203, 203, "food"),
            ),
        ),
    )


@pytest.fixture(scope="session")
def fudge(hand) -> Recipe:
    """Chocolate fudge."""
    return Recipe(
        title="Fudge",
        ingredients=(hand.line(2, "cup", "granulated sugar", 400), hand.line(0.75, "cup", "milk", 183)),
        steps=(
            hand.step("Cook to 236 °F, the soft ball stage.", ("degF", "236 °F", 236, 236, "sugar")),
            hand.step("For the praline cook the sugar to 340 °F.", ("degF", "340 °F", 340, 340, "sugar")),
        ),
    )


@pytest.fixture(scope="session")
def beans(hand) -> Recipe:
    """A pot of beans, by the open pot or under pressure."""
    return Recipe(
        title="Pot of pinto beans",
        ingredients=(hand.line(1, "lb", "pinto beans", 454), hand.line(8, "cup", "water", 1896)),
        steps=(
            hand.step("Soak for 12 hours.", ("time", "12 hours", 720, 720, "soak")),
            hand.step("Bring to a boil and simmer 90 minutes.", ("time", "90 minutes", 90, 90, "simmer")),
            hand.step(
                "Or pressure-cook 40 minutes at 15 psi.",
                ("time", "40 minutes", 40, 40, "pressure"),
                ("psi", "15 psi", 15),
            ),
        ),
    )


@pytest.fixture(scope="session")
def recipes(layer_cake, bread, braise, fudge, beans) -> dict[str, Recipe]:
    """One recipe for each of several styles."""
    return {"layer_cake": layer_cake, "yeast_bread": bread, "braise": braise, "sugarwork": fudge, "beans": beans}
