"""Input that broke something once, as small as it can be, and input that would take for ever to read."""

from __future__ import annotations

import io
import json
import os
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from typer.testing import CliRunner

from assistant.answering import reply_to
from assistant.cli import create_app
from assistant.cli.ask import LONGEST_LINE
from assistant.dialogue.executor import fault_of
from assistant.files import content_of, lines_of
from assistant.recipes.converting import convert_recipe
from assistant.recipes.read import bytes_of
from assistant.recipes.steps import read_step
from assistant.replies.contract import as_json
from assistant.voice import wav
from assistant.voice.errors import BadSpeech
from assistant.web.asked import MenuAsked, ordered
from rules.model import Kitchen

TIMBERFOLD = Kitchen(elevation_m=2134.0)


# What broke something


@pytest.mark.parametrize("text", ["#10\n\ud800", "short ribs\n\ud800 rice\n90 covers"])
def test_half_a_character_in_a_menu_is_answered(text: str) -> None:
    assert reply_to(text, kitchen=TIMBERFOLD).text
    assert ordered(MenuAsked(menu=text, on_hand=text, kitchen=TIMBERFOLD, covers=90))


def test_a_menu_longer_than_a_sentence_can_be_is_read_back_whole() -> None:
    answer = reply_to("short ribs 40%\n" * 300, kitchen=TIMBERFOLD)
    assert str(answer.text).count("short ribs for 40") == 300
    assert json.dumps(as_json(answer))


def test_none_of_a_thing_is_none_in_a_larger_batch_too() -> None:
    batch = convert_recipe(
        "Makes 12 rolls\n0 rolls of dough\n2 cups flour\nBake 20 minutes.", to_elevation_m=0, servings=90
    )
    assert batch.ingredients[0].text.startswith("0 ")


@pytest.mark.parametrize(
    "event", [None, {}, {"event": None}, {"event": "slot"}, {"event": "slot", "name": "piece"}, "slot", 7]
)
def test_an_event_that_is_none_is_told(event: object) -> None:
    call = {"next_action": "validate_piece_form", "tracker": {"sender_id": "a", "events": [event]}}
    assert "events" in str(fault_of(call))


def test_a_recording_whose_parts_do_not_fit_is_no_recording() -> None:
    empty = wav.written(wav.array("h"))
    with pytest.raises(BadSpeech, match="no WAV file"):
        wav.read(empty[:12] + b"f\x00\x00\x00" + bytes(4) + empty[20:])


# What takes no longer than its length asks


def work(done: Callable[[], object]) -> int:
    """How many calls some work takes."""
    calls = 0

    def count(*_: object) -> None:
        nonlocal calls
        calls += 1

    sys.setprofile(count)
    try:
        done()
    finally:
        sys.setprofile(None)
    return calls


def recipe(text: str) -> object:
    return convert_recipe(text, to_elevation_m=2134.0)


GROWING = {
    "a list in one line": lambda size: recipe("1 egg, " * size),
    "ingredients": lambda size: recipe("Rolls\n" + "2 cups flour\n1 cup milk\n" * size + "Bake 20 minutes at 400 F."),
    "times of a sentence": lambda size: recipe("Rolls\n2 cups flour\nBake" + " 147s" * size + " for 40 minutes."),
    "temperatures of a sentence": lambda size: recipe(
        "Rolls\n2 cups flour\nBake" + " at 350F" * size + " for 40 minutes."
    ),
    "steps": lambda size: recipe("Rolls\n2 cups flour\n" + "Bake 20 minutes at 400 F.\n" * size),
    "one word": lambda size: recipe("flour " * size),
    "a question": lambda size: reply_to("how long to braise short ribs at 7,000 ft " * size),
    "a menu": lambda size: reply_to("short ribs 40%\n" * size),
    "brackets": lambda size: reply_to("convert " + "{[" * size),
}


@pytest.mark.parametrize("grow", GROWING.values(), ids=GROWING.keys())
def test_twice_the_text_takes_twice_the_work(grow: Callable[[int], object]) -> None:
    grow(7)
    once, twice = (work(lambda size=size: grow(size)) for size in (200, 400))
    assert twice < 2.6 * once


def test_a_step_of_a_thousand_times_keeps_its_words() -> None:
    text = "Boil " + "147s " * 1500 + "for 40 minutes."
    step = read_step(text)
    assert step.text == text
    assert 0 < len(step.times) <= 100


# What is read no further than it is of use


class Counted(io.BytesIO):
    """A file that knows the longest piece that was ever taken out of it."""

    longest = 0

    def readline(self, size: int | None = -1, /) -> bytes:
        line = super().readline(-1 if size is None else size)
        self.longest = max(self.longest, len(line))
        return line


def test_a_line_without_end_is_never_held_whole() -> None:
    file = Counted(b"a\n" + b"x" * 100_000 + b"\nb\n" + b"y" * 100_000)
    lines = list(lines_of(file, 1000))
    assert [line[:2] for line in lines] == [b"a\n", b"xx", b"b\n", b"yy"]
    assert max(map(len, lines)) == file.longest == 1001


def test_a_line_that_is_too_long_is_told_and_the_rest_is_answered(tmp_path: Path) -> None:
    file = tmp_path / "questions.jsonl"
    asked = "how long to braise short ribs at 7,000 feet\n"
    file.write_text(asked + "x" * (LONGEST_LINE + 1) + "\n" + asked, encoding="utf-8")
    result = CliRunner().invoke(create_app(), ["ask", "--jsonl", str(file)])
    first, second, third = map(json.loads, result.stdout.splitlines())
    assert (second["error"]["line"], first["text"]) == (2, third["text"])
    assert "longer than the" in second["error"]["message"]
    assert result.exit_code == 1


@pytest.mark.parametrize("name", ["pipe", "/dev/zero"])
def test_a_pipe_or_a_device_is_refused_and_never_waited_for(name: str, tmp_path: Path) -> None:
    path = Path(name) if name.startswith("/") else tmp_path / name
    if path.parent == tmp_path:
        os.mkfifo(path)
    result = CliRunner().invoke(create_app(), ["convert", str(path), "--to", "7000ft"])
    assert result.exit_code == 1
    assert "a pipe or a device is no file" in result.output
    for read in (bytes_of, wav.of_file, lambda path: content_of(path, 10)):
        with pytest.raises(OSError, match="a pipe or a device"):
            read(path)
