"""An order: worked examples, what holds of every order, and the forms it is written in."""

from __future__ import annotations

import csv
import io
import json
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from openpyxl import load_workbook

from assistant.answering import reply_to_request
from assistant.planning import order_forms
from assistant.planning.items import item_of
from assistant.planning.menu import Menu, MenuLine, of_folder, read_menu
from assistant.planning.on_hand import read_on_hand
from assistant.planning.order_forms.text import WIDTH, as_text
from assistant.planning.order_sheet import Line, Sheet, order_sheet, takers
from assistant.recipes.converting import convert_recipe
from rules.amounts.stores import LITTLE_OVER, STORES, kept, packed
from rules.foods.dishes import dishes
from rules.physics.units import G_PER_LB
from rules.topics.order.taken import of_dish

HIGH_M = 2133.6
DEMO = Path(__file__).parent / "menus" / "timberfold.txt"
ROLLS = """Pan rolls
Makes 12 rolls

500 g bread flour
1 cup whole milk
2 tsp instant yeast
2 tsp salt
1 cup chopped onion
3 sprigs thyme

Bake at 400 F for 20 minutes.
"""
# no scale of a store shows less [g]
SPECK_G = 0.1
# dishes of every kind of unit and of every way of being reckoned
NAMES = (
    "short ribs", "trout", "polenta", "mashed potatoes", "cornbread", "tomato soup", "coffee", "risotto", "turkey",
    "eggs", "hamburgers", "green salad", "chili", "pulled pork", "pancakes",
)  # fmt: skip


def ordered(text: str, elevation_m: float = HIGH_M, **more: object) -> Sheet:
    return order_sheet(read_menu(text.encode()), elevation_m=elevation_m, **more)  # type: ignore[arg-type]


def line_of(sheet: Sheet, item: str) -> Line:
    return next(line for line in sheet.lines if line.item == item)


# Worked examples


def test_the_weight_is_that_of_the_answer_to_a_question() -> None:
    """The sheet and `ask` reckon by the same rules."""
    sheet = ordered("lamb shanks, 85", margin=0.0)
    answer = reply_to_request(of_dish("lamb shanks", portions=85, elevation_m=HIGH_M))
    figure = answer.figure("buy")
    assert figure is not None
    assert line_of(sheet, "lamb shanks").need_g == pytest.approx(figure.value * 1000)


def test_take_rates_margin_and_packs_of_pork_for_pulling() -> None:
    """40 % of 60 is 24; 170 g of each cooked is 0.52 of the bone-in shoulder: 7.85 kg, with 10 % 8.63 kg, 2 x 10 lb."""
    sheet = ordered("Covers: 60\npulled pork 40%", margin=0.10)
    line = line_of(sheet, "pork shoulder")
    assert line.need_g == pytest.approx(24 * 170 / 0.52)
    assert line.order_g == pytest.approx(24 * 170 / 0.52 * 1.1)
    assert (line.packs and line.packs.splits, line.packs and line.packs.full) == (2, 0)
    assert line.bought == "bone-in pork shoulder"


def test_a_batter_is_bought_as_what_is_in_it_by_the_formula_of_the_place() -> None:
    high, low = (ordered("muffins, 100", elevation_m=m, margin=0.0) for m in (HIGH_M, 0.0))
    powder, flour = (
        tuple(line_of(s, item).need_g for s in (high, low)) for item in ("baking powder", "all-purpose flour")
    )
    assert powder[1] == pytest.approx(100 * 85 * 0.015)
    assert 0.6 < powder[0] / powder[1] < 0.9
    assert flour[0] >= flour[1] == pytest.approx(100 * 85 * 0.33)
    assert line_of(high, "baking powder").parts[0].change < 0
    assert line_of(low, "baking powder").parts[0].change == 0


def test_the_same_thing_of_several_dishes_is_one_line() -> None:
    sheet = ordered("mashed potatoes, side, 50\nbeef stew, 20\ncornbread, 50")
    assert [part.dish for part in line_of(sheet, "potatoes").parts] == ["mashed potatoes", "beef stew"]
    assert {part.dish for part in line_of(sheet, "butter").parts} == {"mashed potatoes", "cornbread"}
    assert len({line.item for line in sheet.lines}) == len(sheet.lines)


def test_beside_a_main_a_grain_is_a_side() -> None:
    alone, beside = (ordered(text, margin=0.0) for text in ("white rice, main, 40", "meatloaf, 40\nwhite rice, 40"))
    assert line_of(beside, "white rice").need_g < line_of(alone, "white rice").need_g


def test_a_finished_dish_without_a_formula_is_told_to_be_made() -> None:
    sheet = ordered("clam chowder, 30")
    assert sheet.lines == ()
    assert [one.name for one in sheet.served if one.made] == ["clam chowder"]
    assert "Only a recipe tells" in as_text(sheet)


def test_what_makes_a_loaf_what_it_is_comes_on_top() -> None:
    """Zucchini bread has the formula of a quick bread, and no zucchini in it."""
    assert "zucchini bread: reckoned by the usual formula" in as_text(ordered("zucchini bread, 30"))
    assert "usual formula of its kind" not in as_text(ordered("cornbread, 30"))


def test_what_some_of_the_guests_choose_is_a_main() -> None:
    """A risotto that a quarter take stands beside the steak and not under it."""
    chosen, beside = (ordered(f"Covers: 100\nsteak 75%\nrisotto{who}").served[1] for who in (" 25%", ""))
    assert (chosen.way, beside.way) == ("main", "side")


def test_longer_cooking_takes_fuel_and_water() -> None:
    high, low = (ordered("oxtail, 60\ngrits, 60", elevation_m=m) for m in (HIGH_M, 0.0))
    assert high.energy_kj > 0 == low.energy_kj
    assert high.gas_kg == pytest.approx(high.energy_kj / 46 / 0.45 / 1000)
    oxtail, grits = high.served
    assert oxtail.here_min is not None
    assert oxtail.there_min is not None
    assert oxtail.here_min > 1.2 * oxtail.there_min
    assert grits.extra_ml > 0 == low.served[1].extra_ml


def test_the_demo_menu_of_the_lodge() -> None:
    """Ninety covers at 7,000 ft: ribs for 36, trout for 32 (35 % of 90, rounded up)."""
    sheet = order_sheet(read_menu(DEMO.read_bytes()), elevation_m=HIGH_M)
    assert sheet.faults == ()
    assert [one.covers for one in sheet.served] == [36, 32, 36, 90, 90, 90, 45, 45, 63]
    assert line_of(sheet, "short ribs").need_g == pytest.approx(36 * 450)
    assert {store for store, _ in sheet.stores} == {"meat", "fish", "cold", "produce", "dry"}
    assert line_of(sheet, "whole milk").parts[0].change == pytest.approx(0.11, abs=0.02)


# Recipes of the cook's own


def test_a_folder_of_recipes_is_scaled_and_converted(tmp_path: Path) -> None:
    (tmp_path / "rolls.txt").write_text(ROLLS)
    (tmp_path / "empty.txt").write_text("")
    menu = of_folder(sorted(tmp_path.iterdir()), "bakery")
    sheet = order_sheet(menu, elevation_m=HIGH_M, covers=48, margin=0.0)
    converted = convert_recipe(ROLLS, to_elevation_m=HIGH_M, servings=48)
    for item, words in (("bread flour", "bread flour"), ("instant yeast", "instant yeast")):
        own = next(line.mass_g for line in converted.plain.ingredients if line.item == words)
        assert line_of(sheet, item).need_g == pytest.approx(own)
    assert [(one.item, one.amount, one.unit) for one in sheet.loose] == [("thyme", 12, "sprig")]
    assert len(sheet.faults) == 1


def test_a_scaled_recipe_is_held_against_itself_at_the_sea(tmp_path: Path) -> None:
    """What is told as the change is the elevation's, however many the recipe is made for."""
    (tmp_path / "rolls.txt").write_text(ROLLS)
    few, many = (order_sheet(of_folder([tmp_path / "rolls.txt"]), elevation_m=HIGH_M, covers=n) for n in (120, 1200))
    for item in ("bread flour", "instant yeast", "whole milk"):
        changes = [line_of(sheet, item).parts[0].change for sheet in (few, many)]
        assert changes[0] == pytest.approx(changes[1], abs=0.02)
        assert abs(changes[0]) < 0.4
    assert line_of(few, "instant yeast").parts[0].change < -0.1


def test_counted_food_is_weighed_by_its_usual_piece(tmp_path: Path) -> None:
    """Three onions of 200 g."""
    (tmp_path / "soup.txt").write_text("Soup\nServes 4\n\n3 onions\n1 kg potatoes\n\nSimmer 30 minutes.\n")
    sheet = order_sheet(of_folder([tmp_path / "soup.txt"]), elevation_m=0.0, covers=4, margin=0.0)
    assert line_of(sheet, "onions").need_g == pytest.approx(600)
    assert sheet.loose == ()


@pytest.mark.source("usda-ah-102")
def test_what_is_measured_chopped_is_bought_with_its_peel(tmp_path: Path) -> None:
    """A cup of chopped onion is 0.90 of the onion that was peeled for it."""
    (tmp_path / "rolls.txt").write_text(ROLLS)
    sheet = order_sheet(of_folder([tmp_path / "rolls.txt"]), elevation_m=0.0, covers=12, margin=0.0)
    chopped = next(i.mass_g for i in convert_recipe(ROLLS, to_elevation_m=0.0).plain.ingredients if "onion" in i.item)
    assert chopped is not None
    assert line_of(sheet, "onions").need_g == pytest.approx(chopped / 0.90)


def test_a_recipe_and_a_dish_share_a_line(tmp_path: Path) -> None:
    (tmp_path / "rolls.txt").write_text(ROLLS)
    menu = read_menu(b"rolls.txt, 24\ncreme brulee, 10\nmashed potatoes, 24", tmp_path)
    milk = line_of(order_sheet(menu, elevation_m=HIGH_M), "whole milk")
    assert {part.dish for part in milk.parts} == {"Pan rolls", "mashed potatoes"}


# What holds of every order


@st.composite
def menus(draw: st.DrawFn) -> Menu:
    names = draw(st.lists(st.sampled_from(NAMES), min_size=1, max_size=5, unique=True))
    covers = st.integers(1, 400)
    return Menu(lines=tuple(MenuLine(line=1, text=name, dish=name, covers=draw(covers)) for name in names))


def doubled(menu: Menu) -> Menu:
    return replace(menu, lines=tuple(replace(line, covers=2 * (line.covers or 1)) for line in menu.lines))


@settings(max_examples=40, deadline=None)
@given(menu=menus(), elevation_m=st.sampled_from((0.0, 1500.0, HIGH_M, 3500.0)))
def test_twice_the_covers_never_need_less(menu: Menu, elevation_m: float) -> None:
    once, twice = (order_sheet(m, elevation_m=elevation_m) for m in (menu, doubled(menu)))
    for line in once.lines:
        more = line_of(twice, line.item)
        # what boils off grows with the pot, and not with what is in it
        assert line.need_g <= more.need_g <= 2 * line.need_g * (1 + 1e-9)
        if line.packs and more.packs:
            assert more.packs.grams >= line.packs.grams


@settings(max_examples=40, deadline=None)
@given(menu=menus(), margin=st.floats(0, 0.5), elevation_m=st.sampled_from((0.0, HIGH_M)))
def test_the_order_covers_what_the_dishes_take(menu: Menu, margin: float, elevation_m: float) -> None:
    for line in order_sheet(menu, elevation_m=elevation_m, margin=margin).lines:
        assert line.need_g == pytest.approx(sum(part.grams for part in line.parts))
        assert line.order_g + line.on_hand_g >= line.need_g * (1 + margin) * (1 - 1e-9)
        if line.packs:
            assert line.packs.grams >= line.order_g - SPECK_G


@settings(max_examples=40, deadline=None)
@given(menu=menus(), some=st.floats(0, 50_000), more=st.floats(0, 50_000))
def test_more_on_hand_never_raises_the_order(menu: Menu, some: float, more: float) -> None:
    items = [line.item for line in order_sheet(menu, elevation_m=HIGH_M).lines]
    less, least = (
        order_sheet(menu, elevation_m=HIGH_M, on_hand=dict.fromkeys(items, grams)) for grams in (some, some + more)
    )
    for line in less.lines:
        other = line_of(least, line.item)
        assert 0 <= other.order_g <= line.order_g
        if line.packs and other.packs:
            assert other.packs.grams <= line.packs.grams


@settings(max_examples=200, deadline=None)
@given(
    grams=st.floats(0, 500_000), item=st.sampled_from(("bread flour", "canned tomatoes", "white rice", "egg", "wine"))
)
def test_packs_hold_the_amount_and_not_much_more(grams: float, item: str) -> None:
    of = kept(item)
    found = packed(grams, of)
    assert found is not None
    assert of.grams is not None
    assert found.grams >= grams * (1 - 1e-5) - SPECK_G
    assert found.grams - grams <= max(of.split_g or of.grams, LITTLE_OVER * grams) + SPECK_G


# What is on hand; units


@pytest.mark.parametrize(
    ("text", "item", "grams"),
    [
        ("20 lb flour", "all-purpose flour", 20 * G_PER_LB),
        ("flour, 20 lb", "all-purpose flour", 20 * G_PER_LB),
        ("flour,20,lb", "all-purpose flour", 20 * G_PER_LB),
        ("2 kg AP flour", "all-purpose flour", 2000),
        ("1 gal milk", "whole milk", 16 * 244),
        ("4 quarts whole milk", "whole milk", 16 * 244),
        ("3.785 l milk", "whole milk", 16 * 244),
        ("2 #10 cans of tomatoes", "canned tomatoes", 2 * 2892),
        ("1 case spaghetti", "spaghetti", 9072),
    ],
)
def test_units_are_reconciled(text: str, item: str, grams: float) -> None:
    found = read_on_hand(text.encode())
    assert found.faults == ()
    assert found.grams == {item: pytest.approx(grams, rel=0.01)}


def test_amounts_of_one_thing_are_added_up() -> None:
    assert read_on_hand(b"1 lb butter\n2 sticks butter\n").grams == {"butter": pytest.approx(453.6 + 226, rel=0.01)}


@pytest.mark.parametrize("line", ["-5 lb flour", "some flour", "???", "12"])
def test_what_is_no_amount_is_told_and_not_deducted(line: str) -> None:
    found = read_on_hand(f"{line}\n1 kg sugar".encode())
    assert list(found.grams) == ["granulated sugar"]
    assert len(found.faults) == 1


@pytest.mark.parametrize(
    ("words", "item"),
    [
        ("unpeeled potatoes", "potatoes"), ("dry white rice", "white rice"), ("all purpose flour", "all-purpose flour"),
        ("minced garlic", "garlic"),
        ("tart apples", "apples"),
        ("2 large carrots".removeprefix("2 "), "carrots"),
        ("veal bones", "veal bones"),
        ("hot coffee", "hot coffee"), ("bone-in pork shoulder", "pork shoulder"), ("chicken broth", "chicken broth"),
    ],
)  # fmt: skip
def test_one_thing_has_one_name(words: str, item: str) -> None:
    assert item_of(words) == item


# Faults and forms


def test_without_covers_a_line_is_left_out_and_the_rest_is_done() -> None:
    sheet = ordered("meatloaf\ncarrots, side, 30")
    assert [line.item for line in sheet.lines] == ["carrots"]
    assert len(sheet.faults) == 1


@pytest.mark.parametrize(("share", "covers"), [(0.35, 32), (0.4, 36), (1 / 3, 30), (0.001, 1)])
def test_a_share_of_guests_is_rounded_up(share: float, covers: int) -> None:
    assert takers(MenuLine(line=1, text="", share=share), 90) == covers


@pytest.fixture(scope="module")
def demo() -> Sheet:
    return order_sheet(read_menu(DEMO.read_bytes()), elevation_m=HIGH_M, on_hand={"butter": 9000.0})


def test_there_is_a_form_for_each_name() -> None:
    assert order_forms.names() == ("csv", "json", "print", "terminal", "text", "xlsx")


@pytest.mark.parametrize("units", ["us", "metric"])
def test_text_is_no_wider_than_a_page_and_in_one_system(demo: Sheet, units: str) -> None:
    text = as_text(demo, units)  # type: ignore[arg-type]
    assert max(map(len, text.splitlines())) <= WIDTH
    assert (" kg" in text, " lb" in text) == (units == "metric", units == "us")
    assert "cornbread (25 % less)" in text
    assert "none, enough" in text


def test_csv_is_read_back(demo: Sheet) -> None:
    rows = list(csv.DictReader(io.StringIO(order_forms.form("csv").write(demo, "us").decode())))
    assert len(rows) == len(demo.lines)
    ribs = next(row for row in rows if "short ribs" in row["item"])
    assert float(ribs["need_lb"]) == pytest.approx(36 * 450 / G_PER_LB, abs=0.01)


def test_the_workbook_is_read_back_by_its_library(demo: Sheet) -> None:
    book = load_workbook(io.BytesIO(order_forms.form("xlsx").write(demo, "metric")))
    page = book["Order"]
    heads = [cell.value for cell in page[1]]
    rows = [dict(zip(heads, row, strict=True)) for row in page.iter_rows(min_row=2, values_only=True)]
    assert len(rows) == len(demo.lines)
    assert rows[0]["need_kg"] == pytest.approx(16.2)
    assert sum(row["order_kg"] for row in rows) == pytest.approx(
        sum(line.order_g for line in demo.lines) / 1000, abs=0.05
    )
    assert page.freeze_panes == "C2"
    told = [row[0] for row in book["Notes"].iter_rows(values_only=True)]
    assert any(line and "short ribs: 4 h" in line for line in told)


def test_a_workbook_works_nothing_out_and_holds_any_sign() -> None:
    sheet = replace(ordered("meatloaf, 20"), title="=HYPERLINK(1)\x07")
    book = load_workbook(io.BytesIO(order_forms.form("xlsx").write(sheet, "us")))
    assert all(cell.data_type != "f" for row in book["Notes"] for cell in row)


def test_json_is_whole(demo: Sheet) -> None:
    told = json.loads(order_forms.form("json").write(demo, "us"))
    assert {line["store"] for line in told["lines"]} <= set(STORES)
    butter = next(line for line in told["lines"] if line["item"] == "butter")
    assert butter["order_g"] == 0
    assert told["fuel"]["basis"] == ["common-practice", "computed"]
    assert told["dishes"][0]["time_min"] > told["dishes"][0]["sea_level_min"]


def test_the_page_is_escaped(demo: Sheet) -> None:
    page = order_forms.form("print").write(replace(demo, title="<script>x"), "us").decode()
    assert "<script>" not in page
    assert page.count('class="box"') == len(demo.lines)


def test_five_hundred_dishes_are_reckoned_dish_by_dish(monkeypatch: pytest.MonkeyPatch) -> None:
    """The time of a dish is worked out once, however often it stands on the menu."""
    from assistant.planning import order_sheet as module

    asked: list[str] = []
    answer = module.engine.answer
    monkeypatch.setattr(module.engine, "answer", lambda request: (asked.append(request.dish), answer(request))[1])
    module.time_of.cache_clear()
    names = [name for name in dishes() if name in NAMES]
    text = "\n".join(f"{names[at % len(names)]}, {at % 90 + 1}" for at in range(500))
    sheet = ordered(text)
    assert len(sheet.served) == 500
    # salad is not cooked
    assert len(asked) == len(set(asked)) == len(names) - 1


def test_a_vegetable_lasagna_takes_no_meat() -> None:
    plain, green = (
        order_sheet(read_menu(f"Covers: 30\n{name}".encode()), elevation_m=0.0)
        for name in ("lasagna", "vegetable lasagna")
    )
    assert "ground beef" in {line.item for line in plain.lines}
    assert "ground beef" not in {line.item for line in green.lines}
    assert sum(line.need_g for line in green.lines) == pytest.approx(sum(line.need_g for line in plain.lines))
    assert any(note.id == "without-meat" for note in green.notes)
