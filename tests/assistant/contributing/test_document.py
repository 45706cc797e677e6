"""DEVELOPERS.md and README.md say what the program says."""

import re
from pathlib import Path

import pytest

from assistant.cli.app import COMMANDS
from assistant.contributing import document

ROOT = Path(__file__).resolve().parents[3]
README = (ROOT / "README.md").read_text(encoding="utf-8")
ASKED = re.findall(r"`simmerline ask (?:--depth \d )?\"([^\"]+)\"`", README)


def test_the_tables_of_the_page_are_not_stale() -> None:
    stands = document.PAGE.read_text(encoding="utf-8")
    assert stands == document.page(), "run: python -m assistant.contributing document"


def test_every_command_is_in_the_readme() -> None:
    assert [name for name in COMMANDS if f"simmerline {name}" not in README] == []


@pytest.mark.parametrize("question", ASKED)
def test_every_question_of_the_readme_is_answered(question: str) -> None:
    from assistant.answering import reply_to

    answer = reply_to(question)
    assert answer.covered
    assert answer.missing == ()


def test_the_reply_shown_in_the_readme_is_the_reply() -> None:
    from dataclasses import replace

    from assistant.answering import reply_to_request, understand

    shown = re.search(r'\$ simmerline ask --depth 1 "([^"]+)"\n(.+?)\n```', README, re.DOTALL)
    assert shown is not None
    assert reply_to_request(replace(understand(shown[1]), depth=1)).text == shown[2]
