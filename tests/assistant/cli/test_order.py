"""`simmerline order` as it is typed."""

from __future__ import annotations

import io
import json
from pathlib import Path

import pytest
from openpyxl import load_workbook
from typer.testing import CliRunner

from assistant.cli import exits
from assistant.cli.app import create_app

DEMO = str(Path(__file__).parents[1] / "planning" / "menus" / "timberfold.txt")


@pytest.fixture
def run(database):
    """The command with an empty store."""

    def typed(*args: str, given: str | bytes | None = None, command: str = "order"):
        return CliRunner().invoke(create_app(), [command, *args], input=given)

    return typed


def test_the_demo_menu_as_text(run) -> None:
    done = run(DEMO, "--at", "7000ft")
    assert done.exit_code == exits.ANSWERED
    assert done.stdout.startswith("Order for Timberfold Lodge, harvest dinner\n90 covers, 7,000 ft")
    assert "bone-in short ribs (38 lb)" in done.stdout


def test_options_win_over_the_menu(run) -> None:
    told = [json.loads(run(DEMO, "--at", "2100m", "--covers", n, "--format", "json").stdout) for n in ("90", "180")]
    assert [one["covers"] for one in told] == [90, 180]
    assert round(told[0]["elevation_m"]) == 2100
    assert told[1]["lines"][0]["need_g"] == pytest.approx(2 * told[0]["lines"][0]["need_g"])
    assert "kg" in told[0]["text"]
    assert " kg" not in run(DEMO, "--at", "2100m", "--units", "us").stdout


def test_the_kitchen_in_use_is_taken_for_granted(run) -> None:
    run("add", "Timberfold Lodge", "--at", "7000ft", command="kitchen")
    assert "7,000 ft" in run(DEMO).stdout
    assert "7,000 ft" in run(DEMO, "--kitchen", "Timberfold Lodge").stdout
    assert run(DEMO, "--kitchen", "nowhere").exit_code == exits.MISUSED


def test_what_is_missing_is_asked_for(run) -> None:
    done = run(DEMO)
    assert (done.exit_code, "where will you cook" in done.stderr) == (exits.ASKS_BACK, True)
    done = run("-", "--at", "7000ft", given="meatloaf\ncarrots, side")
    assert (done.exit_code, "for how many" in done.stderr) == (exits.ASKS_BACK, True)


@pytest.mark.parametrize(
    "args",
    [
        ("--format", "pdf"),
        ("--format", "xlsx"),
        ("--margin", "-5%"),
        ("--margin", "much"),
        ("--covers", "0"),
        ("--at", "the moon"),
    ],
)
def test_misuse_is_told_in_a_line(run, args: tuple[str, ...]) -> None:
    done = run(DEMO, *(("--at", "7000ft") if "--at" not in args else ()), *args)
    assert done.exit_code == exits.MISUSED
    assert done.stderr.startswith("simmerline: ")
    assert done.stderr.count("\n") == 1


def test_a_bad_menu_is_told_line_by_line_and_the_rest_is_done(run) -> None:
    given = "Covers: 40\nService: 6 pm\nService: 7 pm\nmeatloaf, -3\nqwertyuiop zzz\ncarrots, side, all\n"
    done = run("-", "--at", "7000ft", given=given)
    assert done.exit_code == exits.FAILED
    left_out = done.stdout.partition("Left out\n")[2].partition("\n\n")[0]
    assert [line.split(":")[0].strip() for line in left_out.splitlines() if line.startswith("  Line")] == [
        "Line 3", "Line 4", "Line 5",
    ]  # fmt: skip
    assert "unpeeled carrots" in done.stdout


@pytest.mark.parametrize("content", [b"meatloaf, 20\n" * 900_000, b"\x00\x01\x02"], ids=["10 MB", "binary"])
def test_what_is_no_menu_fails_kindly(run, tmp_path, content: bytes) -> None:
    path = tmp_path / "menu.txt"
    path.write_bytes(content)
    done = run(str(path), "--at", "7000ft")
    assert done.exit_code in (exits.FAILED, exits.ANSWERED)
    assert "Traceback" not in done.output
    assert len(done.stdout.splitlines()) < 10


def test_a_file_that_is_not_there(run) -> None:
    done = run("gone.txt", "--at", "7000ft")
    assert (done.exit_code, done.stderr.count("\n")) == (exits.FAILED, 1)


def test_margin_is_a_percentage_however_it_is_typed(run) -> None:
    told = [run(DEMO, "--at", "7000ft", "--margin", text).stdout for text in ("10%", "10", "0.1")]
    assert told[0] == told[1] == told[2]
    assert "10 % on top" in told[0]


def test_what_is_on_hand_is_deducted(run, tmp_path) -> None:
    there = tmp_path / "there.txt"
    there.write_text("60 lb potatoes\nhalf a thought\n")
    done = run(DEMO, "--at", "7000ft", "--on-hand", str(there))
    assert done.exit_code == exits.FAILED
    assert "none, enough  unpeeled potatoes" in done.stdout
    assert "On hand, line 2" in done.stdout


def test_a_file_is_written_over_only_where_that_is_said(run, tmp_path) -> None:
    out = tmp_path / "order.txt"
    out.write_text("the order of last week")
    refused = run(DEMO, "--at", "7000ft", "--out", str(out))
    assert refused.exit_code == exits.FAILED
    assert "--force" in refused.stderr
    assert out.read_text() == "the order of last week"
    assert run(DEMO, "--at", "7000ft", "--out", str(out), "--force").exit_code == exits.ANSWERED
    assert "short ribs" in out.read_text()


@pytest.mark.parametrize("name", ["order.xlsx", "order.csv", "order.json", "order.html", "order.txt"])
def test_the_form_goes_by_the_ending_of_the_file(run, tmp_path, name: str) -> None:
    out = tmp_path / "out" / name
    done = run(DEMO, "--at", "7000ft", "--out", str(out))
    assert done.exit_code == exits.ANSWERED
    content = out.read_bytes()
    if name.endswith("xlsx"):
        assert load_workbook(io.BytesIO(content)).sheetnames == ["Order", "Notes"]
    else:
        assert "short ribs" in content.decode()


def test_a_folder_of_recipes_is_a_menu(run, tmp_path) -> None:
    (tmp_path / "rolls.txt").write_text("Rolls\nMakes 12 rolls\n\n500 g bread flour\n300 g water\n\nBake 20 minutes.\n")
    done = run(str(tmp_path), "--at", "7000ft", "--covers", "60", "--margin", "0")
    assert done.exit_code == exits.ANSWERED
    assert "bread flour (5½ lb)" in done.stdout
    empty = tmp_path / "empty"
    empty.mkdir()
    assert run(str(empty), "--at", "7000ft", "--covers", "60").exit_code == exits.MISUSED


@pytest.mark.parametrize("given", ["", "\n\n", "Covers: 90\n"])
@pytest.mark.parametrize("command", ["order", "schedule"])
def test_a_menu_without_a_dish_is_asked_for(run, command: str, given: str) -> None:
    done = run("-", "--at", "7000ft", given=given, command=command)
    assert (done.exit_code, done.stdout) == (exits.ASKS_BACK, "")
    assert "holds no dish" in done.stderr
