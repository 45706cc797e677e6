"""README.md says what the program says, and DEVELOPERS.md names rooms that are there."""

import re
from pathlib import Path

import pytest

from assistant.cli.app import COMMANDS

ROOT = Path(__file__).resolve().parents[3]
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
README = (ROOT / "README.md").read_text(encoding="utf-8")
ASKED = re.findall(r"`simmerline ask (?:--depth \d )?\"([^\"]+)\"`", README)


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


def test_every_room_of_the_map_is_there() -> None:
    named = re.findall(r"`((?:assistant|rules|data|tests)/[\w/.-]*)`", DEVELOPERS)
    assert len(named) > 30
    assert [name for name in named if "WORD" not in name and not (ROOT / name).exists()] == []


def test_every_command_for_contributors_is_there() -> None:
    from assistant.contributing.__main__ import app

    there = {command.name or command.callback.__name__ for command in app.registered_commands}
    assert set(re.findall(r"assistant\.contributing ([a-z-]+)", DEVELOPERS)) == there
