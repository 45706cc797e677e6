"""`simmerline listen` with a recogniser that joins by its entry point and says what it was told to."""

from __future__ import annotations

import io
import itertools
import json
import sys
import wave
from collections.abc import Callable
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from assistant.answering import reply_to
from assistant.cli.app import create_app
from assistant.voice import recognisers

SURE = "How long to boil rice at 8,500 feet?"
UNSURE = "Boil rice at thirteen hundred feet"
OF_JARS = "How long do I process pints of tomatoes at 8,500 feet?"
MODULE = """
TAKES = {takes!r}
class Told:
    def __init__(self):
        self.takes = list(TAKES)
    def words_of(self, samples):
        return self.takes.pop(0)
"""
NUMBERS = itertools.count()

pytestmark = pytest.mark.usefixtures("database")


def recording(seconds: float = 1.0, channels: int = 1, rate_hz: int = 16_000) -> bytes:
    """Silence as a WAV of 16 bits."""
    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        out.setnchannels(channels)
        out.setsampwidth(2)
        out.setframerate(rate_hz)
        out.writeframes(bytes(2 * channels * int(seconds * rate_hz)))
    return file.getvalue()


@pytest.fixture
def question(tmp_path: Path) -> Path:
    """A recording that can be taken."""
    path = tmp_path / "question.wav"
    path.write_bytes(recording())
    return path


@pytest.fixture
def told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[..., str]:
    """Install a package with a recogniser that hears these takes; gives its name."""
    recognisers.recogniser.cache_clear()

    def install(*takes: str) -> str:
        name = f"told{next(NUMBERS)}"
        site = tmp_path / name
        about = site / f"{name}-1.0.dist-info"
        about.mkdir(parents=True)
        (site / f"{name}.py").write_text(MODULE.format(takes=takes))
        (about / "METADATA").write_text(f"Metadata-Version: 2.1\nName: {name}\nVersion: 1.0\n")
        (about / "entry_points.txt").write_text(f"[{recognisers.GROUP}]\n{name} = {name}:Told\n")
        monkeypatch.syspath_prepend(str(site))
        return name

    return install


def listen(*arguments: object, lines: str = "") -> Result:
    return CliRunner().invoke(create_app(), ["listen", *map(str, arguments)], input=lines)


def test_what_is_surely_heard_is_shown_and_answered(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--recogniser", told(SURE, SURE))
    assert done.exit_code == 0
    assert done.stdout == f"I heard: {SURE}\n{reply_to(SURE).text}\n\n"


def test_the_elevation_of_the_kitchen_is_taken_for_granted(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--at", "8500ft", "--recogniser", told("How long to boil rice?", "How long to boil rice?"))
    assert "8,500 ft" in done.stdout
    assert done.exit_code == 0


def test_what_was_mended_is_said(question: Path, told: Callable[..., str]) -> None:
    takes = ["How long to boil beats at 8,500 feet?"] * 2
    done = listen(question, "--recogniser", told(*takes))
    assert "Taken “beats” for “beets”" in done.stdout
    assert "for boiling beets" in done.stdout.lower()


@pytest.mark.parametrize("heard", [UNSURE, OF_JARS])
def test_what_is_unsure_or_of_jars_is_not_answered_before_it_is_confirmed(
    heard: str, question: Path, told: Callable[..., str]
) -> None:
    done = listen(question, "--recogniser", told(heard, heard))
    assert done.exit_code == 3
    assert done.stdout.splitlines()[0] == f"I heard: {heard}"
    assert done.stdout.splitlines()[-1].endswith("?")
    assert reply_to(heard).text not in done.stdout


def test_an_unsure_number_is_read_back_with_what_else_it_may_be(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--recogniser", told(UNSURE, UNSURE))
    assert "Is it thirteen hundred feet, not 3,000 feet" in done.stdout


@pytest.mark.parametrize("heard", [UNSURE, OF_JARS])
@pytest.mark.parametrize("yes", ["yes", "Yes.", "that is right"])
def test_yes_is_answered_as_it_was_heard(heard: str, yes: str, question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--recogniser", told(heard, heard), lines=f"{yes}\n")
    assert done.exit_code == 0
    assert done.stdout.endswith(f"{reply_to(heard).text}\n\n")


def test_no_is_not_answered(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--recogniser", told(OF_JARS, OF_JARS), lines="no\n")
    assert done.stdout.splitlines()[-1].endswith("Is every word and number of it right?")


def test_the_cook_says_it_right(question: Path, told: Callable[..., str]) -> None:
    right = "Boil rice at 3,000 feet"
    done = listen(question, "--recogniser", told(UNSURE, UNSURE), lines=f"{right}\n")
    assert done.stdout.endswith(f"{reply_to(right).text}\n\n")


def test_further_lines_go_on(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--recogniser", told(SURE, SURE), lines="and at 9,000?\n")
    assert done.stdout.endswith(f"{reply_to('and at 9,000?', [SURE]).text}\n\n")


def test_json_tells_what_was_heard_and_answers_nothing(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--json", "--recogniser", told(OF_JARS, OF_JARS))
    heard = json.loads(done.stdout)
    assert done.exit_code == 0
    assert (heard["text"], heard["to_ask"], heard["of_jars"]) == (OF_JARS, None, True)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"this is a text", "this is no WAV file that can be read"),
        (b"", "this is no WAV file that can be read"),
        (recording(seconds=0), "too short to hold a word"),
        (recording(seconds=31), "31 seconds long"),
        (recording(seconds=40), "has more than"),
        (recording(channels=2, rate_hz=8_000), "2 channels"),
        (recording(rate_hz=8_000), "8,000 samples a second"),
    ],
)
@pytest.mark.parametrize("form", [(), ("--json",)])
def test_a_recording_that_cannot_be_taken_is_told_in_one_line(
    content: bytes, said: str, form: tuple[str, ...], tmp_path: Path, told: Callable[..., str]
) -> None:
    path = tmp_path / "odd.wav"
    path.write_bytes(content)
    done = listen(path, *form, "--recogniser", told(SURE, SURE))
    assert done.exit_code == 1
    assert done.stdout == ""
    assert said in done.stderr
    assert done.stderr.count("\n") == 1


def test_silence_is_told(question: Path, told: Callable[..., str]) -> None:
    done = listen(question, "--recogniser", told("", "...", ""))
    assert done.exit_code == 1
    assert "no word was heard" in done.stderr


@pytest.mark.parametrize("named", ["no-such.wav", "."])
def test_a_file_that_cannot_be_opened_is_named(named: str, tmp_path: Path) -> None:
    done = listen(tmp_path / named)
    assert done.exit_code == 1
    assert str(tmp_path / named) in done.stderr
    assert done.stderr.count("\n") == 1


def test_a_recogniser_that_is_not_there_is_told_with_those_that_are(question: Path, told: Callable[..., str]) -> None:
    here = told(SURE)
    done = listen(question, "--recogniser", "owl")
    assert done.exit_code == 1
    assert "there is no recogniser owl" in done.stderr
    assert here in done.stderr


def test_the_library_that_is_missing_is_told_with_how_to_get_it(
    question: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    recognisers.recogniser.cache_clear()
    monkeypatch.setitem(sys.modules, "moonshine_voice", None)
    done = listen(question)
    assert done.exit_code == 1
    assert "pip install 'simmerline[voice]'" in done.stderr


def test_the_microphone_is_for_a_terminal() -> None:
    done = listen()
    assert done.exit_code == 2
    assert "give a WAV file" in done.stderr
