"""`simmerline batch report`: the log as a plot and a table, read back."""

from __future__ import annotations

import csv
import io
import re
from datetime import date, timedelta
from pathlib import Path

import pytest
from matplotlib.text import Text
from pypdf import PdfReader
from typer.testing import CliRunner, Result

from assistant.cli import create_app
from assistant.printing.batch_report import as_csv, reports
from assistant.printing.batch_report_drawn import HEIGHT_MM, MOST_ON_A_PLOT, WIDTH_MM, pages, parts
from assistant.recipes.batch import Batch

pytestmark = pytest.mark.usefixtures("database")


def run(*arguments: str) -> Result:
    return CliRunner().invoke(create_app(["batch", "kitchen"]), list(arguments))


def note(*arguments: str) -> None:
    done = run("batch", "note", *arguments)
    assert done.exit_code == 0, done.output


@pytest.fixture
def log(database: str) -> None:
    assert run("kitchen", "add", "Timberfold Bakery", "--at", "5300ft").exit_code == 0
    note("spice loaf", "--symptom", "sank in the middle", "--rating", "2", "--note", "$2 of nutmeg, $3 of mace")
    note("spice loaf", "--rating", "4", "--changed", "baking soda 1 tsp to 3/4 tsp")
    note("spice loaf", "--symptom", "came out dry", "--rating", "3", "--changed", "baking time, shorter")
    note("potato rolls", "--at", "0 ft", "--changed", "less yeast")


def batches(count: int, words: str = "") -> list[Batch]:
    first = date(2026, 3, 1)
    return [
        Batch(
            recipe="Trial bun",
            made_on=first + timedelta(days=n),
            rating=n % 5 + 1,
            note=words,
            id=n + 1,
            symptoms=("crumb_dry",) if n % 2 else (),
            elevation_m=2133.6,
            kitchen="Timberfold Lodge",
        )
        for n in range(count)
    ]


def test_a_log_without_entries_says_so_and_writes_nothing(tmp_path: Path) -> None:
    done = run("batch", "report", "--out", str(tmp_path / "report.pdf"))
    assert done.exit_code == 0
    assert "No batches yet" in done.stdout
    assert not list(tmp_path.glob("report*"))


@pytest.mark.usefixtures("log")
def test_the_pdf_has_a_page_a_recipe_with_its_table(tmp_path: Path) -> None:
    out = tmp_path / "report.pdf"
    assert run("batch", "report", "--out", str(out)).exit_code == 0
    first, second = (re.sub(r"\s+", "", page.extract_text()) for page in PdfReader(out).pages)
    for wanted in ("Batches of spice loaf", "baking soda 1 tsp to 3/4 tsp", "better: nothing wrong", "worse: is dry",
                   "4 of 5", "$2 of nutmeg, $3 of mace", "Timberfold Bakery"):  # fmt: skip
        assert wanted.replace(" ", "") in first
    assert "Batchesofpotatorolls" in second
    assert "sealevel" in second


@pytest.mark.usefixtures("log")
def test_a_recipe_or_a_kitchen_is_picked_by_its_name(tmp_path: Path) -> None:
    out = tmp_path / "report.csv"
    assert run("batch", "report", "Spice  LOAF", "--out", str(out)).exit_code == 0
    rows = list(csv.DictReader(io.StringIO(out.read_text(encoding="utf-8"))))
    assert [row["rating"] for row in rows] == ["2", "4", "3"]
    assert [row["outcome"] for row in rows] == ["", "better", "worse"]
    assert float(rows[0]["elevation_m"]) == pytest.approx(1615.4, abs=0.1)
    assert run("batch", "report", "timberfold bakery", "--out", str(out), "--force").exit_code == 0
    assert len(out.read_text(encoding="utf-8").splitlines()) == 4
    other = run("batch", "report", "somewhere", "--out", str(tmp_path / "none.csv"))
    assert "No batches of somewhere" in other.stdout
    assert not (tmp_path / "none.csv").exists()


@pytest.mark.usefixtures("log")
def test_markdown_has_its_plots_beside_it_and_nothing_is_written_over(tmp_path: Path) -> None:
    from markdown_it import MarkdownIt

    out = tmp_path / "report.md"
    assert run("batch", "report", "--out", str(out)).exit_code == 0
    page = MarkdownIt().enable("table").render(out.read_text(encoding="utf-8"))
    assert page.count("<table>") == 2
    assert {path.name for path in tmp_path.glob("report*")} == {"report.md", "report-1.svg", "report-2.svg"}
    again = run("batch", "report", "--out", str(out))
    assert again.exit_code == 1
    assert "--force" in again.stderr
    (tmp_path / "report-2.svg").unlink()
    (tmp_path / "report-2.svg").symlink_to(tmp_path / "elsewhere")
    assert run("batch", "report", "--out", str(out), "--force").exit_code == 1
    assert not (tmp_path / "elsewhere").exists()
    odd = run("batch", "report", "--out", str(tmp_path / "report.docx"))
    assert odd.exit_code == 1
    assert ".csv or .md" in odd.stderr


def test_the_marks_are_the_ratings() -> None:
    """Filled where nothing went wrong, open where something did; the line goes through what was rated."""
    (page,) = pages(reports(batches(4), "us"))
    line, *marks = page.axes[0].lines
    assert list(line.get_ydata()) == [1, 2, 3, 4]
    assert [mark.get_markerfacecolor() for mark in marks] == ["black", "white", "black", "white"]


@pytest.mark.parametrize("words", ["", "the crumb was close and the crust pale " * 12, "q" * 900])
def test_a_long_log_goes_over_pages_and_off_none(words: str) -> None:
    (report,) = reports(batches(19, words), "metric")
    drawn = pages((report,))
    assert sum(map(len, parts(report))) == 19
    assert all(0 < len(part) <= MOST_ON_A_PLOT for part in parts(report))
    for page in drawn:
        page.draw_without_rendering()
        for text in page.findobj(Text):
            box = text.get_window_extent()
            if text.get_text().strip():
                assert box.x0 >= 0 <= box.y0, text.get_text()
                assert box.x1 <= page.bbox.width, text.get_text()
                assert box.y1 <= page.bbox.height, text.get_text()
    assert WIDTH_MM > HEIGHT_MM


def test_a_cell_is_no_formula() -> None:
    row = next(csv.DictReader(io.StringIO(as_csv(reports(batches(1, "=1+1"), "us")))))
    assert row["note"] == "'=1+1"


def test_the_same_log_is_the_same_file(tmp_path: Path) -> None:
    from assistant.cli.batch_report import written

    for ending in ("pdf", "png", "svg", "md", "csv"):
        out = tmp_path / f"report.{ending}"
        assert written(reports(batches(3), "us"), out) == written(reports(batches(3), "us"), out), ending
