"""The wall card: its figures against published ones and the rules of the trade, its page as it is printed."""

from __future__ import annotations

import re
from io import BytesIO
from pathlib import Path

import pytest
from CoolProp.CoolProp import PropsSI
from pypdf import PdfReader
from typer.testing import CliRunner

from assistant.cli import create_app
from assistant.printing.card import Card, card_for
from assistant.printing.card_drawn import (
    DRAWN_FOR_MM,
    GUTTER_MM,
    LABEL_PT,
    MARGIN_MM,
    PAPERS_MM,
    VALUE_PT,
    page,
    room_mm,
)
from assistant.printing.drawing import BadPicture, as_files, format_of

LODGE_M, BAKERY_M = 2133.6, 1615.4
COLUMN_MM = (DRAWN_FOR_MM[0] - 2 * MARGIN_MM - GUTTER_MM) / 2


def rows(card: Card, section: str) -> dict[str, tuple[str, str]]:
    found = next(s for s in card.sections if s.id == section)
    return {row.label: (row.value, row.aside) for row in found.rows}


@pytest.mark.parametrize(("elevation_m", "pa"), [(LODGE_M, 78_175), (BAKERY_M, 83_400), (0.0, 101_325)])
def test_the_boil_is_that_of_a_reference_library(elevation_m: float, pa: float) -> None:
    """pa: U.S. Standard Atmosphere 1976, its printed table, to 0.1 %; the boil by CoolProp."""
    card = card_for("", elevation_m, "metric")
    assert card.boils_c == pytest.approx(PropsSI("T", "P", pa, "Q", 0, "Water") - 273.15, abs=0.06)


def test_safe_temperatures_are_those_of_usda() -> None:
    """USDA FSIS, Safe Minimum Internal Temperature chart, at every elevation."""
    for elevation_m in (0.0, BAKERY_M, LODGE_M, 3500.0):
        safe = rows(card_for("", elevation_m), "unchanged")
        assert safe["Poultry, at its thickest"][0] == "165 °F"
        assert safe["Minced meat"][0] == "160 °F"
        assert safe["Whole cuts, then rest 3 min"][0] == "145 °F"


def test_sugar_falls_two_degrees_a_thousand_feet() -> None:
    """Common practice: 2 °F less for each 1,000 ft; the soft ball is 234 to 240 °F at sea level."""
    low, high = (int(f) for f in re.findall(r"\d+", rows(card_for("", LODGE_M), "sugar")["Soft ball"][0]))
    assert (low, high) == (pytest.approx(234 - 14, abs=2), pytest.approx(240 - 14, abs=2))


def test_caramel_and_safety_stay_while_the_boil_falls() -> None:
    sea, high = card_for("", 0.0), card_for("", 3000.0)
    assert rows(sea, "sugar")["Caramel"] == rows(high, "sugar")["Caramel"]
    assert rows(sea, "unchanged") == rows(high, "unchanged")
    assert sea.boils_c - high.boils_c == pytest.approx(10, abs=0.6)


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("elevation_m", [0.0, BAKERY_M, LODGE_M, 3500.0, 4500.0])
def test_no_figure_runs_into_its_label(elevation_m: float, units: str) -> None:
    card = card_for("Timberfold Lodge", elevation_m, units)
    tight = [(row, round(room_mm(row, COLUMN_MM), 1)) for s in card.sections for row in s.rows]
    assert all(room >= 0 for _, room in tight), [pair for pair in tight if pair[1] < 0]


def test_figures_are_large_enough_for_two_metres() -> None:
    """Letters of 4 arc minutes, that good eyes read, are 2.3 mm high at 2 m; a capital is 0.73 of its type."""
    assert VALUE_PT * 0.3528 * 0.73 >= 2.3
    assert LABEL_PT * 0.3528 * 0.73 >= 2.3


def test_every_row_stands_in_the_pdf_as_text() -> None:
    cards = [card_for("Timberfold Lodge", LODGE_M), card_for("Timberfold Bakery", BAKERY_M, "metric")]
    (content,) = as_files([page(card, "a4") for card in cards], Path("cards.pdf")).values()
    pages = PdfReader(BytesIO(content)).pages
    assert len(pages) == 2
    for card, printed in zip(cards, pages, strict=True):
        text = printed.extract_text()
        assert card.name in text
        assert all(row.label in text and row.value in text for s in card.sections for row in s.rows)
        width, height = (float(side) * 25.4 / 72 for side in (printed.mediabox.width, printed.mediabox.height))
        assert (width, height) == (pytest.approx(210, abs=0.5), pytest.approx(297, abs=0.5))


@pytest.mark.parametrize("paper", PAPERS_MM)
def test_nothing_lies_outside_the_page(paper: str) -> None:
    drawn = page(card_for("Timberfold Lodge", LODGE_M), paper)
    drawn.canvas.draw()
    width, height = drawn.bbox.width, drawn.bbox.height
    for text in drawn.texts:
        box = text.get_window_extent()
        assert box.x0 >= 0 <= box.y0
        assert box.x1 <= width
        assert box.y1 <= height


def test_black_on_white() -> None:
    """Printed without colour it says the same: nothing on it is coloured."""
    from PIL import Image

    (content,) = as_files([page(card_for("", LODGE_M))], Path("card.png")).values()
    pixels = Image.open(BytesIO(content)).convert("RGB").resize((300, 390)).tobytes()
    assert all(max(pixels[i : i + 3]) - min(pixels[i : i + 3]) < 12 for i in range(0, len(pixels), 3))


def test_the_same_card_is_the_same_file() -> None:
    for ending in ("pdf", "svg", "png"):
        first, second = (as_files([page(card_for("", LODGE_M))], Path(f"card.{ending}")) for _ in range(2))
        assert first == second, ending


def test_a_file_by_any_other_ending_is_refused() -> None:
    with pytest.raises(BadPicture, match=r"\.pdf, \.svg or \.png"):
        format_of(Path("card.docx"))


def test_the_command_writes_and_never_over(tmp_path: Path) -> None:
    out = tmp_path / "wall.pdf"
    run = CliRunner().invoke
    done = run(create_app(["card"]), ["card", "--at", "7000ft", "--title", "Timberfold Lodge", "--out", str(out)])
    assert done.exit_code == 0, done.output
    assert "Timberfold Lodge" in PdfReader(out).pages[0].extract_text()
    again = run(create_app(["card"]), ["card", "--at", "7000ft", "--out", str(out)])
    assert again.exit_code == 1
    assert run(create_app(["card"]), ["card", "--at", "7000ft", "--out", str(out), "--force"]).exit_code == 0
    link = tmp_path / "link.pdf"
    link.symlink_to(tmp_path / "elsewhere.pdf")
    assert run(create_app(["card"]), ["card", "--at", "7000ft", "--out", str(link), "--force"]).exit_code == 1
    assert not (tmp_path / "elsewhere.pdf").exists()
    assert run(create_app(["card"]), ["card", "--at", "7000ft", "--paper", "b5"]).exit_code == 2


def test_no_page_of_several_is_written_over(tmp_path: Path, database: str) -> None:
    """Pages as pictures are numbered, and it is their names that must be free."""
    run = CliRunner().invoke
    for name, at in (("Timberfold Lodge", "7000ft"), ("Timberfold Bakery", "5300ft")):
        assert run(create_app(["kitchen"]), ["kitchen", "add", name, "--at", at]).exit_code == 0
    (tmp_path / "wall-2.svg").write_text("kept")
    asked = ["card", "--kitchen", "Timberfold Lodge", "--kitchen", "Timberfold Bakery"]
    refused = run(create_app(["card"]), [*asked, "--out", str(tmp_path / "wall.svg")])
    assert refused.exit_code == 1
    assert "wall-2.svg is there already" in refused.output
    assert (tmp_path / "wall-2.svg").read_text() == "kept"
    assert not (tmp_path / "wall-1.svg").exists()
