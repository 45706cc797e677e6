"""One reader: a phrase reads alike wherever it is said, and as a cook means it. The phrases are in phrases.toml."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

import pytest

from assistant.answering import understand
from assistant.cli.kitchen import pascals
from assistant.cli.taken_for_granted import elevation_heard
from assistant.drill.reading import read as read_reply
from assistant.reading.reader import hear, value
from assistant.reading.units import to_si
from assistant.recipes.amounts import amounts
from assistant.recipes.changes_heard import change_heard
from assistant.recipes.lines import read_line
from assistant.recipes.steps import read_step
from assistant.recipes.yields import read_yields
from assistant.understanding.pipeline import read
from rules.drill.question import Question

Ends = tuple[float, float]
Door = Callable[[str], Ends | None]

PHRASES = tomllib.loads(Path(__file__).with_name("phrases.toml").read_text(encoding="utf-8"))
# What one of the unit of a table is in SI. From memory of NIST SP 811: 0.3048 m, 6.894757 kPa, 28.34952 g, 4.928922 ml.
SIZES = {
    "time_min": 1.0, "weeks_min": 1.0, "temperature_c": 1.0, "elevation_m": 1.0, "elevation_ft": 0.3048,
    "pressure_psi": 6894.757, "pressure_kpa": 1000.0, "mass_g": 1.0, "mass_oz": 28.34952, "volume_ml": 1.0,
    "volume_tsp": 4.928922, "count": 1.0,
    "number": 1.0, "clock": 1.0,
}  # fmt: skip


def expected(table: str, figure: float | list[float]) -> Ends:
    ends = figure if isinstance(figure, list) else [figure, figure]
    low, high = ((end - 32) / 1.8 if table.endswith("_f") else end * SIZES[table] for end in ends)
    return low, high


def only(found: Iterable[Ends]) -> Ends | None:
    """The one reading; None where there is none or more than one."""
    readings = list(found)
    return readings[0] if len(readings) == 1 else None


def in_question(frame: str, kind: str) -> Door:
    return lambda say: only((m.low, m.high) for m in read(frame.format(say))._.measures if m.kind == kind)


def asked(frame: str, low: str, high: str | None = None) -> Door:
    def ends(say: str) -> Ends | None:
        request = understand(frame.format(say))
        begin = getattr(request, low)
        end = getattr(request, high) if high else None
        return None if begin is None else (begin, begin if end is None else end)

    return ends


def in_step(frame: str, marks: str, low: str, high: str) -> Door:
    return lambda say: only((getattr(m, low), getattr(m, high)) for m in getattr(read_step(frame.format(say)), marks))


def in_reply(unit: str, size: float = 1.0) -> Door:
    question = Question(
        id="boiling.point/1", theme="boiling", level=1, text="How much?", form="figure", answer=1.0, shown="", why="",
        sources=(), unit=unit, low=0.0, high=2.0,
    )  # fmt: skip

    def ends(say: str) -> Ends | None:
        given = read_reply(question, say).given
        if given is None or isinstance(given, str):
            return None
        low, high = given if isinstance(given, tuple) else (given, given)
        return low * size, high * size

    return ends


def in_line(frame: str) -> Door:
    def ends(say: str) -> Ends | None:
        line = read_line(frame.format(say))
        if line is None or line.amount is None or ("egg" not in line.item and "flour" not in line.item):
            return None
        low = total(line.amount, line.unit) + sum(total(more.value, more.unit) for more in line.further)
        return low, low if line.amount_high is None else total(line.amount_high, line.unit)

    return ends


def in_amounts(say: str) -> Ends | None:
    flour = read_line("5 kg flour")
    assert flour
    marks = amounts(f"Stir in {say} of the flour.", "", [flour])
    return only((total(m.value, m.unit), total(m.value if m.high is None else m.high, m.unit)) for m in marks)


def in_batch(frame: str, unit: str | None = None) -> Door:
    def ends(say: str) -> Ends | None:
        before = change_heard(frame.format(say)).get("from")
        figure = before and total(before["value"], unit or before["unit"])
        return None if figure is None else (figure, figure)

    return ends


def in_yield(say: str) -> Ends | None:
    made = read_yields(f"Makes {say} rolls")
    return made and (made.value, made.value if made.high is None else made.high)


def of_day(frame: str) -> Door:
    return lambda say: only((m.low, m.high) for m in read(frame.format(say))._.clock)


def total(figure: float, unit: str | None) -> float:
    return figure if unit is None else to_si(figure, unit)


def typed(say: str) -> Ends | None:
    height = elevation_heard(say).elevation_m
    return None if height is None else (height, height)


def typed_pressure(say: str) -> Ends:
    return pascals(say), pascals(say)


def numbers(frame: str) -> Door:
    """The one number of a question; both ends where two are the ends of a range."""

    def ends(say: str) -> Ends | None:
        found = [n.value for n in read(frame.format(say))._.numbers]
        return (found[0], found[-1]) if 1 <= len(found) <= 2 else None

    return ends


TIMES: dict[str, Door] = {
    "question": in_question("the book says to simmer the beans {}", "time"),
    "request": asked("the book says to simmer the beans {}", "time_min", "time_high_min"),
    "canning": asked("we process peaches in the boiling water canner {}, is it enough", "time_min", "time_high_min"),
    "timer": asked("set a timer for {}", "time_min", "time_high_min"),
    "step": in_step("Simmer {}.", "times", "low_min", "high_min"),
    "reply": in_reply("min"),
    "batch": in_batch("baked {} to 9 weeks"),
}
# No time to cook or to set a timer to.
LONG_TIMES = {name: door for name, door in TIMES.items() if name not in ("request", "canning", "timer")}
TEMPERATURES: dict[str, Door] = {
    "question": in_question("is the oven at {} right for it", "temperature"),
    "step": in_step("Bring it to {} and hold it.", "temperatures", "low_c", "high_c"),
    "reply": in_reply("degC"),
    "batch": in_batch("oven {} to 899 F"),
}
DEGREES: dict[str, Door] = {
    "step": in_step("Bake at {}.", "temperatures", "low_c", "high_c"),
    "reply": in_reply("degC"),
    "request": asked("is the oven at {} right for roast chicken", "temperature_c"),
    "batch": in_batch("oven {} to 899 degrees", "degF"),
}
ELEVATIONS: dict[str, Door] = {
    "question": asked("how long do I boil pasta, my elevation is {}", "elevation_m"),
    "at": typed,
    "reply": in_reply("m"),
}
PRESSURES: dict[str, Door] = {
    "question": in_question("the cooker is at {}", "pressure"),
    "step": lambda say: only((m.gauge_pa, m.gauge_pa) for m in read_step(f"Cook at {say}.").pressures),
    "reply": in_reply("psi", 6894.757),
    "offset": typed_pressure,
}
MASSES: dict[str, Door] = {
    "question": in_question("i have {} of flour", "mass"),
    "line": in_line("{} flour"),
    "step": in_amounts,
    "batch": in_batch("flour {} to 99 kg"),
}
VOLUMES: dict[str, Door] = {
    "question": in_question("i have {} of flour", "volume"),
    "line": in_line("{} flour"),
    "step": in_amounts,
    "reply": in_reply("tsp", 4.928922),
    "batch": in_batch("flour {} to 99 quarts"),
}
COUNTS: dict[str, Door] = {
    "question": numbers("i have {} eggs"),
    "line": in_line("{} eggs"),
    "yield": in_yield,
    "batch": in_batch("{} eggs to 9999 eggs"),
}
NUMBERS: dict[str, Door] = {
    "question": numbers("it came to {} there"),
    "reply": in_reply("factor"),
}
CLOCKS: dict[str, Door] = {
    "question": of_day("dinner is at {}"),
    "reader": lambda say: only((m.low, m.high) for m in hear(f"serve it at {say}").clock),
}
DOORS = {
    "time_min": TIMES, "weeks_min": LONG_TIMES, "temperature_f": TEMPERATURES, "temperature_c": TEMPERATURES,
    "degrees_f": DEGREES,
    "elevation_ft": ELEVATIONS, "elevation_m": ELEVATIONS, "pressure_psi": PRESSURES, "pressure_kpa": PRESSURES,
    "mass_g": MASSES, "mass_oz": MASSES, "volume_tsp": VOLUMES, "volume_ml": VOLUMES, "count": COUNTS,
    "number": NUMBERS, "clock": CLOCKS,
}  # fmt: skip
# A change of a recipe goes from one figure to another, and has no ranges.
ONE_FIGURE = ("batch",)


@pytest.mark.parametrize(("table", "door"), [(table, door) for table, doors in DOORS.items() for door in doors])
def test_every_door_reads_a_phrase_alike(table: str, door: str) -> None:
    phrases: dict[str, Any] = PHRASES[table]
    taken = {say: figure for say, figure in phrases.items() if not (isinstance(figure, list) and door in ONE_FIGURE)}
    readings = {say: DOORS[table][door](say) for say in taken}
    wanted = {say: pytest.approx(expected(table, figure), rel=2e-5, abs=1e-6) for say, figure in taken.items()}
    assert {say: got for say, got in readings.items() if got != wanted[say]} == {}


@pytest.mark.parametrize("say", PHRASES["refused"])
def test_what_is_no_number_is_none_anywhere(say: str) -> None:
    assert value(say) is None
    assert hear(say).numbers == read(f"i have {say} eggs")._.numbers == ()
    line = read_line(f"{say} eggs")
    assert line
    assert line.amount is None
    assert in_reply("factor")(say) is None


def test_there_are_enough_phrases() -> None:
    assert sum(map(len, PHRASES.values())) >= 300


@pytest.mark.parametrize("table", sorted(DOORS.keys() - {"number", "count", "clock", "degrees_f"}))
def test_a_measure_knows_where_it_stands(table: str) -> None:
    """From its first character to its last, in the text as it was given."""
    astray = {}
    for say in PHRASES[table]:
        heard = hear(f"à peu près, {say} or so")
        places = [heard.place(m) for m in heard.measures]
        low = len("à peu près, ") + (len("between ") if say.startswith("between") else 0)
        if places != [(low, len(f"à peu près, {say}".removesuffix(".")))]:
            astray[say] = places
    assert astray == {}
