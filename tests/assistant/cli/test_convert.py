"""`simmerline convert` as it is typed."""

from __future__ import annotations

import json
import os
from concurrent.futures import ProcessPoolExecutor as Pool
from pathlib import Path

import pytest
from typer.testing import CliRunner

from assistant.cli import convert_each, convert_many
from assistant.cli.app import create_app
from assistant.files import NotWritten
from assistant.replies.recipe.forms import names

SAMPLES = Path(__file__).parents[1] / "recipes" / "samples"
CAKE = str(SAMPLES / "yellow_layer_cake.txt")


@pytest.fixture
def run(database):
    """The command with an empty store."""

    def typed(*args: str, given: str | bytes | None = None):
        return CliRunner().invoke(create_app(), ["convert", *args], input=given)

    return typed


@pytest.fixture
def folder(tmp_path) -> Path:
    """Three recipes in two folders, one that cannot be read, and a hidden file."""
    kept = tmp_path / "recipes"
    (kept / "breads").mkdir(parents=True)
    for name, into in (("yellow_layer_cake.txt", kept), ("banana_loaf.json", kept), ("brioche.txt", kept / "breads")):
        (into / name).write_bytes((SAMPLES / name).read_bytes())
    (kept / "photo.jpg").write_bytes(b"\xff\xd8\xff\x00\x10JFIF")
    (kept / ".hidden.txt").write_text("no recipe")
    return kept


def test_one_recipe_as_text(run) -> None:
    done = run(CAKE, "--to", "7000ft")
    assert done.exit_code == 0
    assert "* 2 1/4 tsp baking powder [10 g] (was 1 tbsp baking powder)" in done.stdout


def test_json_is_the_contract(run) -> None:
    done = run(CAKE, "--from", "0ft", "--to", "7000ft", "--json")
    told = json.loads(done.stdout)
    assert (told["schema"], told["style"]["id"], told["to_elevation_m"]) == (1, "layer_cake", 2133.6)


@pytest.mark.parametrize(
    ("form", "begins"),
    [
        ("text", "Lodge"),
        ("markdown", "# Lodge"),
        ("html", "<!doctype"),
        ("csv", "recipe,part,item,"),
        ("jsonld", "{"),
        ("json", "{"),
        ("terminal", "Lodge"),
    ],
)
def test_one_recipe_in_another_form(run, form, begins) -> None:
    done = run(CAKE, "--to", "7000ft", "--format", form)
    assert done.exit_code == 0
    assert done.stdout.startswith(begins)


def test_the_recipe_from_standard_input(run) -> None:
    given = Path(CAKE).read_text(encoding="utf-8")
    assert run("-", "--to", "7000ft", given=given).stdout == run(CAKE, "--to", "7000ft").stdout


def test_without_an_elevation_it_is_asked_for(run) -> None:
    done = run(CAKE)
    assert done.exit_code == 3
    assert "--to 7000ft" in done.stderr


def test_the_kitchen_in_use_is_taken_for_granted(run) -> None:
    kept = CliRunner().invoke(create_app(), ["kitchen", "add", "Timberfold Lodge", "--at", "7000ft"])
    assert kept.exit_code == 0
    assert run(CAKE).stdout == run(CAKE, "--to", "7000ft").stdout
    assert json.loads(run(CAKE, "--to", "300 ft", "--json").stdout)["to_elevation_m"] == 91.4


def test_down_again_and_for_more(run) -> None:
    told = json.loads(run(CAKE, "--from", "7000ft", "--to", "0ft", "--servings", "32", "--json").stdout)
    powder = told["ingredients"][2]
    assert (powder["line"], powder["to"]["mass_g"] > 2 * powder["mass_g"]) == ("1 tbsp baking powder", True)
    assert told["yields"]["value"] == 4


def test_metric_first(run) -> None:
    assert "2,134 m (7,000 ft)" in run(CAKE, "--to", "7000ft", "--units", "metric").stdout
    assert "2,100 m (6,890 ft)" in run(CAKE, "--to", "2100m").stdout


def test_the_style_can_be_told(run) -> None:
    told = json.loads(run(CAKE, "--to", "7000ft", "--style", "pound cake", "--json").stdout)
    assert told["style"] == {"id": "pound_cake", "sure": 1}


@pytest.mark.parametrize("elevation", ["7000ft", "sea level"])
def test_the_same_place_gives_the_same_document(run, elevation) -> None:
    loaf = SAMPLES / "banana_loaf.json"
    done = run(str(loaf), "--from", elevation, "--to", elevation, "--format", "jsonld")
    assert json.loads(done.stdout) == json.loads(loaf.read_text(encoding="utf-8"))


@pytest.mark.parametrize(
    ("args", "code", "said"),
    [
        (("nosuch.txt", "--to", "7000ft"), 1, "cannot be read"),
        ((CAKE, "--to", "the moon"), 2, "--to 'the moon' is not an elevation"),
        ((CAKE, "--to", "30000ft"), 2, "higher than any mountain"),
        ((CAKE, "--from", "nowhere at all", "--to", "7000ft"), 2, "--from"),
        ((CAKE, "--to", "7000ft", "--style", "cake"), 2, "did you mean"),
        ((CAKE, "--to", "7000ft", "--servings", "0"), 2, "above 0"),
        ((CAKE, "--to", "7000ft", "--servings", "nan"), 2, "above 0"),
        ((str(SAMPLES / "oat_bars.txt"), "--to", "7000ft", "--servings", "9"), 1, "Serves 8"),
        ((CAKE, CAKE.replace("yellow_layer_cake", "fudge"), "--to", "7000ft"), 2, "--out"),
        ((CAKE, "--to", "7000ft", "--json", "--format", "html"), 2, "not both"),
        ((CAKE, "--to", "7000ft", "--format", "scroll"), 2, "csv, html, json"),
        ((CAKE, "--to", "7000ft", "--kitchen", "nobody's"), 2, "kitchen"),
    ],
)
def test_misuse_is_told_kindly(run, args, code, said) -> None:
    done = run(*args)
    assert done.exit_code == code
    assert done.stderr.startswith("simmerline: ")
    assert said in done.stderr
    assert "Traceback" not in done.output


@pytest.mark.parametrize(
    ("given", "code"),
    [
        (b"", 3),
        (b"\x00" * 100, 1),
        (b'{"@type": "Recipe", "name": ', 1),
        (b'{"@type": "Thing"}', 3),
        (b"[" * 100_000, 1),
        (b"<html><body>no recipe here</body></html>", 3),
        (b"'<!-- kept --><html><body>no recipe here either</body></html>", 3),
        (b'<html><script type=\'application/ld+json\'>{"@type": "Recipe", "name": "Rolls"}</script></html>', 3),
        (b"The kitchen is closed on Mondays.", 3),
        (b"x" * (5 * 1024 * 1024 + 10), 1),
        ("\x1b[2J" * 60_000, 1),
    ],
    ids=["empty", "binary", "broken", "thing", "nested", "page", "quoted", "title", "notice", "large", "long"],
)
def test_what_is_no_recipe_is_said_in_one_line(run, given, code) -> None:
    done = run("-", "--to", "7000ft", given=given)
    assert done.exit_code == code
    assert done.stderr.startswith("simmerline: the text given: ")
    assert len(done.stderr) < 300


@pytest.mark.parametrize("several", [False, True])
def test_no_result_is_written_over_what_is_there(run, folder, tmp_path, several) -> None:
    out = tmp_path / "out"
    out.mkdir()
    asked = (str(folder) if several else CAKE, "--to", "7000ft", "--out", str(out))
    (out / "yellow_layer_cake.txt").write_text("kept")
    done = run(*asked)
    assert (done.exit_code, done.stdout) == (1, "")
    assert f"{out}/yellow_layer_cake.txt is there already; --force" in done.stderr
    assert [path.read_text() for path in out.iterdir()] == ["kept"]
    run(*asked, "--force")
    assert (out / "yellow_layer_cake.txt").read_text().startswith("Lodge yellow")
    assert not [path for path in out.iterdir() if path.name.startswith(".")]


def test_no_result_is_written_through_a_link(run, tmp_path) -> None:
    (tmp_path / "yellow_layer_cake.txt").symlink_to(tmp_path / "elsewhere.txt")
    done = run(CAKE, "--to", "7000ft", "--out", str(tmp_path), "--force")
    assert done.exit_code == 1
    assert "link to another file" in done.stderr
    assert not (tmp_path / "elsewhere.txt").exists()


def test_a_file_is_no_folder_for_results(run, tmp_path) -> None:
    (tmp_path / "out").write_text("kept")
    done = run(CAKE, "--to", "7000ft", "--out", str(tmp_path / "out"))
    assert done.exit_code == 2
    assert "is a file; --out names a folder" in done.stderr


@pytest.mark.parametrize("line", ["0 can tomatoes", "0 eggs", "0 (14 oz) cans beans"])
def test_none_of_a_thing_for_more_is_none(run, line) -> None:
    given = f"Stew\n\nServes 4\n\n{line}\n2 lb beef\n\nSimmer 2 hours.\n"
    done = run("-", "--to", "7000ft", "--servings", "8", given=given)
    assert done.exit_code == 0
    assert line in done.stdout


# Several at once


def test_a_full_disk_is_told_for_each_result(run, folder, tmp_path, monkeypatch) -> None:
    def full(written, *, over):
        raise NotWritten(next(iter(written)), "the disk is full")

    monkeypatch.setattr(convert_many, "write_all", full)
    done = run(str(folder), "--to", "7000ft", "--out", str(tmp_path / "out"))
    assert done.exit_code == 1
    assert done.stdout.startswith("0 of 4 recipes converted")
    assert done.stdout.count("the disk is full") == 3
    assert "report.json: the disk is full" in done.stderr


def test_a_folder_gives_results_and_a_report(run, folder, tmp_path) -> None:
    out = tmp_path / "converted"
    done = run(str(folder), "--to", "7000ft", "--out", str(out), "--format", "html")
    assert done.exit_code == 1
    assert sorted(p.name for p in out.iterdir()) == [
        "banana_loaf.html", "brioche.html", "report.json", "report.txt", "yellow_layer_cake.html",
    ]  # fmt: skip
    assert done.stdout.startswith("3 of 4 recipes converted, from sea level to 7,000 ft (2,130 m).")
    assert "photo.jpg: it is not text." in done.stdout
    report = json.loads((out / "report.json").read_text(encoding="utf-8"))
    assert (report["converted"], report["failed"]) == (3, 1)
    titles = [r["title"] for r in report["recipes"] if not r["error"]]
    assert titles == ["Banana bread", "Brioche à tête", "Lodge yellow layer cake"]
    assert (out / "report.txt").read_text(encoding="utf-8").strip() == done.stdout.strip()


@pytest.mark.parametrize("form", names())
def test_a_folder_in_every_form(run, folder, tmp_path, form) -> None:
    (folder / "photo.jpg").unlink()
    out = tmp_path / "out"
    assert run(str(folder), "--to", "7000ft", "--out", str(out), "--format", form).exit_code == 0
    written = [path.read_text(encoding="utf-8") for path in out.iterdir() if path.stem != "report"]
    assert sum("Brioche à tête" in text for text in written) == 1
    assert len(written) == 3


def _everything(run, folder, out) -> dict[str, bytes]:
    """What the command writes for a folder, by name of file; the folder of the results is named in none."""
    assert run(str(folder), "--to", "7000ft", "--out", str(out), "--format", "json").exit_code == 1
    return {p.name: p.read_bytes().replace(str(out).encode(), b"OUT") for p in out.iterdir()}


def test_many_processes_write_what_one_writes(run, folder, tmp_path, monkeypatch) -> None:
    for number in range(12):
        name = ("brioche.txt", "fudge.txt", "banana_loaf.json")[number % 3]
        (folder / f"{number:02d}-{name}").write_bytes((SAMPLES / name).read_bytes())
    alone = _everything(run, folder, tmp_path / "alone")
    monkeypatch.setattr(convert_each, "FEWEST_SHARED", 2)
    monkeypatch.setattr(convert_each, "AT_A_TIME", 2)
    processes = set()
    monkeypatch.setattr(convert_each, "ProcessPoolExecutor", lambda *a, **k: processes.add(1) or Pool(*a, **k))
    assert _everything(run, folder, tmp_path / "shared") == alone
    assert processes or len(os.sched_getaffinity(0)) < 2


def test_a_fault_of_ours_in_one_recipe_stops_no_other(run, folder, tmp_path, monkeypatch) -> None:
    def stumbling(source, asked):
        if source.endswith("brioche.txt"):
            raise KeyError("yeast")
        return converted_from(source, asked)

    converted_from = convert_each.converted_from
    monkeypatch.setattr(convert_each, "converted_from", stumbling)
    done = run(str(folder), "--to", "7000ft", "--out", str(tmp_path / "out"))
    assert done.exit_code == 1
    assert done.stdout.startswith("2 of 4 recipes converted")
    assert "stumbled over it (KeyError" in done.stdout


def test_a_folder_with_json_prints_the_report_as_json(run, folder, tmp_path) -> None:
    (folder / "photo.jpg").unlink()
    done = run(str(folder), "--to", "7000ft", "--out", str(tmp_path / "out"), "--json")
    assert done.exit_code == 0
    told = json.loads(done.stdout)
    assert told["converted"] == 3
    assert all(json.loads(Path(r["written"]).read_text(encoding="utf-8"))["schema"] == 1 for r in told["recipes"])


def test_no_recipe_is_ever_written_over(run, folder) -> None:
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    run(str(folder), "--to", "7000ft", "--out", str(folder))
    assert all(path.read_bytes() == content for path, content in before.items())
    assert (folder / "yellow_layer_cake-2.txt").is_file()


def test_two_recipes_of_one_name_both_come_out(run, folder, tmp_path) -> None:
    (folder / "breads" / "yellow_layer_cake.txt").write_bytes(Path(CAKE).read_bytes())
    (folder / "photo.jpg").unlink()
    out = tmp_path / "out"
    run(str(folder), "--to", "7000ft", "--out", str(out))
    assert {"yellow_layer_cake.txt", "yellow_layer_cake-2.txt"} <= {p.name for p in out.iterdir()}


def test_an_empty_folder_is_told(run, tmp_path) -> None:
    done = run(str(tmp_path), "--to", "7000ft", "--out", str(tmp_path / "out"))
    assert done.exit_code == 2
    assert "no files" in done.stderr


def test_one_recipe_into_a_folder(run, tmp_path) -> None:
    done = run(CAKE, "--to", "7000ft", "--out", str(tmp_path), "--format", "markdown")
    assert done.exit_code == 0
    assert (tmp_path / "yellow_layer_cake.md").read_text(encoding="utf-8").startswith("# Lodge")
