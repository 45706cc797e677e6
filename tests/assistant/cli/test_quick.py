"""What a command imports, and that the command's own process is quick without being another program."""

import gc
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
import typer.main

from assistant.cli import quick
from assistant.cli.app import COMMANDS, create_app, overview

HEAVY = frozenset((
    "spacy", "spacy.cli", "rasa_sdk", "sanic", "sqlalchemy", "prompt_toolkit", "rich", "pint", "matplotlib", "numpy",
    "scipy", "icalendar", "openpyxl", "reportlab", "sklearn", "weasel", "httpx", "requests", "jinja2",
    "airportsdata", "nh3",
))  # fmt: skip
LANGUAGE = {"spacy", "spacy.cli", "numpy", "jinja2"}
RUN = """
import json, sys
from assistant.cli import main
try:
    main()
except SystemExit:
    pass
from assistant.cli.later import waiting
run = sorted(sys.modules.keys() - waiting())
sys.stderr.write("\\n" + json.dumps(run))
"""
# what each command takes, once the cache is filled; spacy.cli counts as imported when its code has run
TAKES = {
    ("--help",): {"rich"},
    ("ask", "how long to boil rice at 7,000 ft"): LANGUAGE - {"spacy.cli"},
    ("ask", "--json", "soft ball stage at 5280 ft"): LANGUAGE - {"spacy.cli"},
    ("chat", "--new"): LANGUAGE - {"spacy.cli"} | {"rasa_sdk", "sqlalchemy"},
    ("kitchen", "list"): {"sqlalchemy"},
    ("drill", "--set", "7", "--count", "1"): {"sqlalchemy", "jinja2"},
    ("sources",): set(),
}


def run(arguments: tuple[str, ...], folder: Path, **settings: str) -> subprocess.CompletedProcess[str]:
    environment = {
        **os.environ,
        "SIMMERLINE_DB": f"sqlite:///{folder}/simmerline.db",
        "SIMMERLINE_CACHE": str(folder / "cache"),
        "PYTHONPATH": os.pathsep.join(sys.path),
        **settings,
    }
    command = [sys.executable, "-c", RUN, *arguments]
    return subprocess.run(
        command, env=environment, input="soft ball at 5280 ft\n", capture_output=True, text=True, check=True
    )


def imported(arguments: tuple[str, ...], folder: Path) -> set[str]:
    return set(json.loads(run(arguments, folder).stderr.splitlines()[-1]))


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("quick")


@pytest.mark.parametrize("arguments", TAKES, ids=" ".join)
def test_a_command_imports_only_what_it_uses(arguments: tuple[str, ...], folder: Path) -> None:
    run(arguments, folder)
    assert imported(arguments, folder) & HEAVY <= TAKES[arguments]


def test_a_reply_is_the_same_with_a_cache_and_without(folder: Path) -> None:
    ask = ("ask", "--json", "why did my muffins collapse at 7,000 ft, and how long do I braise short ribs there")
    without = run(ask, folder, SIMMERLINE_CACHE="off").stdout
    assert run(ask, folder).stdout == without == run(ask, folder).stdout


def test_help_says_of_each_command_what_the_command_says() -> None:
    listed = {name: c.get_short_help_str(limit=1000) for name, c in _commands(overview()).items()}
    told = {name: c.get_short_help_str(limit=1000) for name, c in _commands(create_app()).items()}
    assert listed == told
    assert list(listed) == list(told) == list(COMMANDS)


def _commands(app: typer.Typer) -> dict[str, typer.main.TyperGroup]:
    return typer.main.get_group(app).commands  # type: ignore[return-value]


@pytest.mark.parametrize("first", ["spacy.info(silent=True)", "spacy.cli.download", "from spacy.cli import download"])
def test_what_is_imported_for_nothing_is_the_real_thing_once_it_is_wanted(first: str) -> None:
    program = f"""
import sys
from assistant.cli.later import UNUSED, run_later
run_later(UNUSED)
import spacy
assert "weasel" not in sys.modules
{first}
assert "weasel" in sys.modules
assert spacy.info(silent=True)["spacy_version"] == spacy.__version__
from spacy.cli import download, info
from spacy.cli.info import info_cli
from spacy.cli.download import download as same
assert info is sys.modules["spacy.cli.info"].info and download is same is spacy.cli.download
import rasa_sdk
assert "sanic" not in sys.modules
from rasa_sdk.plugin import plugin_manager
assert plugin_manager().__class__.__name__ == "PluginManager"
"""
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join(sys.path)}
    subprocess.run([sys.executable, "-c", program], env=environment, check=True)


def test_whoever_goes_on_sweeps_again() -> None:
    gc.disable()
    quick.loaded()
    assert gc.isenabled()
    gc.unfreeze()
