"""The files of a new cooking method, ready to be filled: module, lexicon row, wording, test."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from pathlib import Path

from assistant.contributing.validate_methods import TO_WRITE, gerund_faults

ROOT = Path(__file__).resolve().parents[2]

MODULE = '''"""{title}: {lower_description}"""

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
gerund = {gerund}
heard_as = {heard_as}
amount = "{to_write}: the id of a row of amounts.toml"
description = {description}
"""

WORDING = """check = {to_write}: what to check {{ $food }} for.
"""

TEST = '''"""{title}: what a cook is told."""

from assistant.replies.worded import answer
from rules.model import Request


def test_{method}_answers_at_elevation() -> None:
    reply = answer(Request(topic="time", method="{method}", dish_class="general", elevation_m=2133.6))
    assert reply.covered
    assert reply.figure("boiling_point").value < reply.figure("boiling_point").sea_level
'''


def make_method(method: str, gerund: str, said: Sequence[str], description: str, root: Path = ROOT) -> tuple[Path, ...]:
    """Write the files of a new method and say which.

    method: the method word in snake_case; gerund: what doing it is called, `*` where the dish stands; said: what cooks
    say for it; description: what it is, in a line; root: the checkout
    raises: ValueError where the word is no identifier or the gerund no English; FileExistsError for a method there is
    """
    if not re.fullmatch(r"[a-z][a-z_]*[a-z]", method):
        raise ValueError(f"{method!r} is no method word: use lower-case letters and underscores, such as clay_pot")
    if faults := list(gerund_faults(gerund)):
        raise ValueError("; ".join(faults))
    filled = _filled(method, gerund, said, description)
    module = root / "rules" / "methods" / f"{method}.py"
    test = root / "tests" / "rules" / "methods" / f"test_{method}.py"
    lexicon = root / "data" / "lexicon" / "methods.toml"
    wording = root / "data" / "wording" / "en" / "methods" / f"{method}.ftl"
    for path, text in ((module, MODULE), (test, TEST), (wording, WORDING)):
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("x", encoding="utf-8") as file:
            file.write(text.format(**filled))
    with lexicon.open("a", encoding="utf-8") as file:
        file.write(ROW.format(**filled))
    return module, lexicon, wording, test


def _filled(method: str, gerund: str, said: Sequence[str], description: str) -> dict[str, str]:
    words, line = method.replace("_", " "), f"{description.strip().rstrip('.')}."
    return {
        "method": method,
        "words": words,
        "title": words.capitalize(),
        "gerund": json.dumps(gerund, ensure_ascii=False),
        "heard_as": json.dumps(list(dict.fromkeys(said)), ensure_ascii=False),
        "description": json.dumps(line, ensure_ascii=False),
        "lower_description": line[0].lower() + line[1:],
        "to_write": TO_WRITE,
    }
