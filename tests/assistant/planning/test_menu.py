"""Menus as kitchens write them."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.planning.menu import MOST_BYTES, MOST_LINES, Menu, MenuLine, read_menu
from assistant.replies.sentences import worded

DEMO = Path(__file__).parent / "menus" / "timberfold.txt"


def read(text: str, folder: Path | None = None) -> Menu:
    return read_menu(text.encode(), folder)


def one(text: str) -> MenuLine:
    menu = read(text)
    assert menu.faults == ()
    (line,) = menu.lines
    return line


def faults(menu: Menu) -> list[str]:
    return [worded(fault, "us") for fault in menu.faults]


def test_the_demo_menu() -> None:
    menu = read_menu(DEMO.read_bytes())
    assert (menu.title, menu.covers, menu.service) == ("Timberfold Lodge, harvest dinner", 90, "Saturday 6:30 pm")
    assert [line.dish for line in menu.lines] == [
        "short ribs", "trout", "polenta", "mashed potatoes", "green beans", "cornbread", "tomato soup", "creme brulee",
        "coffee",
    ]  # fmt: skip
    assert (menu.faults, menu.notes) == ((), ())


@pytest.mark.parametrize(
    ("text", "covers", "share"),
    [
        ("lamb shanks 30%", None, 0.3),
        ("lamb shanks, 12.5 percent", None, 0.125),
        ("lamb shanks, everyone", None, 1.0),
        ("lamb shanks, a third", None, 1 / 3),
        ("lamb shanks 28", 28, None),
        ("28 lamb shanks", 28, None),
        ("28 x lamb shanks", 28, None),
        ("lamb shanks x 28", 28, None),
        ("- lamb shanks, 28 covers", 28, None),
        ("lamb shanks", None, None),
    ],
)
def test_who_takes_a_dish(text: str, covers: int | None, share: float | None) -> None:
    line = one(text)
    assert line.dish == "lamb shanks"
    assert (line.covers, line.share) == (covers, pytest.approx(share) if share else None)


def test_a_portion_is_on_the_plate_unless_it_is_raw() -> None:
    assert one("salmon, 20, 6 oz").portion_g == pytest.approx(170.1, rel=1e-3)
    assert one("white rice, 20, 50 g dry").portion_g == pytest.approx(50 * 365 / 130, rel=0.01)


def test_how_it_is_served() -> None:
    assert [one(f"wild rice, {way}, 30").course for way in ("side", "main", "starter", "buffet")] == [
        "side", "main", "starter", "buffet",
    ]  # fmt: skip


def test_a_table_of_columns() -> None:
    menu = read('Dish,Served as,Take rate,Count\n"Carrots",side,60,\nmeatloaf,main,,44\n\n')
    assert [(line.dish, line.course, line.share, line.covers) for line in menu.lines] == [
        ("carrots", "side", 0.6, None),
        ("meatloaf", "main", None, 44),
    ]


@pytest.mark.parametrize(
    ("row", "told"),
    [
        ("zzyzx flambee, 20", "I know no dish"),
        ("meatloaf, -40", "feeds nobody"),
        ("meatloaf 0", "feeds nobody"),
        ("meatloaf -20%", "no take-rate"),
        ("meatloaf 140%", "no take-rate"),
        ("gone.txt, 20", "no recipe gone.txt"),
        ("x" * 400, "too long"),
    ],
)
def test_a_bad_line_is_one_fault_and_the_rest_stands(row: str, told: str) -> None:
    menu = read(f"Covers: 50\n{row}\ncarrots, side, all\n")
    assert [line.dish for line in menu.lines] == ["carrots"]
    (fault,) = faults(menu)
    assert told in fault
    assert fault.startswith("Line 2")


def test_of_two_times_of_service_the_first_stands() -> None:
    menu = read("Service: 6 pm\nService: 7:30 pm\nmeatloaf, 20")
    assert menu.service == "6 pm"
    assert faults(menu) == ["Line 2: the time of service was told before; 6 pm stands and 7:30 pm was left out."]
    assert len(menu.lines) == 1


def test_a_name_nearly_spelled_is_taken_and_told() -> None:
    menu = read("meatlofa, 20")
    assert [line.dish for line in menu.lines] == ["meatloaf"]
    assert "was read as meatloaf" in worded(menu.notes[0], "us")


def test_two_dishes_of_one_line_are_both_ordered() -> None:
    menu = read("pork chops with mashed potatoes, 30")
    assert [(line.dish, line.covers) for line in menu.lines] == [("pork chops", 30), ("mashed potatoes", 30)]


@pytest.mark.parametrize(
    ("row", "dish"),
    [
        ("garlic mashed potatoes, 30", "mashed potatoes"),
        ("Braised lamb shanks, 30", "lamb shanks"),
        ("pan-seared salmon 30", "salmon"),
    ],
)
def test_of_words_side_by_side_the_last_is_the_dish(row: str, dish: str) -> None:
    assert [line.dish for line in read(row).lines] == [dish]


def test_ten_megabytes_are_refused_in_a_line() -> None:
    menu = read_menu(b"meatloaf, 20\n" * (10 * 1024 * 1024 // 13))
    assert len(faults(menu)) == 1
    assert len(b"meatloaf") < MOST_BYTES
    assert menu.lines == ()


def test_a_menu_of_too_many_lines_is_read_as_far_as_it_goes() -> None:
    menu = read("meatloaf, 2\n" * (MOST_LINES + 5))
    assert len(menu.lines) == MOST_LINES
    assert "5 more were left out" in faults(menu)[0]


def test_what_is_not_utf_8_is_read_all_the_same() -> None:
    menu = read_menu("crème brûlée, 20\nmeatloaf, 10".encode("cp1252"))
    assert [line.dish for line in menu.lines] == ["creme brulee", "meatloaf"]
    assert "UTF-8" in worded(menu.notes[0], "us")
    assert read_menu("meatloaf, 10".encode("utf-16")).lines[0].covers == 10


def test_a_picture_is_no_menu() -> None:
    assert len(faults(read_menu(b"\x89PNG\x00\x00\x00"))) == 1


def test_a_recipe_lies_beside_the_menu_and_nowhere_else(tmp_path: Path) -> None:
    inside = tmp_path / "menu"
    inside.mkdir()
    (inside / "rolls.txt").write_text("Rolls\n")
    (tmp_path / "secret.txt").write_text("Rolls\n")
    menu = read("rolls.txt, 40\n../secret.txt, 40\n", inside)
    assert [line.recipe and line.recipe.name for line in menu.lines] == ["rolls.txt"]
    assert len(menu.faults) == 1


@pytest.mark.parametrize("content", [b"", b"\n\n", b"\xff", b",,,", b'"', b'dish,count\n"x', b"%%%", b"Covers: many"])
def test_nothing_that_is_no_menu_fails(content: bytes) -> None:
    assert read_menu(content).lines == ()


@pytest.mark.parametrize(("line", "share"), [("green beans 1/2", 0.5), ("trout, 1/4", 0.25), ("polenta 2/3", 2 / 3)])
def test_a_part_of_the_guests_may_be_a_fraction(line: str, share: float) -> None:
    assert read_menu(f"Covers: 90\n{line}".encode()).lines[0].share == pytest.approx(share)


@pytest.mark.parametrize("line", ["Covers: -5", "covers -5", "Covers: - 5", "Covers: 0"])
def test_nobody_is_cooked_for_less_than_one(line: str) -> None:
    read = read_menu(f"{line}\nrice".encode())
    assert read.covers is None
    assert [fault.id for fault in read.faults] == ["no-covers"]


@pytest.mark.parametrize("first", ["Dinner", "Banquet", "Saturday", "Gala for the board"])
def test_an_occasion_is_the_title(first: str) -> None:
    read = read_menu(f"{first}\nCovers: 90\nrice\n,,,\n--".encode())
    assert (read.title, read.faults) == (first, ())
