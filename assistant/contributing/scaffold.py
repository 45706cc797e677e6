"""The files of a new cooking method, ready to be filled: module, lexicon row, test."""

from __future__ import annotations

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

MODULE = '''"""{title}: say here in one line what the method is."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.where_water_boils import boiling_point
from rules.said import sentences

say = sentences("methods/{method}")


@rule("{method}.check", "common-practice")
def check(case: Case) -> Part:
    """What the cook checks for."""
    return Part(steps=(say("check", food=case.food),))


RULES = (boiling_point, check)
'''

ROW = """
[[method]]
id = "{method}"
label = "{words}"
gerund = "{words}ing"
heard_as = ["{words}", "{words}ed", "{words}ing"]
description = "Say here in one line what the method is."
"""

WORDING = """check = Say what to check { $food } for.
"""

TEST = '''"""{title}: what a cook is told."""

from assistant.replies.worded import answer
from rules.model import Request


def test_{method}_answers_at_elevation() -> None:
    reply = answer(Request(topic="time", method="{method}", dish_class="general", elevation_m=2133.6))
    assert reply.covered
    assert reply.figure("boiling_point").value < reply.figure("boiling_point").sea_level
'''


def make_method(method: str, root: Path = ROOT) -> tuple[Path, ...]:
    """Write the files of a new method and say which.

    method: the method word in snake_case; root: the checkout
    raises: ValueError where the word is no identifier; FileExistsError where the method is there already
    """
    if not re.fullmatch(r"[a-z][a-z_]*[a-z]", method):
        raise ValueError(f"{method!r} is no method word: use lower-case letters and underscores, such as spit_roast")
    words = method.replace("_", " ")
    filled = {"method": method, "words": words, "title": words.capitalize()}
    module = root / "rules" / "methods" / f"{method}.py"
    test = root / "tests" / "rules" / "methods" / f"test_{method}.py"
    lexicon = root / "data" / "lexicon" / "methods.toml"
    wording = root / "data" / "wording" / "en" / "methods" / f"{method}.ftl"
    for path, text in ((module, MODULE.format(**filled)), (test, TEST.format(**filled)), (wording, WORDING)):
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("x", encoding="utf-8") as file:
            file.write(text)
    with lexicon.open("a", encoding="utf-8") as file:
        file.write(ROW.format(**filled))
    return module, lexicon, wording, test
