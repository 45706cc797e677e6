"""The lodge's and the bakery's recipes, in every style and format, read as a baker would read them."""

from dataclasses import replace
from pathlib import Path

import pytest

from assistant.recipes.read import read
from rules.baking.style import ranked, recognise

FOLDER = Path(__file__).parent / "samples"


def _read(sample):
    return read((FOLDER / sample["file"]).read_bytes(), name=sample["file"])


def test_title_and_counts(sample):
    recipe = _read(sample)
    assert recipe.title == sample["title"]
    assert len(recipe.ingredients) == sample["ingredients"]
    assert len(recipe.steps) == sample["steps"]


def test_yields(sample):
    recipe = _read(sample)
    if "yields" not in sample:
        assert recipe.yields is None
    else:
        assert [recipe.yields.value, recipe.yields.unit or ""] == sample["yields"]


def test_components(sample):
    assert list(_read(sample).components) == sample.get("components", [""])


def test_masses(sample):
    read_masses = {}
    for line in _read(sample).ingredients:
        read_masses.setdefault(line.item, line.mass_g)
    for item, grams in sample["masses"].items():
        assert read_masses[item] == pytest.approx(grams, rel=0.005), item


def test_style(sample):
    style = recognise(_read(sample))
    assert f"{style.id}/{style.variety}" == sample["style"]


def test_style_does_not_hang_on_the_title(sample):
    if sample["file"] in ("simple_syrup.txt", "duplicates_and_no_units.txt"):
        pytest.skip("sugar and water with one short step, or flour without a unit: nothing but the name tells")
    style = recognise(replace(_read(sample), title=""))
    assert style.id == sample["style"].split("/")[0]


def test_sure_is_a_share(sample):
    styles = ranked(_read(sample))
    assert all(0 <= s.sure <= 1 for s in styles)
    assert sum(s.sure for s in styles) <= 1.01
    assert [s.sure for s in styles] == sorted((s.sure for s in styles), reverse=True)


def test_every_sample_is_listed(sample_path, listed_files):
    assert sample_path.name in listed_files
