"""`simmerline batch`: note, list, compare, remove; the next change goes on from the log."""

import json
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from assistant.cli import create_app

pytestmark = pytest.mark.usefixtures("database")

CAKE = "butter cake"
SANK = ("--symptom", "sank in the middle")
RECIPE = """Lodge butter cake

2 cups all-purpose flour
1 3/4 cups sugar
3 tsp baking powder
1/2 cup butter
1 cup milk
2 eggs

Bake at 350 F for 30 minutes.
"""


def run(*arguments: str) -> Result:
    return CliRunner().invoke(create_app(), ["batch", *arguments])


def note(*arguments: str) -> str:
    result = run("note", CAKE, *arguments)
    assert result.exit_code == 0, result.stderr
    return result.stdout


@pytest.fixture(autouse=True)
def lodge(database: str) -> None:
    done = CliRunner().invoke(create_app(), ["kitchen", "add", "Timberfold Lodge", "--at", "7000ft"])
    assert done.exit_code == 0


def kept() -> list[dict[str, object]]:
    rows: list[dict[str, object]] = json.loads(run("list", "--json").stdout)
    return rows


def test_a_batch_is_kept_with_the_kitchen_in_use_and_the_next_change_is_said() -> None:
    said = note(*SANK, "--rating", "2", "--note", "good flavour")
    assert "Next change: Use 1 1/2 tsp of baking powder where the recipe has 2 tsp." in said
    (row,) = kept()
    assert row["kitchen"] == "Timberfold Lodge"
    assert row["elevation_m"] == pytest.approx(2133.6)
    assert row["symptoms"] == ["sank_in_the_middle"]
    assert (row["style"], row["rating"], row["note"]) == ("layer_cake", 2, "good flavour")


def test_what_helped_goes_further_and_what_did_not_is_left() -> None:
    note(*SANK, "--rating", "2")
    further = note(*SANK, "--rating", "3", "--changed", "baking powder 2 tsp to 1 1/2 tsp")
    assert "go half a step further" in further
    assert "of baking powder instead of 1 1/2 tsp" in further
    other = note(*SANK, "--rating", "3", "--changed", "suggested")
    assert "made no difference" in other
    assert "Next change: Use 3/4 cup plus 2 tbsp of sugar" in other


def test_what_hurt_goes_back() -> None:
    note(*SANK, "--rating", "3")
    said = note(*SANK, "--rating", "1", "--changed", "sugar 1 cup to 3/4 cup")
    assert "Next change: Go back to 1 cup of sugar from 3/4 cup, and change nothing else." in said


def test_a_good_batch_is_left_alone() -> None:
    note(*SANK, "--rating", "2")
    assert "keep it as it is now" in note("--rating", "5", "--changed", "suggested")


def test_the_recipe_itself_sizes_the_change(tmp_path: Path) -> None:
    file = tmp_path / "cake.txt"
    file.write_text(RECIPE, encoding="utf-8")
    said = note(*SANK, "--recipe", str(file))
    assert "instead of" in said
    assert "3 tsp" in said or "1 tbsp" in said


def test_elevation_and_dish_can_be_said() -> None:
    said = run("note", "house special", "--dish", "muffins", "--at", "0 ft", "--symptom", "came out dry").stdout
    assert "sea level" in said
    assert kept()[0]["symptoms"] == ["crumb_dry"]


def test_safety_is_said_first_hand() -> None:
    said = run("note", "dill pickles", "--symptom", "lost its seal").stdout
    assert "Stop: Do not taste it" in said


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("--symptom", "qqq zzz"), "I do not know the fault"),
        (("--rating", "9"), "between 1 and 5"),
        (("--changed", "  "), "say what was changed"),
        (("--changed", "suggested"), "nothing has been suggested"),
        (("--at", "somewhere"), "--at"),
        (("--recipe", "/no/such/file.txt"), "cannot be opened"),
        (("--kitchen", "Elsewhere"), "there is no kitchen"),
    ],
)
def test_misuse_is_told_kindly_and_nothing_is_kept(arguments: tuple[str, ...], says: str) -> None:
    result = run("note", CAKE, *arguments)
    assert result.exit_code == 2
    assert says in result.stderr
    assert kept() == []


def test_an_empty_title_is_refused() -> None:
    result = run("note", "  ", *SANK)
    assert result.exit_code == 2
    assert "title" in result.stderr


def test_list_is_oldest_first_and_of_one_recipe() -> None:
    note(*SANK, "--rating", "2")
    run("note", "corn muffins", "--rating", "4")
    lines = run("list").stdout.splitlines()
    assert [line.split(",")[0] for line in lines] == ["batch 1", "batch 2"]
    assert "Sank in the middle" in lines[0]
    assert run("list", "CORN  muffins").stdout.startswith("batch 2")
    assert "No batches of brownies yet" in run("list", "brownies").stdout


def test_two_batches_side_by_side() -> None:
    note(*SANK, "--rating", "2")
    note(*SANK, "--rating", "3", "--changed", "baking powder 2 tsp to 1 1/2 tsp")
    for arguments in ((CAKE,), ("1", "2")):
        said = run("compare", *arguments).stdout
        assert "batch 1" in said
        assert "2 of 5" in said
        assert "3 of 5" in said
        assert "Batch 2 came out better than batch 1: baking powder 2 tsp to 1 1/2 tsp." in said
        assert "Next change: " in said


def test_several_changes_cannot_be_told_apart() -> None:
    note(*SANK, "--rating", "3")
    note(*SANK, "--rating", "2", "--changed", "less sugar", "--changed", "oven 350F to 370F")
    said = run("compare", CAKE).stdout
    assert "worse" in said
    assert "cannot tell which one did it" in said


def test_compare_needs_two_of_one_recipe() -> None:
    note(*SANK)
    assert run("compare", CAKE).exit_code == 2
    run("note", "corn muffins", "--rating", "4")
    mixed = run("compare", "1", "2")
    assert mixed.exit_code == 2
    assert "corn muffins" in mixed.stderr
    missing = run("compare", "1", "9")
    assert missing.exit_code == 2
    assert "there is no batch 9" in missing.stderr


def test_remove() -> None:
    note(*SANK)
    assert run("remove", "1").exit_code == 0
    assert kept() == []
    assert run("remove", "1").exit_code == 2


def test_a_store_that_fails_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SIMMERLINE_DB", "sqlite:////proc/nowhere/simmerline.db")
    result = run("list")
    assert result.exit_code == 1
    assert "SIMMERLINE_DB" in result.stderr


def test_without_a_kitchen_it_says_that_it_is_for_sea_level() -> None:
    CliRunner().invoke(create_app(), ["kitchen", "use", "--none"])
    assert "this is for sea level" in note(*SANK)


def test_a_converted_recipe_does_not_get_the_tables_change_twice(tmp_path: Path) -> None:
    file = tmp_path / "cake.txt"
    file.write_text(RECIPE)
    plain = note("--recipe", str(file), *SANK, "--rating", "2")
    assert "Use 2 1/4 tsp of baking powder instead of 1 tbsp." in plain
    assert run("remove", "1").exit_code == 0
    converted = note("--recipe", str(file), "--from", "7000ft", *SANK, "--rating", "2")
    assert "Recipe for 7,000 ft" in converted
    assert "Use 2 1/2 tsp plus 1/8 tsp of baking powder instead of 1 tbsp." in converted
    # the next note of the same recipe need not say it again
    again = note("--recipe", str(file), *SANK, "--rating", "2")
    assert "Recipe for 7,000 ft" in again


def test_a_suggested_oven_is_kept_in_a_few_words(tmp_path: Path) -> None:
    file = tmp_path / "cake.txt"
    file.write_text(RECIPE)
    note("--recipe", str(file), "--symptom", "too pale", "--rating", "2")
    said = note("--recipe", str(file), "--changed", "suggested", "--rating", "4")
    assert "Changed: oven 350 °F to 370 °F." in said


def test_what_is_longer_than_a_sentence_is_kept_and_shown_whole() -> None:
    long = "x" * 5000
    assert long in note("--note", long, "--changed", f"less sugar, {long}").replace("\n", "")
    assert kept()[0]["note"] == long
    assert run("list").exit_code == 0


@pytest.mark.parametrize("number", ["0", "-1", "9" * 30])
@pytest.mark.parametrize("command", [("show",), ("remove",), ("compare", "1")])
def test_a_number_that_no_batch_has_is_told(command: tuple[str, ...], number: str) -> None:
    note()
    done = run(*command, *(("--",) if number == "-1" else ()), number)
    assert done.exit_code == 2
    assert done.stderr.startswith("simmerline: ")


def test_a_rating_beyond_all_figures_is_told() -> None:
    done = run("note", CAKE, "--rating", "9" * 400)
    assert done.exit_code == 2
    assert "between 1 and 5" in done.stderr
