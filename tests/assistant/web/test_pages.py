"""The pages without a line of script: asked, converted, reckoned, kept."""

from __future__ import annotations

import html
import re
from collections.abc import Callable
from datetime import datetime, timedelta

import httpx
import pytest

from assistant.answering import reply_to
from assistant.web.assets import assets
from assistant.web.pictured import SCHEMES
from assistant.web.reply_shown import shown
from assistant.web.shelf import Shelf
from rules.model import Kitchen
from tests.assistant.web.conftest import Person, Server, headline

CAKE = (
    "Carrot cake\nMakes 16 slices\n2 cups all-purpose flour\n2 tsp baking powder\n1 1/2 cups sugar\n4 eggs\n"
    "1 cup vegetable oil\n3 cups grated carrots\n\nHeat the oven to 350 F.\nBake 35 to 40 minutes.\n"
)
SAVED = (
    "<!doctype html><html><head><script type='application/ld+json'>"
    '{"@type": "Recipe", "name": "Corn muffins", "recipeYield": "12 muffins", "recipeIngredient": '
    '["1 cup cornmeal", "1 cup flour", "1 tbsp baking powder", "1 cup milk", "1 egg"], '
    '"recipeInstructions": "Bake 20 minutes at 400 F."}</script></head>'
    "<body><h1>Corn muffins</h1><p onclick='x()'>As my neighbour makes them.</p></body></html>"
)
NEAR_A_TOWN = {"way": "device", "latitude": "39.25", "longitude": "-106.29"}
MENU = "Title: Saturday\nshort ribs 40%\npolenta, side, all\ngreen beans, side, all"


def in_words(page: str) -> str:
    """What stands on a page, without its marks."""
    return re.sub(r"\s+", " ", html.unescape(re.sub(r"<[^>]+>", " ", page)))


def test_a_question_and_one_that_leans_on_it(person: Person) -> None:
    first = person.ask("how long to braise short ribs at 7,000 feet")
    assert first.startswith("About 4 h (")
    then = person.ask("and at 9,000?")
    assert "short ribs at 9,000 ft" in then


def test_a_page_leaves_nothing_of_a_reply_out(person: Person) -> None:
    question = "how long to braise short ribs at 7,000 feet"
    page = in_words(person.form("/", "/ask", text=question).text)
    reply = reply_to(question, kitchen=Kitchen()).text
    lines = [re.sub(r"^(?:-|\d+\.) ", "", line) for line in reply.splitlines() if line]
    assert [line for line in lines if shown(line).first not in page or shown(line).rest not in page] == []


def test_what_is_missing_is_asked_for_and_then_taken(person: Person) -> None:
    assert person.ask("how long to braise short ribs").startswith("What elevation are you at?")
    assert "7,000 ft" in person.ask("7000 ft")


def test_a_refusal_is_a_refusal_on_a_page(person: Person) -> None:
    assert person.ask("can green beans in a water bath at 7000 ft").startswith("No. ")


@pytest.mark.parametrize(
    ("fields", "high"),
    [
        ({"way": "told", "told": "7000ft"}, "7,000 ft"),
        ({"way": "told", "told": "Santa Fe"}, "7,200 ft"),
        # U.S. Standard Atmosphere 1976: 782 hPa, 23.1 inHg, stands at 7,000 ft
        ({"way": "barometer", "told": "23.1", "unit": "inHg"}, "6,990 ft"),
        ({"way": "barometer", "told": "782", "unit": "hPa"}, "7,0"),
        # IAPWS-IF97: water boils at 92.87 degC under 781.9 hPa
        ({"way": "boil", "told": "199", "unit": "F"}, "7,090 ft"),
        ({**NEAR_A_TOWN, "altitude": "3000", "accuracy": "8"}, "9,840 ft"),
        # the airport's elevation is printed as 9,934 ft
        ({**NEAR_A_TOWN, "altitude": "", "accuracy": ""}, "9,930 ft"),
        ({**NEAR_A_TOWN, "altitude": "9", "accuracy": "900"}, "9,930 ft"),
    ],
)  # fmt: skip
def test_elevation_without_typing_it(fields: dict[str, str], high: str, person: Person) -> None:
    said = headline(person.form("/place", **fields))
    assert f"at {high}" in said
    assert ("Assumed" in said) == (fields["way"] == "device" and fields["accuracy"] != "8")
    # and a question takes it for granted
    assert high in person.ask("how long to braise short ribs")


@pytest.mark.parametrize(
    "fields",
    [
        {"way": "told", "told": "xyzzy"}, {"way": "barometer", "told": "3", "unit": "inHg"},
        {"way": "boil", "told": "300", "unit": "F"}, {"way": "device", "latitude": "0", "longitude": "-140"},
        {"way": "device", "latitude": "nan", "longitude": "x"}, {"way": "device"},
    ],
)  # fmt: skip
def test_what_tells_no_elevation_is_said_to(fields: dict[str, str], person: Person) -> None:
    page = person.form("/place", **fields)
    assert page.status_code == 422
    assert 'role="alert"' in page.text


def test_a_recipe_side_by_side_with_its_reasons(person: Person) -> None:
    page = person.form("/recipe", recipe=CAKE, at="7000ft")
    rows = re.findall(r'<td class="was">(.*?)</td>\s*<td class="now">(.*?)</td>', page.text, re.DOTALL)
    powder = next(now for was, now in rows if "baking powder" in was)
    assert "1 1/2 tsp baking powder" in powder
    assert "<details>" in powder
    assert "gas" in powder
    flour = next(now for was, now in rows if "flour" in was)
    assert "<details>" not in flour


def test_a_saved_page_is_read_and_shown_harmless(person: Person) -> None:
    page = person.post(
        "/recipe", data={"form_key": person.key("/recipe"), "at": "7000ft"},
        files={"file": ("muffins.html", SAVED.encode(), "text/html")},
    )  # fmt: skip
    assert "<h1>Corn muffins</h1>" in page.text
    assert "<p>As my neighbour makes them.</p>" in page.text
    assert "onclick=&" in page.text


@pytest.mark.parametrize(("form", "begins"), [("json", b'{\n  "schema"'), ("html", b"<!doctype"), ("csv", b"recipe,")])
def test_a_recipe_is_saved_in_its_forms(form: str, begins: bytes, person: Person) -> None:
    file = person.form("/recipe", recipe=CAKE, at="7000ft", form=form)
    assert file.content.startswith(begins)
    assert file.headers["content-disposition"].startswith("attachment")


def test_a_menu_is_ordered_and_scheduled(person: Person) -> None:
    person.form("/place", way="told", told="7000ft")
    order = person.form("/menu", menu=MENU, covers="90", want="order")
    assert "Order for Saturday" in order.text
    assert "bone-in short ribs" in order.text
    plan = person.form("/menu", menu=MENU, covers="90", want="schedule", serve="Saturday 6:30 pm", ovens="2")
    assert headline(plan).startswith("It fits")
    calendar = person.form("/menu", menu=MENU, covers="90", want="schedule", serve="Saturday 6:30 pm", form="ics")
    assert calendar.content.startswith(b"BEGIN:VCALENDAR")
    table = person.form("/menu", menu=MENU, covers="90", want="order", form="xlsx")
    assert table.content.startswith(b"PK")


def test_what_a_menu_lacks_is_asked_for(person: Person) -> None:
    page = person.form("/menu", menu=MENU, want="order", at="7000ft")
    assert page.status_code == 422
    assert "For how many?" in page.text
    # and what was typed is still there
    assert "short ribs 40%" in page.text


def test_timers_are_set_lengthened_and_stopped(person: Person) -> None:
    person.form("/timers", do="set", name="beans", minutes="20")
    person.form("/timers", do="set", name="Rice", minutes="1 h 30 min")
    assert [timer["name"] for timer in person.get("/timers/running").json()] == ["beans", "rice"]
    ends = person.get("/timers/running").json()[0]["ends"]
    person.form("/timers", do="more", name="beans")
    assert person.get("/timers/running").json()[0]["ends"] > ends
    person.form("/timers", do="stop", name="beans")
    assert [timer["name"] for timer in person.get("/timers/running").json()] == ["rice"]
    # a timer that was set in words is the same kind of thing
    person.ask("set a timer for 5 minutes for the eggs")
    assert len(person.get("/timers/running").json()) == 2
    assert person.form("/timers", do="set", name="x", minutes="soon").status_code == 422
    assert "from a second to a week" in person.form("/timers", do="set", name="x", minutes="0.001").text


def test_a_timer_that_is_over_is_told_on_the_page(person: Person) -> None:
    person.form("/timers", do="set", name="beans", minutes="0.02")
    assert wait_until(lambda: 'class="over"' in person.get("/timers").text)


def wait_until(holds: Callable[[], bool]) -> bool:
    import time

    for _ in range(60):
        if holds():
            return True
        time.sleep(0.1)
    return False


def test_a_kitchen_by_name(person: Person) -> None:
    page = person.form(
        "/place", "/kitchens", name="Timberfold Lodge", at="7000ft", equipment=["electric pressure cooker"]
    )
    assert headline(page).startswith("Timberfold Lodge is at 7,000 ft")
    assert "at 7,000 ft" in person.ask("how long to braise short ribs")
    assert "Timberfold Lodge" in person.get("/").text
    person.form("/place", "/kitchens/remove", name="timberfold lodge")
    assert person.get("/api/kitchens").json()["kitchens"] == []


def test_the_log_of_batches_says_what_to_change_next(person: Person) -> None:
    person.form("/place", way="told", told="7000ft")
    page = person.form("/batches", title="butter cake", symptom="sank in the middle", rating="2")
    assert headline(page).startswith("Next change: ")
    assert "butter cake, 20" in page.text
    number = re.search(r'name="id" value="(\d+)"', page.text)
    assert number
    assert "butter cake, 20" not in person.form("/batches", "/batches/remove", id=number[1]).text
    assert person.form("/batches", title="butter cake", symptom="sang a song").status_code == 422


def test_a_drill_is_asked_and_graded(person: Person) -> None:
    page = person.form("/training", "/training/drill", do="begin", theme=["safety"], seed="3")
    for passed in range(5):
        state = dict(re.findall(r'<input type="hidden" name="(\w+)" value="([^"]*)">', page.text.split("</form>")[0]))
        assert state["at"] == str(passed)
        page = person.form("/training", "/training/drill", **{**state, "reply": "next"})
    assert 'name="reply"' not in page.text
    assert person.form("/training", "/training/drill", seed="3", count="5", at="9").status_code == 422


@pytest.mark.parametrize("form", ["html", "md"])
def test_a_lesson_is_a_sheet_that_runs_nothing(form: str, person: Person) -> None:
    asked = {"theme": "braising", "class": "20", "seed": "1", "form": form, "at": "7000ft"}
    sheet = person.get("/training/lesson", params=asked)
    assert "7,000 ft" in sheet.text
    assert "script-src" not in sheet.headers["content-security-policy"]
    assert "default-src 'none'" in sheet.headers["content-security-policy"]


def test_the_card_stands_on_the_page_and_is_drawn(person: Person) -> None:
    page = person.get("/card", params={"at": "7000ft"})
    assert headline(page).startswith("Water boils at 199 °F")
    assert person.get("/card/wall/pdf", params={"at": "7000ft"}).content.startswith(b"%PDF")
    assert b"<svg" in person.get("/card/plot/boil/svg", params={"at": "7000ft"}).content
    assert person.get("/card/plot/nothing/svg", params={"at": "7000ft"}).status_code == 404
    assert person.get("/card/wall/exe", params={"at": "7000ft"}).status_code == 404


def test_a_part_that_is_missing_is_told_with_how_to_get_it(person: Person) -> None:
    page = in_words(person.get("/parts").text)
    assert "voice: " in page
    assert "print: installed" in page


def test_two_people_are_apart(person: Person, another: Person) -> None:
    person.ask("how long to braise short ribs at 7,000 feet")
    person.form("/place", "/kitchens", name="Timberfold Lodge", at="7000ft")
    person.form("/timers", do="set", name="beans", minutes="20")
    person.form("/batches", title="butter cake", symptom="sank in the middle")
    assert "braising short ribs" not in another.get("/").text
    assert "<strong>Timberfold Lodge" in person.get("/place").text
    assert "<strong>Timberfold Lodge" not in another.get("/place").text
    assert another.get("/timers/running").json() == []
    assert another.get("/api/batches").json() == {"batches": []}
    another.form("/place", "/kitchens/use", name="Timberfold Lodge")
    assert "Timberfold" not in another.get("/").text
    number = person.get("/api/batches").json()["batches"][0]["id"]
    assert another.delete(f"/api/batches/{number}").status_code == 404
    assert "ribs" not in another.ask("and at 9,000?")


def test_two_tabs_of_one_person_share_what_was_said(person: Person, server: Server) -> None:
    person.ask("how long to braise short ribs at 7,000 feet")
    with Person(base_url=server.url, cookies=dict(person.cookies), timeout=60) as tab:
        assert "9,000 ft" in tab.ask("and at 9,000?")
    assert "9,000 ft" in in_words(person.get("/").text)


def test_a_person_can_be_forgotten(person: Person) -> None:
    person.ask("how long to braise short ribs at 7,000 feet")
    person.form("/timers", do="set", name="beans", minutes="20")
    before = dict(person.cookies)
    assert "ribs at" not in person.form("/", "/forget").text
    with Person(base_url=str(person.base_url), cookies=before) as again:
        assert "ribs at" not in again.get("/").text
        assert again.get("/timers/running").json() == []


def pictures(page: httpx.Response) -> list[tuple[str, str]]:
    """The addresses of the pictures on a page, in light and wide, and what each tells those who do not see it."""
    return [
        (html.unescape(address), html.unescape(told))
        for address, told in re.findall(r'<img src="(/picture/[^"]+)" alt="([^"]+)"', page.text)
    ]


def test_an_answer_about_a_time_shows_it_against_elevation(person: Person) -> None:
    person.ask("how long to braise short ribs at 7,000 feet")
    ((address, told),) = pictures(person.get("/"))
    assert re.search(r"7,000 ft \(2,130 m\): 4 h \(3 h 35 min to 4 h 40 min\)", told)
    light = person.get(address)
    assert light.headers["content-type"] == "image/svg+xml"
    assert light.content.startswith(b"<?xml")
    dark = person.get(address.replace("/light/wide", "/dark/narrow"))
    assert dark.content != light.content
    assert person.get(address).content == light.content
    # what leans on it has its own, and what is no time has none
    person.ask("and at 9,000?")
    assert "9,000 ft" in pictures(person.get("/"))[0][1]
    for words in ("thanks", "why", "set a timer for 5 minutes", "can green beans in a water bath"):
        person.ask(words)
        assert pictures(person.get("/")) == []


@pytest.mark.parametrize(
    ("before", "words", "told"),
    [
        ("how long to braise short ribs at 7,000 feet", "show me", "Braising short ribs, the time against elevation"),
        ("my kitchen is at 7,000 feet", "show me the boil", "A curve of where water boils"),
        ("my kitchen is at 7,000 feet", "plot the pressure cooker", "inside a pressure cooker"),
        (f"convert this to 7000 ft\n\n{CAKE}", "show me", "baking powder 25 % less"),
    ],
)
def test_what_is_asked_to_be_shown_is_shown(before: str, words: str, told: str, person: Person) -> None:
    person.ask(before)
    assert person.ask(words) == "Here it is."
    ((address, shown_as),) = pictures(person.get("/"))
    assert told in shown_as
    assert person.get(address).status_code == 200


def test_where_nothing_can_be_drawn_that_is_said(person: Person) -> None:
    person.ask("convert this to 7000 ft\n\nTomato salad\n4 tomatoes\n1 tbsp vinegar\nSlice and serve.")
    page = person.form("/", "/ask", text="show me before and after")
    assert pictures(page) == []
    assert "nothing of it that a picture would show" in page.text


def test_pictures_are_drawn_in_the_colours_of_the_page() -> None:
    style = assets().content["style.css"].decode()
    light, dark = re.findall(r"--sheet: (#\w+); --ink: (#\w+)", style)[:2]
    assert {"light": light, "dark": dark} == {name: (look.paper, look.ink) for name, look in SCHEMES.items()}


@pytest.mark.parametrize("words", ["how long can chicken sit out", "how hot is a simmer", "7000 ft"])
def test_other_answers_show_none(words: str, person: Person) -> None:
    person.ask(words)
    assert pictures(person.get("/")) == []


def test_a_card_shows_its_plots_with_their_figures(person: Person) -> None:
    shown = pictures(person.get("/card", params={"at": "7000ft"}))
    assert len(shown) == 3
    assert "199 °F (93 °C) at 7,000 ft" in shown[0][1]
    assert all(person.get(address).status_code == 200 for address, _ in shown)
    assert pictures(person.get("/card", params={"at": "2000m"})) != shown


def test_a_converted_recipe_shows_before_and_after(person: Person) -> None:
    ((address, told),) = pictures(person.form("/recipe", recipe=CAKE, at="7000ft"))
    assert "baking powder 25 % less" in told
    assert b"baking powder" in person.get(address).content
    # nothing of it changes
    salad = "Tomato salad\n4 tomatoes\n1 tbsp vinegar\nSlice and serve."
    assert pictures(person.form("/recipe", recipe=salad, at="7000ft")) == []


def test_the_log_shows_what_was_changed_and_how_it_came_out(person: Person, another: Person) -> None:
    person.form("/place", way="told", told="7000ft")
    person.form("/batches", title="butter cake", symptom="sank in the middle", rating="2")
    assert pictures(person.get("/batches")) == []
    ((address, told),) = pictures(person.form("/batches", title="butter cake", changed="suggested", rating="4"))
    assert "sank in the middle, rated 2 of 5" in told
    assert re.search(r"changed baking powder [^;]*, better: nothing wrong, rated 4 of 5", told)
    assert b"baking powder" in person.get(address).content
    # what was drawn of a log is nobody else's
    assert another.get(address).status_code == 404
    # another rating is another picture
    assert pictures(person.form("/batches", title="butter cake", rating="5"))[0][0] != address


@pytest.mark.parametrize("change", [("mark=", "mark=0"), ("of=", "of=a"), ("/light/", "/pink/"), ("/wide", "/tall")])
def test_a_picture_that_no_page_named_is_not_drawn(change: tuple[str, str], person: Person) -> None:
    address = pictures(person.get("/card", params={"at": "7000ft"}))[0][0]
    assert person.get(address).status_code == 200
    assert person.get(address.replace(*change)).status_code == 404
    assert person.get("/picture/light/wide").status_code == 404


def test_a_shelf_forgets_what_was_not_asked_for_the_longest() -> None:
    shelf = Shelf(most_bytes=10)
    shelf.put("a", b"12345")
    shelf.put("b", b"12345")
    assert shelf.get("a") == b"12345"
    shelf.put("c", b"1234")
    assert [shelf.get(name) for name in "abc"] == [b"12345", None, b"1234"]
    shelf.put("c", b"123456")
    assert [shelf.get(name) for name in "ac"] == [None, b"123456"]
    shelf.put("d", b"1" * 11)
    assert shelf.get("d") is None


def test_without_matplotlib_pages_tell_the_figures_and_how_to_have_them_drawn(started: Callable[..., Server]) -> None:
    bare = started(without="matplotlib")
    with Person(base_url=bare.url, timeout=60) as person:
        person.ask("how long to braise short ribs at 7,000 feet")
        pages = (
            (person.get("/"), "4 h (3 h 35 min to 4 h 40 min)"),
            (person.get("/card", params={"at": "7000ft"}), "199 °F (93 °C) at 7,000 ft"),
            (person.form("/recipe", recipe=CAKE, at="7000ft"), "baking powder 25 % less"),
        )
        for page, figures in pages:
            assert pictures(page) == []
            assert figures in in_words(page.text)
            assert 'pip install "simmerline[print]"' in in_words(page.text)
        assert person.get("/card/wall/pdf", params={"at": "7000ft"}).status_code == 501


def test_timers_that_count_back_from_service_move_with_it(person: Person) -> None:
    for words in ("my kitchen is at 7,000 feet", "short ribs and polenta for 6:30 pm tomorrow", "set timers for it"):
        person.ask(words)
    before = {timer["name"]: timer["ends"] for timer in person.get("/timers/running").json()}
    assert set(before) == {"start of short ribs", "start of polenta"}
    person.form("/timers", do="set", name="beans", minutes="20")
    (beans,) = (t["ends"] for t in person.get("/timers/running").json() if t["name"] == "beans")
    page = in_words(person.form("/", "/ask", text="service moved to 7").text)
    assert "The timers move with it. Timer for the start of short ribs: " in page
    after = {timer["name"]: timer["ends"] for timer in person.get("/timers/running").json()}
    moved = {name: datetime.fromisoformat(after[name]) - datetime.fromisoformat(before[name]) for name in before}
    assert moved == dict.fromkeys(before, timedelta(minutes=30))
    assert after["beans"] == beans
    # what does not move them says nothing of them
    assert "timers move" not in person.form("/", "/ask", text="for 12 people").text.partition("Before")[0]
