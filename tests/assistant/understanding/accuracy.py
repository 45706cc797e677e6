"""How well the language part hears the test questions, field by field.

Run as `python tests/assistant/understanding/accuracy.py` where simmerline is installed, or with PYTHONPATH=.;
it prints the accuracy of each field and every miss.
"""

from __future__ import annotations

import math
import sys
from collections import Counter
from functools import cache
from pathlib import Path
from typing import Any

import ruamel.yaml

from rules.model import Quantity, Request

FOLDER = Path(__file__).parents[3] / "data" / "utterances" / "test"
FT_M = 0.3048
PSI_PA = 6894.757
ELEVATION_TOLERANCE = 0.01
TEMPERATURE_TOLERANCE_K = 0.3

Case = dict[str, Any]


def load_cases(folder: Path = FOLDER) -> list[Case]:
    """Every case of the folder, files in alphabetical order."""
    reader = ruamel.yaml.YAML(typ="safe", pure=True)
    return [case for path in sorted(folder.glob("*.yml")) for case in reader.load(path)["cases"]]


def compare(case: Case, request: Request) -> dict[str, tuple[Any, Any, bool]]:
    """Field -> (expected, heard, whether they agree), for each field that the case lists."""
    return {field: check(case, request) for field, (keys, check) in FIELDS.items() if any(key in case for key in keys)}


def exact(key: str) -> Any:
    """A check that a field of the request equals what the case lists."""

    def check(case: Case, request: Request) -> tuple[Any, Any, bool]:
        heard = getattr(request, key)
        return case[key], heard, heard == case[key]

    return check


def elevation(key: str) -> Any:
    """A check of an elevation that the case lists in feet, in metres or as null."""

    def check(case: Case, request: Request) -> tuple[float | None, float | None, bool]:
        feet, heard = case.get(f"{key}_ft"), getattr(request, f"{key}_m")
        expected = case.get(f"{key}_m") if feet is None else feet * FT_M
        if expected is None or heard is None:
            return expected, heard, expected is heard
        tolerance = case["within_ft"] * FT_M if "within_ft" in case else ELEVATION_TOLERANCE * abs(expected)
        return expected, heard, abs(heard - expected) <= tolerance + 1.0

    return check


def near(expected: float, heard: float | None, tolerance: float) -> tuple[float, float | None, bool]:
    """Expected, heard, and whether the two stand within the tolerance of each other."""
    return expected, heard, heard is not None and math.isclose(expected, heard, rel_tol=0.0, abs_tol=tolerance)


def temperature(case: Case, request: Request) -> tuple[float, float | None, bool]:
    """A temperature that the case lists in degF or degC."""
    expected = (case["temperature_f"] - 32.0) / 1.8 if "temperature_f" in case else case["temperature_c"]
    return near(expected, request.temperature_c, TEMPERATURE_TOLERANCE_K)


def quantity(case: Case, request: Request) -> tuple[Any, Quantity | None, bool]:
    """An amount; spellings of one unit (qt, quart) count as the same."""
    expected, heard = case["quantity"], request.quantity
    agree = heard is not None and math.isclose(heard.value, expected["value"], rel_tol=1e-6)
    return expected, heard, agree and same_unit(heard.unit, expected["unit"])


def same_unit(one: str, other: str) -> bool:
    """Whether two spellings name one unit."""
    import pint

    try:
        return one == other or registry().Unit(one) == registry().Unit(other)
    except pint.UndefinedUnitError:
        return False


@cache
def registry() -> Any:
    """The plain units of pint, apart from the kitchen spellings that are under test."""
    import pint

    return pint.UnitRegistry()


def missing(case: Case, request: Request) -> tuple[list[str], list[str], bool]:
    """What was not said must not be made up, and where a rule covers the question it is asked for."""
    from rules import engine

    answer = engine.answer(request)
    made_up = [word for word in case["missing"] if engine.known(request, word)]
    asked = not answer.covered or set(case["missing"]) <= set(answer.missing)
    return case["missing"], list(answer.missing), asked and not made_up


FIELDS: dict[str, tuple[tuple[str, ...], Any]] = {
    "topic": (("topic",), exact("topic")),
    "dish": (("dish",), exact("dish")),
    "method": (("method",), exact("method")),
    "elevation": (("elevation_ft", "elevation_m", "elevation"), elevation("elevation")),
    "elevation_from": (("elevation_from",), exact("elevation_from")),
    "from_elevation": (("from_elevation_ft", "from_elevation_m"), elevation("from_elevation")),
    "time": (("time_min",), lambda case, request: near(case["time_min"], request.time_min, 0.5)),
    "elapsed": (("elapsed_min",), lambda case, request: near(case["elapsed_min"], request.elapsed_min, 0.5)),
    "planned": (("planned_min",), lambda case, request: near(case["planned_min"], request.planned_min, 0.5)),
    "time_high": (("time_high_min",), lambda case, request: near(case["time_high_min"], request.time_high_min, 0.5)),
    "temperature": (("temperature_f", "temperature_c"), temperature),
    "quantity": (("quantity",), quantity),
    "portions": (("portions",), exact("portions")),
    "pressure": (("pressure_psi",), lambda case, request: near(case["pressure_psi"] * PSI_PA, request.gauge_pa, 200.0)),
    "units": (("units",), exact("units")),
    "missing": (("missing",), missing),
}


def main() -> int:
    """Print the accuracy of each field and the misses; the exit code is 0 whatever they are."""
    from assistant.answering import understand

    asked: Counter[str] = Counter()
    right: Counter[str] = Counter()
    misses = []
    cases = load_cases()
    for case in cases:
        fields = compare(case, understand(case["text"], case.get("context", ())))
        whole = all(agree for _, _, agree in fields.values())
        asked.update([*fields, "whole question"])
        right.update([field for field, (_, _, agree) in fields.items() if agree] + ["whole question"] * whole)
        misses += [f"{case['topic']}: {case['text']}\n    {field}: expected {expected}, heard {heard}"
                   for field, (expected, heard, agree) in fields.items() if not agree]  # fmt: skip
    print(f"{len(cases)} questions")
    for field in [*FIELDS, "whole question"]:
        if asked[field]:
            print(f"{field:15} {right[field]:4} of {asked[field]:4}  {100 * right[field] / asked[field]:6.1f} %")
    print(*misses, sep="\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
