"""The command line where its streams are closed, full or strange, and where something was not foreseen."""

from __future__ import annotations

import os
import subprocess
import sys
import warnings
from pathlib import Path

import pytest

from assistant.cli import app, exits, streams
from assistant.cli.streams import ended_kindly

ROOT = Path(__file__).parents[3]
COMMAND = (sys.executable, "-c", "from assistant.cli import main; main()")


def code_of(fault: BaseException | None = None) -> int:
    try:
        with ended_kindly():
            if fault:
                raise fault
            print("answered")
    except SystemExit as left:
        return int(left.code or 0)
    return exits.ANSWERED


@pytest.mark.parametrize(
    ("fault", "code", "said"),
    [
        (KeyboardInterrupt(), exits.STOPPED, ""),
        (BrokenPipeError(), exits.FAILED, ""),
        (OSError(28, "No space left on device"), exits.FAILED, "the answer cannot be shown: no space left on device"),
        (OSError(13, "Permission denied", "a.txt"), exits.FAILED, "a.txt: permission denied"),
        (KeyError("yeast"), exits.FAILED, "stumbled over that (KeyError at "),
        (RecursionError(), exits.FAILED, "stumbled over that (RecursionError at "),
    ],
    ids=repr,
)
def test_what_nobody_foresaw_ends_in_a_line(fault, code, said, capsys) -> None:
    assert code_of(fault) == code
    told = capsys.readouterr().err
    assert told.count("\n") == bool(said)
    assert said in told


def test_a_mistake_of_ours_can_be_looked_at(monkeypatch) -> None:
    monkeypatch.setenv(streams.TRACEBACK_VARIABLE, "1")
    with pytest.raises(KeyError), ended_kindly():
        raise KeyError("yeast")


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no such device here")
def test_what_cannot_be_shown_is_not_said_to_be_answered(monkeypatch, capsys) -> None:
    with Path("/dev/full").open("w", encoding="utf-8") as full:
        monkeypatch.setattr(sys, "stdout", full)
        assert code_of() == exits.FAILED
    assert "no space left" in capsys.readouterr().err


def test_what_is_noted_is_shown_in_a_line(capsys, monkeypatch) -> None:
    monkeypatch.setattr(warnings, "showwarning", streams._show_warning)
    with warnings.catch_warnings():
        warnings.simplefilter("always")
        warnings.warn("a row is damaged", streams.Noted, stacklevel=1)
    assert capsys.readouterr().err == "simmerline: a row is damaged\n"


def typed(*args: str | bytes, closed: tuple[int, ...] = (), **env: str) -> tuple[int, str, str]:
    """A command in a process of its own. closed: the numbers of its streams that are"""

    def close() -> None:
        for number in closed:
            os.close(number)

    done = subprocess.run(
        [*COMMAND, *args], stdin=subprocess.DEVNULL, capture_output=True, preexec_fn=close, cwd=ROOT, check=False,
        env={**os.environ, "PYTHONPATH": str(ROOT), **env},
    )  # fmt: skip
    return done.returncode, done.stdout.decode(), done.stderr.decode()


@pytest.mark.usefixtures("database")
@pytest.mark.parametrize(
    ("args", "closed", "code", "said"),
    [
        (("ask",), (0,), exits.MISUSED, "ask what?"),
        (("chat", "--new"), (0,), exits.ANSWERED, ""),
        (("ask", "thanks"), (1,), exits.FAILED, "cannot be shown"),
        (("ask", "thanks"), (0, 1, 2), exits.FAILED, ""),
    ],
)
def test_closed_streams_show_no_traceback(args, closed, code, said) -> None:
    done = typed(*args, closed=closed)
    assert (done[0], done[1]) == (code, "")
    assert said in done[2]
    assert "Traceback" not in done[2]


@pytest.mark.usefixtures("database")
def test_a_locale_that_knows_ascii_alone_tears_no_name() -> None:
    plain = {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"}
    code, shown, told = typed("kitchen", "add", "Küche", "--at", "7000ft", **plain)
    assert (code, shown, told) == (0, "Kept. Küche: 7,000 ft (2,130 m), in use\n", "")


def test_every_code_is_told_by_help_and_by_the_readme() -> None:
    codes = {value for name, value in vars(exits).items() if name.isupper() and isinstance(value, int)}
    assert codes == set(exits.CODES)
    help_text = " ".join(str(app.create_app(()).info.epilog).split())
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    for code, words in exits.CODES.items():
        assert f"{code} {words}" in help_text
        assert f"| {code} | {words} |" in readme
