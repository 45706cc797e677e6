"""What stands before every command: its version, completion in the shell, and the codes it ends with."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from importlib.metadata import version
from pathlib import Path

import pytest

from assistant.cli import exits
from assistant.cli.app import COMMANDS

ROOT = Path(__file__).parents[3]
START = "import sys; sys.argv[0] = 'simmerline'; from assistant.cli import main; main()"


def run(*arguments: str, **environment: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-c", START, *arguments]
    variables = {**os.environ, **environment}
    return subprocess.run(command, capture_output=True, text=True, env=variables, check=False, encoding="utf-8")


def test_its_version_is_that_of_the_package() -> None:
    done = run("--version")
    assert (done.returncode, done.stdout, done.stderr) == (0, f"simmerline {version('simmerline')}\n", "")


@pytest.mark.parametrize("shell", ["bash", "zsh", "fish"])
def test_a_shell_is_told_how_to_complete(shell: str) -> None:
    done = run("--show-completion", shell, _TYPER_COMPLETE_TEST_DISABLE_SHELL_DETECTION="1")
    assert done.returncode == 0, done.stderr
    assert f"_SIMMERLINE_COMPLETE=complete_{shell}" in done.stdout


def test_a_shell_is_given_the_commands_that_go_on_so() -> None:
    asked = {"_SIMMERLINE_COMPLETE": "complete_bash", "COMP_WORDS": "simmerline s", "COMP_CWORD": "1"}
    assert set(run(**asked).stdout.split()) == {name for name in COMMANDS if name.startswith("s")}


def test_the_codes_are_told_by_the_command_and_by_the_readme_alike() -> None:
    said = " ".join(re.sub(r"[│╭╰─]", " ", run("--help").stdout).split())
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    for code, means in exits.CODES.items():
        assert f"{code} {means}" in said
        assert f"| {code} | {means} |" in readme
    assert [int(code) for code in re.findall(r"^\| (\d+) \|", readme, re.MULTILINE)] == sorted(exits.CODES)


@pytest.mark.parametrize(
    "environment",
    [
        {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
        {"LC_ALL": "POSIX", "LANG": "", "TERM": "dumb"},
        {"TERM": "dumb"}, {"NO_COLOR": "1"}, {"TERM": "", "COLUMNS": "20"},
    ],
    ids=str,
)  # fmt: skip
def test_any_terminal_gets_the_same_plain_words(environment: dict[str, str]) -> None:
    """Degrees and fractions come through as UTF-8, and nothing that would drive a terminal, whatever it says it is."""
    done = run("ask", "--depth", "1", "what does water boil at in Santa Fe", **environment)
    assert done.returncode == 0, done.stderr
    assert "°F" in done.stdout
    assert "\x1b" not in done.stdout + done.stderr
    assert "Traceback" not in done.stderr
