"""`simmerline say`: what is answered, what is written or played, and what is told where that cannot be."""

from __future__ import annotations

import io
import os
import shutil
import wave
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from assistant.answering import reply_to
from assistant.cli.app import create_app

BOIL = "how long to boil rice at 8,500 feet"
# what is read of an answer goes at about this pace: slow speech and fast, words a minute, from memory
SLOW, FAST = 90, 260

pytestmark = pytest.mark.usefixtures("database")
speaks = pytest.mark.skipif(shutil.which("espeak-ng") is None, reason="espeak-ng is missing: apt install espeak-ng")


def say(*arguments: object, lines: str | None = None) -> Result:
    return CliRunner().invoke(create_app(), ["say", *map(str, arguments)], input=lines)


@pytest.fixture
def programs(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The only folder in which programs are looked for, with espeak-ng in it where it is installed."""
    folder = tmp_path / "bin"
    folder.mkdir()
    found = shutil.which("espeak-ng")
    if found:
        (folder / "espeak-ng").symlink_to(found)
    monkeypatch.setenv("PATH", str(folder))
    return folder


def player(folder: Path, script: str) -> None:
    """A program that takes what is played."""
    path = folder / "aplay"
    path.write_text(f"#!/bin/sh\n{script}\n")
    path.chmod(0o755)


@speaks
def test_out_writes_a_wav_as_long_as_its_words_take(tmp_path: Path) -> None:
    out = tmp_path / "answer.wav"
    done = say("--out", out, BOIL)
    spoken = reply_to(BOIL).spoken
    assert done.exit_code == 0
    assert done.stdout == f"{spoken}\nWritten: {out}\n"
    with wave.open(str(out)) as file:
        assert (file.getnchannels(), file.getsampwidth()) == (1, 2)
        minutes = file.getnframes() / file.getframerate() / 60
        assert file.getnframes() * 2 + 44 == out.stat().st_size
    assert SLOW < len(spoken.split()) / minutes < FAST


@speaks
def test_a_file_that_is_there_is_kept_without_force(tmp_path: Path) -> None:
    out = tmp_path / "answer.wav"
    out.write_bytes(b"mine")
    done = say("--out", out, BOIL)
    assert done.exit_code == 1
    assert "--force writes over it" in done.stderr
    assert out.read_bytes() == b"mine"
    assert say("--out", out, "--force", BOIL).exit_code == 0
    assert out.read_bytes().startswith(b"RIFF")


@speaks
def test_a_folder_that_is_not_there_is_made(tmp_path: Path) -> None:
    out = tmp_path / "new" / "answer.wav"
    assert say("--out", out, BOIL).exit_code == 0
    assert out.read_bytes().startswith(b"RIFF")


@speaks
def test_what_is_missing_is_asked_for_aloud(tmp_path: Path) -> None:
    done = say("--out", tmp_path / "answer.wav", "how long to boil rice")
    assert done.exit_code == 3
    assert "elevation" in done.stdout
    assert (tmp_path / "answer.wav").is_file()


@speaks
def test_the_question_may_come_from_a_pipe(tmp_path: Path) -> None:
    done = say("--out", tmp_path / "answer.wav", "-", lines=f"{BOIL}\n")
    assert done.stdout.startswith(reply_to(BOIL).spoken)


@speaks
def test_it_is_played_where_there_is_a_player(programs: Path, tmp_path: Path) -> None:
    player(programs, f'while read -r line; do :; done; echo "$@" > {tmp_path}/played')
    done = say(BOIL)
    assert done.exit_code == 0
    assert (tmp_path / "played").read_text() == "-q -\n"


@speaks
def test_a_player_that_fails_is_named(programs: Path) -> None:
    player(programs, "exit 1")
    done = say(BOIL)
    assert done.exit_code == 1
    assert "aplay could not play it; --out FILE writes it instead" in done.stderr


@speaks
@pytest.mark.usefixtures("programs")
def test_no_player_is_told_and_the_answer_stands_on_the_screen() -> None:
    done = say(BOIL)
    assert done.exit_code == 1
    assert done.stdout == f"{reply_to(BOIL).spoken}\n"
    assert "--out FILE writes it instead" in done.stderr


def test_without_espeak_the_answer_is_written_and_how_to_get_it(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PATH", os.fspath(tmp_path))
    done = say("--out", tmp_path / "answer.wav", BOIL)
    assert done.exit_code == 1
    assert done.stdout == f"{reply_to(BOIL).spoken}\n"
    assert "apt install espeak-ng" in done.stderr
    assert not (tmp_path / "answer.wav").exists()


@speaks
def test_a_warning_of_danger_is_said(tmp_path: Path) -> None:
    """What is stopped on paper is stopped aloud."""
    question = "can I can green beans in a boiling water bath at 7,000 feet"
    done = say("--out", tmp_path / "answer.wav", question)
    assert done.stdout.startswith("No.")
    assert "never canned in boiling water" in done.stdout
    with wave.open(io.BytesIO((tmp_path / "answer.wav").read_bytes())) as file:
        assert file.getnframes() > file.getframerate()
