"""Lessons: their sums done again, what stands on the sheet and what only in the key."""

from __future__ import annotations

import re
from pathlib import Path

import ambiance
import pytest
from CoolProp.CoolProp import PropsSI
from matplotlib.text import Text as Written

from assistant.printing.lesson.air_column import DOTS, AirColumn, air_column, as_png, as_svg, dots_m, drawn, weight
from assistant.printing.lesson.blocks import Answers, Care, Grid, Picture, Questions, Sheet, Steps, Sum, Together
from assistant.printing.lesson.drilled import MOST_QUESTIONS
from assistant.printing.lesson.experiment import message
from assistant.printing.lesson.sheets import Lesson, handout, key
from assistant.printing.lesson.table import cell, kitchens
from assistant.printing.lesson.themes import TableRow, catalogue, theme
from assistant.replies.sentences import worded
from rules.errors import UnknownWord
from rules.physics import air

LODGE_M, BAKERY_M = 2133.6, 1615.4
THEMES = tuple(catalogue())


def lesson(
    name: str, *elevations_m: float, units: str = "us", seed: int = 5, count: int = 10, taught: int = 20
) -> Lesson:
    return Lesson(
        theme=name, elevations_m=elevations_m or (LODGE_M,), class_size=taught, count=count, seed=seed, units=units
    )  # fmt: skip


def sums(sheet: Sheet) -> list[str]:
    return [block.text for block in sheet.blocks if isinstance(block, Sum)]


def of_kind(sheet: Sheet, kind: type) -> list:
    flat = [inner for b in sheet.blocks for inner in (b.blocks if isinstance(b, Together) else (b,))]
    return [block for block in flat if isinstance(block, kind)]


def figure(text: str) -> float:
    return float(text.replace(",", ""))


def test_there_is_a_lesson_for_each_room_of_the_kitchen() -> None:
    wanted = {"boiling", "braising", "baking", "sugar", "pressure", "frying", "eggs-and-poaching", "beans-and-grains"}
    assert wanted | {"drying-and-air"} <= set(THEMES)
    with pytest.raises(UnknownWord, match="baking"):
        theme("bakin")


@pytest.mark.parametrize("elevation_m", [-400.0, 0.0, 1219.2, LODGE_M, 3500.0, 5200.0])
def test_the_boil_is_worked_out_as_the_reference_libraries_have_it(elevation_m: float) -> None:
    """Pressure by the ambiance library, U.S. Standard Atmosphere 1976 in geometric height; the boil by CoolProp."""
    line = next(text for text in sums(handout(lesson("boiling", elevation_m))) if "T_sat(p)" in text)
    pa, boil_c = re.search(r"= ([\d,]+) Pa; T_sat\(p\) = ([\d.]+) °C", line).groups()
    geometric_m = 6_356_766 * elevation_m / (6_356_766 - elevation_m)
    assert figure(pa) == pytest.approx(float(ambiance.Atmosphere(geometric_m).pressure[0]), rel=2e-4)
    assert figure(boil_c) == pytest.approx(PropsSI("T", "P", figure(pa), "Q", 0, "Water") - 273.15, abs=0.02)


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("elevation_m", [LODGE_M, 3000.0])
def test_every_sum_comes_out(elevation_m: float, units: str) -> None:
    """The sums of the lessons' own, done again with the figures that are printed."""
    seen = set()
    for name in THEMES:
        for text in sums(handout(lesson(name, elevation_m, units=units))):
            if found := re.search(r"([\d.]+) min × ([\d.]+) = ([\d.,]+) min", text):
                left, by, right = map(figure, found.groups())
                assert left * by == pytest.approx(right, abs=0.51 if right > 60 else 0.051), text
                hours, minutes = re.search(r"kitchen (?:(\d+) h ?)?(?:([\d½]+) min)?", text).groups()
                told = int(hours or 0) * 60 + float((minutes or "0").replace("½", ".5"))
                assert told == pytest.approx(right, rel=0.06), text
                seen.add("times")
            if found := re.search(r": (-?[\d.]+) ([−+]) ([\d.]+) = (-?[\d.]+) °C$", text):
                sea, sign, change, here = found.groups()
                assert float(sea) + (float(change) if sign == "+" else -float(change)) == pytest.approx(float(here))
                seen.add("fall")
            if found := re.search(r"([\d.]+) (g|min) × \(1 ([−+]) ([\d.]+)/100\) = ([\d.]+) ", text):
                amount, _, sign, percent, used = found.groups()
                share = float(percent) / 100 * (1 if sign == "+" else -1)
                assert float(amount) * (1 + share) == pytest.approx(float(used), rel=0.01), text
                seen.add("share")
    assert seen == {"times", "fall", "share"}


def test_the_factor_is_the_power_that_is_printed() -> None:
    lines = [text for name in THEMES for text in sums(handout(lesson(name, LODGE_M)))]
    found = [
        m
        for text in lines
        for m in re.finditer(r"10\^\(\(([\d.]+) − ([\d.]+)\)/z\) with z = (\d+) K.*?×(\d+(?:\.\d+)?)", text)
    ]
    assert len(found) >= 6
    for sea, here, z, factor in (m.groups() for m in found):
        assert 10 ** ((float(sea) - float(here)) / float(z)) == pytest.approx(float(factor), rel=0.03)


def test_the_table_has_the_published_boil_of_each_kitchen() -> None:
    """Extension tables print 212, 203, 199 and 194 °F for sea level, 5,000, 7,000 and 10,000 ft (from memory)."""
    (grid,) = of_kind(handout(lesson("boiling", *(feet * 0.3048 for feet in (7000, 10_000, 5000)))), Grid)
    boils = next(row for row in grid.rows if row[0] == "A rolling boil")
    assert [int(text.split()[0]) for text in boils[1:]] == [pytest.approx(f, abs=1) for f in (212, 203, 199, 194)]
    assert grid.head[1] == "Sea level"


@pytest.mark.parametrize("name", THEMES)
def test_the_table_has_a_column_a_kitchen_and_both_systems(name: str) -> None:
    (grid,) = of_kind(handout(lesson(name, LODGE_M, BAKERY_M, 3000.0)), Grid)
    assert grid.head[1:] == ("Sea level", "5,300 ft (1,620 m)", "7,000 ft (2,130 m)", "9,840 ft (3,000 m)")
    assert all(len(row) == len(grid.head) for row in grid.rows)
    for row in grid.rows:
        for text in row[1:]:
            if "°F" in text:
                assert "°C" in text
            if "psi" in text:
                assert "kPa" in text
            if "inHg" in text:
                assert "hPa" in text


def test_sea_level_alone_is_set_beside_an_example() -> None:
    assert kitchens((0.0,)) == (0.0, 1524.0)
    assert air_column(0.0, "us").elevation_m == 1524.0


def test_what_no_rule_gives_is_left_open() -> None:
    row = TableRow("gauge-10", {"topic": "boiling_point"}, "no_such_figure", "gauge")
    assert cell(row, LODGE_M, "us") == "–"


@pytest.mark.parametrize("name", THEMES)
def test_the_why_is_what_ask_gives_in_three_depths(name: str) -> None:
    from assistant.answering import reply_to_request
    from rules.model import Request

    told = str(handout(lesson(name)))
    for subject in theme(name).why:
        request = Request(topic="why", subject=subject, elevation_m=LODGE_M, elevation_from="stated")
        assert repr(str(reply_to_request(request).because[0].text))[1:-1] in told
        assert repr(reply_to_request(request).headline)[1:-1] in told
    assert sums(handout(lesson(name)))


@pytest.mark.parametrize("name", THEMES)
def test_there_are_two_examples_and_an_experiment_that_warns_before_it_begins(name: str) -> None:
    sheet = handout(lesson(name))
    assert "Example 2" in str(sheet)
    (trial,) = (block.blocks for block in sheet.blocks if isinstance(block, Together))
    kinds = [type(block) for block in trial]
    assert kinds.index(Care) < kinds.index(Steps)
    assert len(of_kind(sheet, Steps)[0].items) >= 3


@pytest.mark.parametrize("name", THEMES)
def test_no_answer_stands_on_the_sheet(name: str) -> None:
    asked, solved = handout(lesson(name, count=MOST_QUESTIONS)), key(lesson(name, count=MOST_QUESTIONS))
    (questions,), (answers,) = of_kind(asked, Questions), of_kind(solved, Answers)
    assert len(questions.items) == len(answers.items) == MOST_QUESTIONS
    assert len({q.text for q in questions.items}) == MOST_QUESTIONS
    assert not of_kind(asked, Answers)
    assert not any(repr(answer.why)[1:-1] in str(asked) for answer in answers.items)
    assert all(answer.shown and "Source" in answer.why for answer in answers.items)


def test_the_experiment_of_each_theme_is_told_to_its_end_in_the_key() -> None:
    for name in THEMES:
        for elevation_m in (-400.0, 0.0, LODGE_M):
            finding = str(key(lesson(name, elevation_m)).blocks[-1])
            assert len(finding) > 100, name
    assert message(theme("boiling").experiment, "") == "experiment-boil"


def test_groups_of_three_share_the_things() -> None:
    assert "7 new 60 ml syringes" in str(handout(lesson("baking", taught=20)))
    assert "'1 new 60 ml syringe of plastic, without a needle" in str(handout(lesson("baking", taught=1)))
    assert "in 67 groups" in str(handout(lesson("baking", taught=200)))


def test_grave_cautions_of_an_example_are_said() -> None:
    """Beans that carry a poison, fat that burns, poultry that has to be done."""
    said = str(of_kind(handout(lesson("beans-and-grains")), Care))
    assert "natural poison" in said
    assert "165 °F" in str(of_kind(handout(lesson("frying")), Care))
    assert "never water" in str(of_kind(handout(lesson("frying")), Care))


def test_a_seed_is_a_set() -> None:
    assert handout(lesson("sugar", seed=9)) == handout(lesson("sugar", seed=9))
    assert of_kind(handout(lesson("sugar", seed=9)), Questions) != of_kind(handout(lesson("sugar", seed=10)), Questions)


def test_the_air_weighs_what_a_barometer_says() -> None:
    """One standard atmosphere is 14.696 lbf/in² and 1.0332 kgf/cm², by definition."""
    assert worded(weight(101_325, "us"), "us") == "14.7 lb on each square inch (1.03 kg on each cm²)"
    assert worded(weight(101_325, "metric"), "metric").startswith("1.03 kg on each cm²")


@pytest.mark.parametrize("height_m", [500.0, 5000.0, 9000.0, 11_000.0, 13_000.0, 19_000.0])
def test_heights_far_up_are_those_of_the_standard(height_m: float) -> None:
    """By the ambiance library, in geometric height."""
    geometric_m = 6_356_766 * height_m / (6_356_766 - height_m)
    pressure_pa = float(ambiance.Atmosphere(geometric_m).pressure[0])
    assert air.height_of_m(pressure_pa) == pytest.approx(height_m, abs=2)


def test_each_dot_is_as_heavy_as_the_next() -> None:
    """The standard prints 1,013.25 hPa at the sea, 898.7 at 1 km, 795.0 at 2 km, 540.2 at 5 km and 265.0 at 10 km.

    Those heights are geometric, and differ from these by some 16 m up there.
    """
    heights = [high for _, high in dots_m()]
    per_hpa = DOTS / (air.pressure_pa(-430.0) / 100)
    for low, high, hpa in ((0, 1000, 1013.25 - 898.7), (1000, 2000, 898.7 - 795.0), (5000, 10_000, 540.2 - 265.0)):
        assert sum(low < h <= high for h in heights) == pytest.approx(hpa * per_hpa, abs=1.6)


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("elevation_m", [-430.0, 300.0, LODGE_M, 4300.0, 5500.0])
def test_nothing_of_the_drawing_is_cut_or_covered(elevation_m: float, units: str) -> None:
    figure_drawn = drawn(AirColumn(elevation_m, units))
    figure_drawn.draw_without_rendering()
    boxes = [(t.get_text(), t.get_window_extent()) for t in figure_drawn.findobj(Written) if t.get_text()]
    assert any("boils" in text for text, _ in boxes)
    for n, (text, box) in enumerate(boxes):
        assert box.x0 >= 0 <= box.y0, text
        assert box.x1 <= figure_drawn.bbox.width, text
        assert box.y1 <= figure_drawn.bbox.height, text
        assert not any(box.overlaps(other) for _, other in boxes[n + 1 :]), text


def test_the_drawing_needs_no_colour_and_is_the_same_each_time(tmp_path: Path) -> None:
    from io import BytesIO

    from PIL import Image

    made = as_png(air_column(LODGE_M, "us"))
    pixels = Image.open(BytesIO(made)).convert("RGB").resize((360, 164)).tobytes()
    assert all(max(pixels[i : i + 3]) - min(pixels[i : i + 3]) < 12 for i in range(0, len(pixels), 3))
    assert made == as_png(air_column(LODGE_M, "us"))
    assert as_svg(air_column(LODGE_M, "us")) == as_svg(air_column(LODGE_M, "us"))


def test_the_drawing_is_told_in_words() -> None:
    (picture,) = of_kind(handout(lesson("boiling")), Picture)
    assert "212 °F (100 °C)" in picture.shows
    assert "199 °F (93 °C)" in picture.shows
    assert "14.7 lb" in picture.caption
