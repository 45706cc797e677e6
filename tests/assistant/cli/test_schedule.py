"""`simmerline schedule` as it is typed."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from icalendar import Calendar
from typer.testing import CliRunner

from assistant.cli import exits
from assistant.cli.app import create_app

DEMO = str(Path(__file__).parents[1] / "planning" / "menus" / "timberfold.txt")
HERE = ("--at", "7000ft", "--zone", "America/Denver")


@pytest.fixture
def run(database):
    """The command with an empty store."""

    def typed(*args: str, given: str | None = None, command: str = "schedule"):
        return CliRunner().invoke(create_app(), [command, *args], input=given)

    return typed


def test_the_demo_menu_as_text(run) -> None:
    done = run(DEMO, *HERE, "--serve", "2031-06-07 18:30")
    assert done.exit_code == exits.ANSWERED
    assert done.stdout.startswith(
        "Schedule for Timberfold Lodge, harvest dinner\n90 covers, 7,000 ft; service Saturday"
    )
    assert "1 oven of 5 shelves, 6 burners, 1 cook" in " ".join(done.stdout.split())
    assert "12:35 pm" in done.stdout


def test_options_win_over_the_menu(run) -> None:
    args = (DEMO, *HERE, "--covers", "20", "--serve", "2031-06-07 17:00", "--ovens", "2", "--format", "json")
    told = json.loads(run(*args).stdout)
    assert (told["covers"], told["service"], told["kitchen"]["ovens"]) == (20, "2031-06-07T17:00:00-06:00", 2)


def test_a_kitchen_of_ones_own_and_the_service_of_the_menu(run) -> None:
    run("add", "Timberfold Lodge", "--at", "7000ft", command="kitchen")
    given = "Covers: 8\nKitchen: Timberfold Lodge\nService: 2031-06-07 6:30 pm\nwhite rice\n"
    done = run("-", given=given)
    assert done.exit_code == exits.ANSWERED
    assert "7,000 ft" in done.stdout
    assert "service Saturday" in " ".join(done.stdout.split())


def test_what_is_missing_is_asked_for(run) -> None:
    done = run(DEMO)
    assert (done.exit_code, "where will you cook" in done.stderr) == (exits.ASKS_BACK, True)
    done = run("-", *HERE, given="Covers: 8\nrice")
    assert (done.exit_code, "when is service" in done.stderr) == (exits.ASKS_BACK, True)


@pytest.mark.parametrize(
    "args",
    [
        ("--serve", "whenever"),
        ("--serve", "6 pm and 7 pm"),
        ("--zone", "Lodge/Kitchen"),
        ("--ovens", "-1"),
        ("--cooks", "0"),
        ("--covers", "0"),
        ("--format", "pdf"),
        ("--format", "png"),
    ],
)
def test_misuse_is_told_in_a_line(run, args: tuple[str, ...]) -> None:
    done = run(DEMO, "--at", "7000ft", *args)
    assert done.exit_code == exits.MISUSED
    assert done.stderr.startswith("simmerline: ")
    assert done.stderr.count("\n") == 1


def test_a_bad_menu_is_told_line_by_line_and_the_rest_is_done(run) -> None:
    given = "Covers: 40\nService: 6 pm\nService: 7 pm\nmeatloaf, -3\nqwertyuiop zzz\ncarrots, side, all\n"
    done = run("-", *HERE, given=given)
    assert done.exit_code == exits.FAILED
    left_out = done.stdout.partition("Left out\n")[2].partition("\n\n")[0]
    assert [line.split(":")[0].strip() for line in left_out.splitlines() if line.startswith("  Line")] == [
        "Line 3", "Line 4", "Line 5",
    ]  # fmt: skip
    assert "carrots" in done.stdout.partition("Left out")[0]


def test_what_does_not_fit_has_its_own_exit_code(run) -> None:
    done = run("-", *HERE, "--serve", "2031-06-07 18:00", given="Covers: 40\npizza\ntrout\nsouffle\n")
    assert (done.exit_code, "It does not fit" in done.stdout) == (exits.FAILED, True)


def test_a_file_is_written_over_only_when_asked(run, tmp_path) -> None:
    out = tmp_path / "saturday.ics"
    args = (DEMO, *HERE, "--serve", "2031-06-07 18:30", "--out", str(out))
    assert run(*args).exit_code == exits.ANSWERED
    assert len(Calendar.from_ical(out.read_bytes()).walk("VEVENT")) > 9
    done = run(*args)
    assert (done.exit_code, "--force" in done.stderr) == (exits.FAILED, True)
    assert run(*args, "--force").exit_code == exits.ANSWERED


@pytest.mark.parametrize("content", [b"rice, 20\n" * 900_000, b"\x00\x01", b""], ids=["8 MB", "binary", "empty"])
def test_what_is_no_menu_fails_kindly(run, tmp_path, content: bytes) -> None:
    path = tmp_path / "menu.txt"
    path.write_bytes(content)
    done = run(str(path), *HERE, "--serve", "6 pm")
    assert done.exit_code in (exits.FAILED, exits.ANSWERED, exits.ASKS_BACK)
    assert "Traceback" not in done.output
    assert len(done.stdout.splitlines()) < 14
