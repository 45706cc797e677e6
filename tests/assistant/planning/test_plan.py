"""A menu worked back from service: the demo menu, what holds of every plan, and the forms it is written in."""

from __future__ import annotations

import csv
import io
import itertools
import json
import re
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from icalendar import Calendar

from assistant.planning import plan_forms
from assistant.planning.fitting import STEP_MIN
from assistant.planning.menu import Menu, MenuLine, read_menu
from assistant.planning.order_forms.text import WIDTH
from assistant.planning.plan import HANDS, OVEN, Has, Plan, plan
from assistant.planning.plan_forms.ics import as_ics
from assistant.planning.plan_forms.text import as_text
from rules.model import Request
from rules.topics.schedule.clashes import SHARED, Use, share
from rules.topics.schedule.stages import method_of, stages

HIGH_M = 2133.6
DENVER = ZoneInfo("America/Denver")
SERVICE = datetime(2027, 6, 5, 18, 30, tzinfo=DENVER)
DEMO = Path(__file__).parent / "menus" / "timberfold.txt"
NAMES = (
    "short ribs", "trout", "mashed potatoes", "white rice", "turkey", "lasagna", "cheesecake", "black beans",
    "french fries", "pizza", "green beans", "dinner rolls", "tomato soup", "steak", "brownies",
)  # fmt: skip


def planned(text: str, service: datetime = SERVICE, **more: object) -> Plan:
    return plan(read_menu(text.encode()), service, elevation_m=HIGH_M, **more)  # type: ignore[arg-type]


def times(made: Plan, dish: str) -> dict[str, str]:
    return {w.stage.id: f"{made.at(w.from_min):%H:%M}" for w in made.work if w.course.name == dish}


# Worked examples


def test_the_lodge() -> None:
    made = planned(DEMO.read_text())
    assert (made.fits, made.faults, made.how) == (True, (), "solved")
    assert {w.course.name for w in made.work} == {
        "short ribs", "trout", "polenta", "mashed potatoes", "green beans", "cornbread", "tomato soup", "creme brulee",
        "coffee",
    }  # fmt: skip
    # by the long end it simmers 5 h and rests 23 min: in at five past one, and browned from a quarter past twelve
    assert times(made, "short ribs") == {"heat_up": "12:35", "cook": "13:25", "rest": "18:05"}
    # one oven: what keeps goes first, the fish last
    by_oven = [w.course.name for w in made.work if w.stage.id == "cook" and dict(w.units).get(OVEN)]
    assert by_oven == ["creme brulee", "cornbread", "trout"]


def test_a_dish_goes_in_as_many_loads_as_the_shelves_make() -> None:
    """90 portions of lasagna are four full pans of 24, two on a shelf: common practice."""
    assert [(c.name, c.shelves) for c in planned("Covers: 90\nlasagna").courses] == [("lasagna", 2)]
    one = planned("Covers: 90\nlasagna", has=Has(shelves=1))
    assert [(c.name, c.shelves) for c in one.courses] == [("lasagna 1/2", 1), ("lasagna 2/2", 1)]
    assert len({w.from_min for w in one.work if w.stage.id == "cook"}) == 2
    two = planned("Covers: 90\nlasagna", has=Has(ovens=2, shelves=1))
    assert len({dict(w.units)[OVEN] for w in two.work if w.stage.id == "cook"}) == 2


def test_a_load_goes_into_an_oven_that_is_hot() -> None:
    made = planned("Covers: 90\ntrout", has=Has(shelves=2, cooks=2))
    cooked = sorted((w.from_min, w.to_min) for w in made.work if w.stage.id == "cook")
    assert len(cooked) == 4
    assert all(later[1] >= sooner[0] for sooner, later in itertools.pairwise(cooked))
    assert sum(w.stage.id == "heat_up" for w in made.work) == 1


def test_more_loads_than_a_service_takes_are_left_out_with_a_line() -> None:
    made = planned("Covers: 9000\ncookies\nrice")
    assert [c.name for c in made.courses] == ["white rice"]
    assert "loads of an oven" in as_text(made)


def test_one_dish_is_planned_as_a_question_about_it_is_answered() -> None:
    made = planned("Covers: 20\nshort ribs")
    request = Request(topic="schedule", dish="short ribs", dish_class="collagen_cut", portions=20, elevation_m=HIGH_M)
    told = sum(stage.plan_min for stage in stages(request))
    assert (made.how, 0 <= made.work[0].from_min - told < STEP_MIN) == ("counted", True)


def test_what_keeps_is_planned_by_the_long_end_and_what_does_not_by_the_middle() -> None:
    made = planned("Covers: 8\nmashed potatoes\ntrout", has=Has(ovens=2, cooks=4))
    potatoes, trout = made.courses
    assert (potatoes.later_min, potatoes.sooner_min > 0) == (0, True)
    assert trout.later_min > 0


def test_what_does_not_fit_is_named_with_what_is_short() -> None:
    made = planned("Covers: 30\npizza\ntrout\nsouffle", has=Has(cooks=3))
    assert not made.fits
    assert set(made.late.values()) == {("oven",)}
    text = as_text(made)
    assert f"It does not fit: {len(made.late)} dish" in text
    assert "Short of ovens." in " ".join(text.split())
    assert "165 °F" in text


def test_what_a_kitchen_lacks_is_left_out_and_the_rest_is_done() -> None:
    made = planned("Covers: 8\nlasagna\nrice", has=Has(ovens=0))
    assert [w.course.name for w in made.work] == ["white rice"] * 3
    assert "lasagna was left out: it needs an oven" in as_text(made)


def test_a_method_of_the_line_is_used() -> None:
    made = planned("Covers: 8\nshort ribs in the pressure cooker")
    assert ("cooker", 1) in [unit for w in made.work for unit in w.units]


def test_what_a_question_would_be_warned_of_is_warned_of_here() -> None:
    text = " ".join(as_text(planned("Covers: 8\nkidney beans\ngreen beans")).split())
    care = text.partition("Take care")[2]
    assert "Kidney beans:" in care
    assert "boil" in care


def test_a_recipe_of_ones_own_goes_by_its_converted_steps(tmp_path) -> None:
    (tmp_path / "rolls.txt").write_text(
        "Pan rolls\nMakes 12 rolls\n\n500 g bread flour\n300 g milk\n2 tsp yeast\n\n"
        "Knead, and let it rise for 1 hour.\nBake at 400 F for 20 minutes.\nCool for 30 minutes.\n"
    )
    (tmp_path / "slaw.txt").write_text("Slaw\nServes 8\n\n1 kg cabbage\n\nShred the cabbage and toss it.\n")
    made = plan(read_menu(b"Covers: 12\nrolls.txt\nslaw.txt\nnone.txt", tmp_path), SERVICE, elevation_m=HIGH_M)
    assert [(w.course.name, w.stage.id) for w in made.work] == [
        ("Pan rolls", stage) for stage in ("rise", "heat_up", "cook", "rest")
    ]
    assert ("oven", 1) in made.work[2].units
    assert "Bake" in str(made.work[2].stage.step)
    assert [fault.id for fault in made.faults] == ["no-recipe", "a-recipe"]


def test_the_day_before_has_its_own_heading() -> None:
    made = planned("Covers: 8\nblack beans", SERVICE.replace(hour=12, minute=0))
    assert re.search(r"^Friday, June 4\n.*\n.*Soak", as_text(made), re.MULTILINE)


@pytest.mark.parametrize(("day", "moved"), [(datetime(2027, 3, 14), 1), (datetime(2027, 11, 7), -1)])
def test_on_the_days_on_which_clocks_are_changed(day: datetime, moved: int) -> None:
    service = day.replace(hour=12, tzinfo=DENVER)
    usual = service - timedelta(days=14)
    beans, as_ever = (planned("Covers: 8\nblack beans", moment) for moment in (service, usual))
    assert "The clocks are changed" in as_text(beans)
    assert "The clocks are changed" not in as_text(as_ever)
    soak, soak_as_ever = (made.at(made.work[0].from_min) for made in (beans, as_ever))
    shown = soak.replace(tzinfo=None) - soak_as_ever.replace(tzinfo=None)
    assert shown - timedelta(days=14) == timedelta(hours=-moved)


def test_a_dish_that_should_be_on_already_is_told() -> None:
    late = planned("Covers: 8\nshort ribs\nrice", made_at=SERVICE - timedelta(hours=2))
    assert [(course.name, ready > SERVICE) for course, ready in late.past] == [("short ribs", True)]
    assert "Too late to begin" in as_text(late)


# What holds of every plan


menus = st.lists(st.sampled_from(NAMES), min_size=1, max_size=7)


@given(menus, st.integers(1, 2), st.integers(2, 6), st.integers(1, 3), st.integers(1, 5))
@settings(max_examples=12, deadline=None)
def test_nothing_after_service_and_nothing_over_its_limit(
    names: list[str], ovens: int, burners: int, cooks: int, shelves: int
) -> None:
    has = Has(ovens, burners, cooks, shelves)
    made = planned("Covers: 40\n" + "\n".join(names), has=has)
    assert all(work.from_min >= work.to_min >= 0 for work in made.work)
    assert all(made.at(work.to_min) <= made.service for work in made.work)
    marks = {work.from_min for work in made.work}
    for mark in marks:
        on = [work for work in made.work if work.from_min >= mark > work.to_min]
        hands = [work for work in on if work.from_min - work.hands_min < mark]
        assert len(hands) <= cooks
        by_unit: dict[tuple[str, int], list[Request]] = {}
        for work in on:
            for unit in work.units:
                by_unit.setdefault(unit, []).append(work.course.request)
        filled = [w.course.shelves for w in on if w.stage.id == "cook" and dict(w.units).get(OVEN)]
        assert sum(filled) <= has.shelves * ovens
        for (thing, number), held in by_unit.items():
            assert number <= has.count()[thing]
            uses = [Use(r.dish or "", r, method_of(r) or "", 0, 0) for r in held]
            alike = all(u.method in SHARED and share(uses[0], u) for u in uses)
            assert len(held) == 1 or alike
    for i, course in enumerate(made.courses):
        assert (i in made.late) == (made.early_min[i] // STEP_MIN > course.keeps.most_min // STEP_MIN)


@given(menus, st.integers(-20_000, 20_000))
@settings(max_examples=10, deadline=None)
def test_moving_service_moves_all_as_much(names: list[str], minutes: int) -> None:
    text = "Covers: 40\n" + "\n".join(names)
    moved = (SERVICE.astimezone(UTC) + timedelta(minutes=minutes)).astimezone(DENVER)
    # a solver may run out of time at another place, placing does not
    one, other = planned(text, solve=False), planned(text, moved, solve=False)
    begun = [
        [(w.course.name, w.stage.id, made.at(w.from_min).astimezone(UTC)) for w in made.work] for made in (one, other)
    ]
    assert [(n, s, at + timedelta(minutes=minutes)) for n, s, at in begun[0]] == begun[1]


def test_five_hundred_dishes() -> None:
    lines = tuple(MenuLine(line=n, text=NAMES[n % len(NAMES)], dish=NAMES[n % len(NAMES)]) for n in range(500))
    begun = datetime.now(UTC)
    made = plan(Menu(covers=40, lines=lines), SERVICE, elevation_m=HIGH_M, has=Has(10, 40, 20))
    assert len({course.line.line for course in made.courses}) == 500
    assert datetime.now(UTC) - begun < timedelta(seconds=30)


# The forms


@pytest.fixture(scope="module")
def demo() -> Plan:
    return planned(DEMO.read_text())


def test_text_is_no_wider_than_a_page(demo: Plan) -> None:
    assert max(map(len, as_text(demo).splitlines())) <= WIDTH
    assert "18:30" in as_text(demo, "metric")


def test_the_terminal_is_no_wider_than_eighty_columns(demo: Plan) -> None:
    from rich.console import Console

    from assistant.planning.plan_forms.terminal import show_plan

    out = io.StringIO()
    show_plan(demo, "us", Console(file=out, width=80, highlight=False))
    assert max(map(len, out.getvalue().splitlines())) <= 80
    assert "12:35 pm" in out.getvalue()


def test_the_calendar_read_back(demo: Plan) -> None:
    book = Calendar.from_ical(as_ics(demo))
    events = {(str(e["summary"]), e["dtstart"].dt): e for e in book.walk("VEVENT")}
    stages_of = [w for w in demo.work if w.from_min > w.to_min]
    assert len(events) == len(stages_of) + 1
    braise = events["short ribs: cook", datetime(2027, 6, 5, 13, 25, tzinfo=DENVER)]
    assert braise["dtend"].dt == datetime(2027, 6, 5, 18, 5, tzinfo=DENVER)
    assert str(braise["location"]) == "burner 1"
    assert len(braise.walk("VALARM")) == 1
    assert [str(zone["tzid"]) for zone in book.walk("VTIMEZONE")] == ["America/Denver"]
    assert len({str(e["uid"]) for e in events.values()}) == len(events)
    assert max(e["dtend"].dt for e in events.values() if "dtend" in e) <= demo.service


def test_a_service_that_is_moved_keeps_the_ids_of_its_events(demo: Plan) -> None:
    later = planned(DEMO.read_text(), SERVICE + timedelta(minutes=30))
    ids = [{str(e["uid"]) for e in Calendar.from_ical(as_ics(made)).walk("VEVENT")} for made in (demo, later)]
    assert ids[0] == ids[1]


def test_csv_and_json_say_the_same(demo: Plan) -> None:
    rows = list(csv.DictReader(io.StringIO(plan_forms.form("csv").write(demo, "us").decode())))
    told = json.loads(plan_forms.form("json").write(demo, "us"))
    assert [(r["begin"], r["dish"], int(r["hands_min"])) for r in rows] == [
        (w["begin"], w["dish"], w["hands_min"]) for w in told["work"]
    ]
    assert told["fits"] is True
    assert told["service"] == "2027-06-05T18:30:00-06:00"
    assert {HANDS} & {use["thing"] for w in told["work"] for use in w["uses"]} == set()


def test_the_picture_has_a_row_a_dish_and_every_stage(demo: Plan) -> None:
    from assistant.printing.plan_drawn import drawn

    axes = drawn(demo, "us").axes[0]
    stages_of = [w for w in demo.work if w.from_min > w.to_min]
    bars = [patch for patch in axes.patches if patch.get_height() > 0.5]
    assert len(bars) == len(stages_of)
    assert {text.get_text() for text in axes.texts} >= {course.name for course in demo.courses}
    assert all(bar.get_x() + bar.get_width() <= 0 for bar in bars)
    svg = plan_forms.form("svg").write(demo, "us").decode()
    assert "short ribs" in svg
    assert plan_forms.form("png").write(demo, "us").startswith(b"\x89PNG")
