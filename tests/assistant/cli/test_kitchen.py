"""The kitchen commands, and what a question takes for granted from them."""

import json
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from assistant.cli import create_app
from assistant.store.where import sqlite_file

pytestmark = pytest.mark.usefixtures("database")

BRAISE = "how long to braise short ribs"


def run(*arguments: str) -> Result:
    return CliRunner().invoke(create_app(), list(arguments))


def kept(*arguments: str) -> dict[str, object]:
    result = run("kitchen", "show", *arguments, "--json")
    assert result.exit_code == 0, result.stderr
    shown: dict[str, object] = json.loads(result.stdout)
    return shown


@pytest.fixture
def lodge() -> None:
    assert run("kitchen", "add", "Timberfold Lodge", "--at", "7000ft").exit_code == 0


def test_a_kitchen_is_added_and_used_by_the_next_question(lodge: None) -> None:
    heard = json.loads(run("ask", "--json", BRAISE).stdout)["heard"]
    assert (heard["elevation_m"], heard["elevation_from"]) == (2133.6, "kitchen")


def test_the_question_and_the_option_win_over_the_kitchen(lodge: None) -> None:
    said = json.loads(run("ask", "--json", f"{BRAISE} at 9,000 feet").stdout)["heard"]
    assert (said["elevation_m"], said["elevation_from"]) == (2743.2, "stated")
    option = json.loads(run("ask", "--json", "--at", "5,000 ft", BRAISE).stdout)["heard"]
    assert option["elevation_m"] == 1524.0


def test_another_kitchen_is_taken_by_name(lodge: None) -> None:
    run("kitchen", "add", "Bakery", "--at", "5300ft")
    assert json.loads(run("ask", "--json", "--kitchen", "bakery", BRAISE).stdout)["heard"]["elevation_m"] == 1615.4
    assert json.loads(run("ask", "--json", BRAISE).stdout)["heard"]["elevation_m"] == 2133.6
    unknown = run("ask", "--kitchen", "bakry", BRAISE)
    assert unknown.exit_code == 2
    assert "did you mean Bakery" in unknown.stderr


def test_the_kitchen_decides_which_units_come_first() -> None:
    run("kitchen", "add", "Lodge", "--at", "2134 m")
    assert "2,134 m (7,000 ft)" in run("ask", BRAISE).stdout
    assert "7,000 ft (2,130 m)" in run("ask", "--units", "us", BRAISE).stdout


def test_all_that_is_said_is_kept() -> None:
    added = run(
        *("kitchen", "add", "Timberfold Lodge", "--at", "7,000 feet", "--units", "metric", "--place", "on the pass"),
        *("--equipment", "Electric Pressure Cooker", "--equipment", "stovetop pressure cooker"),
        *("--barometer-offset", "-0.05 inHg", "--thermometer-offset", "+1.8F"),
    )
    assert added.exit_code == 0, added.stderr
    kitchen = kept()
    assert kitchen["elevation_m"] == pytest.approx(2133.6)
    assert (kitchen["units"], kitchen["place"], kitchen["in_use"]) == ("metric", "on the pass", True)
    assert kitchen["equipment"] == ["electric_pressure_cooker", "stovetop_pressure_cooker"]
    # 1 inHg = 3386.389 Pa (NIST SP 811); a difference of 1.8 degF is 1 degC
    assert kitchen["barometer_offset_pa"] == pytest.approx(-0.05 * 3386.389)
    assert kitchen["thermometer_offset_c"] == pytest.approx(1.0)
    words = run("kitchen", "show", "timberfold lodge").stdout
    assert "Timberfold Lodge, on the pass: 2,134 m (7,000 ft), in use" in words
    assert "electric pressure cooker" in words
    assert "0.05 inHg (1.7 hPa) too low" in words
    assert "1.8 °F (1 °C) too high" in words


def test_a_reading_of_the_kitchens_barometer_is_put_right_by_its_offset() -> None:
    """U.S. Standard Atmosphere 1976: 781.85 hPa at 7,000 ft; the barometer reads 10 hPa more."""
    reading = ("ask", "--json", "what does water boil at, my barometer reads 791.85 hPa")
    plain = json.loads(run(*reading).stdout)["heard"]["elevation_m"]
    run("kitchen", "add", "Lodge", "--at", "7000ft", "--barometer-offset", "10 hPa")
    put_right = json.loads(run(*reading).stdout)
    boiling = next(f["value"] for f in put_right["figures"] if f["id"] == "boiling_point")
    assert plain < 2050
    assert boiling == pytest.approx(92.87, abs=0.02)


def test_list_marks_the_one_in_use(lodge: None) -> None:
    run("kitchen", "add", "Bakery", "--at", "5300ft")
    assert run("kitchen", "list").stdout == (
        "Bakery: 5,300 ft (1,620 m)\nTimberfold Lodge: 7,000 ft (2,130 m), in use\n"
    )
    assert [k["name"] for k in json.loads(run("kitchen", "list", "--json").stdout)] == ["Bakery", "Timberfold Lodge"]


def test_use_and_use_none(lodge: None) -> None:
    run("kitchen", "add", "Bakery", "--at", "5300ft")
    assert run("kitchen", "use", "BAKERY").stdout == "Bakery: 5,300 ft (1,620 m), in use\n"
    assert run("kitchen", "use", "--none").exit_code == 0
    assert run("ask", BRAISE).exit_code == 3
    assert run("kitchen", "use").exit_code == 2
    assert run("kitchen", "show").exit_code == 2


def test_remove_forgets(lodge: None) -> None:
    gone = run("kitchen", "remove", "timberfold lodge")
    assert gone.exit_code == 0
    assert "No kitchen is in use now" in gone.stdout
    assert run("ask", BRAISE).exit_code == 3
    assert run("kitchen", "remove", "timberfold lodge").exit_code == 2
    assert "No kitchens yet" in run("kitchen", "list").stdout


def test_a_name_is_overwritten_only_on_request(lodge: None) -> None:
    again = run("kitchen", "add", "timberfold lodge", "--at", "6000ft")
    assert again.exit_code == 2
    assert "--replace" in again.stderr
    assert kept()["elevation_m"] == pytest.approx(2133.6)
    assert run("kitchen", "add", "timberfold lodge", "--at", "6000ft", "--replace").exit_code == 0
    assert kept()["elevation_m"] == pytest.approx(1828.8)


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (["X", "--at", "nowhere at all"], "elevation"),
        (["X", "--at", "70000ft"], "higher than any mountain"),
        (["", "--at", "7000ft"], "needs a name"),
        (["X", "--at", "7000ft", "--equipment", "electric presure cooker"], "did you mean electric pressure cooker"),
        (["X", "--at", "7000ft", "--barometer-offset", "lots"], "0.05inHg"),
        (["X", "--at", "7000ft", "--barometer-offset", "3 ft"], "0.05inHg"),
        (["X", "--at", "7000ft", "--barometer-offset", "30 inHg"], "barometer offset"),
        (["X", "--at", "7000ft", "--thermometer-offset", "2 cups"], "2F or -1C"),
        (["X"], "--at"),
    ],
)
def test_what_cannot_be_kept_is_said(database: str, arguments: list[str], says: str) -> None:
    result = run("kitchen", "add", *arguments)
    assert result.exit_code == 2
    assert says in result.stderr
    assert "No kitchens yet" in run("kitchen", "list").stdout


def test_a_broken_store_stops_kitchen_but_not_ask(database: str) -> None:
    file = sqlite_file(database)
    assert isinstance(file, Path)
    file.write_text("a shopping list, far longer than the head of a database\n" * 50)
    listed = run("kitchen", "list")
    assert listed.exit_code == 1
    assert "is not a database; move that file away" in listed.stderr
    asked = run("ask", f"{BRAISE} at 7,000 feet")
    assert asked.exit_code == 0
    assert " for braising short ribs at " in asked.stdout.splitlines()[0]
    assert "I go on without memory" in asked.stderr
    assert run("ask", "--kitchen", "Lodge", BRAISE).exit_code == 1
