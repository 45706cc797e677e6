"""A row of the table is the conversion that `simmerline convert --json` gives, to the byte."""

from __future__ import annotations

import json
import shutil
from pathlib import Path
from typing import Any

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe.forms import form
from tests.assistant.bulk.conftest import SAMPLES, Ground, grounds

# low, among the bands of the tables, between them, above them, and below the sea
ELEVATIONS_M = {"Low": 30.0, "Bakery": 1615.44, "Lodge": 2133.6, "Hut": 3210.5, "Basin": -120.0}
WRITTEN_FOR_M = 250.0


@pytest.fixture(scope="module")
def done(tmp_path_factory: pytest.TempPathFactory) -> Ground:
    ground = grounds(tmp_path_factory.mktemp("same"))
    shutil.copytree(SAMPLES, ground.recipes, dirs_exist_ok=True)
    (ground.recipes / "half.json").write_text(
        '{"@type": "Recipe", "name": "Half \\ud83d", "recipeIngredient": ["1 egg"]}'
    )
    rows = [f"{name},{m} m,{'us' if m > 2000 else 'metric'}" for name, m in ELEVATIONS_M.items()]
    (ground.folder / "kitchens.csv").write_text("\n".join(("name,elevation,units", *rows)))
    code, *_ = ground.run("--text", "--from", f"{WRITTEN_FOR_M} m")
    assert code == 0
    return ground


def contract(row: dict[str, Any]) -> dict[str, Any]:
    """A row as the JSON of a converted recipe."""
    oven = {name: row[f"oven_{name}"] for name in ("from_c", "to_c", "low_c", "high_c")}
    return {
        "schema": 1,
        "title": row["title"],
        "style": {"id": row["style"], "sure": row["style_sure"]},
        "from_elevation_m": row["from_elevation_m"],
        "to_elevation_m": row["to_elevation_m"],
        "yields": None if row["yield_value"] is None else {"value": row["yield_value"], "unit": row["yield_unit"]},
        "ingredients": row["ingredients"],
        "oven": None if oven["to_c"] is None else oven,
        **{name: row[name] for name in ("steps", "changes", "unread", "cautions", "text")},
    }


def test_every_pair_is_there_once(done: Ground) -> None:
    held = [(row["recipe"], row["kitchen"]) for row in done.rows()]
    assert held == sorted((path.name, name) for path in done.recipes.iterdir() for name in ELEVATIONS_M)


def test_a_row_is_what_convert_says_to_the_byte(done: Ground) -> None:
    for row in done.rows():
        units = row["units"]
        content = (done.recipes / row["recipe"]).read_bytes()
        found = convert_recipe(
            content, from_elevation_m=WRITTEN_FOR_M, to_elevation_m=ELEVATIONS_M[row["kitchen"]], units=units
        )
        written = form("json").write(found, units).encode("utf-8", errors="replace").decode()
        assert json.dumps(contract(row), ensure_ascii=False, indent=2) + "\n" == written, row["recipe"]


def test_a_row_tells_where_it_is_for_and_by_which_rules(done: Ground) -> None:
    for row in done.rows():
        assert row["elevation_m"] == ELEVATIONS_M[row["kitchen"]]
        assert row["rules"] == list(dict.fromkeys(change["rule"] for change in row["changes"]))


def test_text_is_a_column_only_where_it_was_asked_for(ground: Ground) -> None:
    ground.rolls("rolls")
    assert ground.run()[0] == 0
    assert all("text" not in row for row in ground.rows())


def test_recipes_in_folders_are_called_by_their_way_there(ground: Ground) -> None:
    (ground.recipes / "bread").mkdir()
    shutil.copy(SAMPLES / "brioche.txt", ground.recipes / "bread" / "brioche.txt")
    assert ground.run()[0] == 0
    assert {row["recipe"] for row in ground.rows()} == {str(Path("bread", "brioche.txt"))}
