"""The pages in a real browser: Debian's chromium, driven by Playwright. Skipped where either is not installed."""

from __future__ import annotations

import io
import math
import re
import shutil
import struct
import wave
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe import forms
from tests.assistant.web.conftest import Server
from tests.assistant.web.test_pages import CAKE, MENU, SAVED

if TYPE_CHECKING:
    from playwright.sync_api import Browser, BrowserContext, Page

CHROMIUM = shutil.which("chromium")
PAGES = (
    "/",
    "/recipe",
    "/menu",
    "/timers",
    "/card",
    "/batches",
    "/training",
    "/place",
    "/parts",
    "/programs",
    "/enter",
)
# a finger that is wet [CSS px]
TOUCH_PX = 48
TABLET, PHONE, NARROWEST = (1280, 800), (360, 740), (320, 640)
Opened = Callable[..., "Page"]
# ten lines and six steps
BUTTER_CAKE = """Butter cake
Makes 12 slices
2 1/2 cups all-purpose flour
2 1/2 tsp baking powder
1/2 tsp salt
3/4 cup butter
1 1/2 cups sugar
3 eggs
1 cup milk
2 tsp vanilla
1 tbsp lemon zest
1/2 cup walnuts

1. Heat the oven to 350 F and grease two 9-inch round pans.
2. Whisk the flour, baking powder and salt.
3. Beat the butter and sugar for 5 minutes until pale.
4. Beat in the eggs one at a time, then the vanilla and zest.
5. Stir in the flour and the milk in turns, then the walnuts.
6. Bake 30 to 35 minutes until a pick comes out clean. Cool 10 minutes in the pans.
"""


@pytest.fixture(scope="module")
def speech(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A second of a tone, as a microphone would pick it up."""
    path = tmp_path_factory.mktemp("speech") / "tone.wav"
    samples = (int(9000 * math.sin(2 * math.pi * 440 * n / 48000)) for n in range(48000))
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(48000)
        file.writeframes(b"".join(struct.pack("<h", sample) for sample in samples))
    return path


@pytest.fixture(scope="module")
def browser(speech: Path) -> Iterator[Browser]:
    """A browser with a microphone that hears the tone."""
    library = pytest.importorskip("playwright.sync_api", reason='no playwright: pip install "simmerline[test]"')
    if CHROMIUM is None:
        pytest.skip("no chromium: apt-get install chromium")
    heard = ("--use-fake-device-for-media-stream", f"--use-file-for-fake-audio-capture={speech}")
    with library.sync_playwright() as playwright:
        found = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox", *heard])
        yield found
        found.close()


@pytest.fixture
def opened(browser: Browser, server: Server) -> Iterator[Opened]:
    """Opens pages of a new person; a fault in a script fails the test."""
    contexts: list[BrowserContext] = []
    faults: list[str] = []

    def open_page(path: str = "/", size: tuple[int, int] = TABLET, **options: Any) -> Page:
        viewport = {"width": size[0], "height": size[1]}
        contexts.append(browser.new_context(base_url=server.url, viewport=viewport, **options))
        page = contexts[-1].new_page()
        page.set_default_timeout(20_000)
        page.on("pageerror", lambda fault: faults.append(str(fault)))
        page.on("console", lambda told: faults.append(told.text) if "Content Security" in told.text else None)
        page.goto(path)
        return page

    yield open_page
    for context in contexts:
        context.close()
    assert faults == []


def ask(page: Page, text: str) -> str:
    """Ask, and the large line of the reply."""
    page.fill("#text", text)
    page.press("#text", "Enter")
    page.locator("#reply .asked", has_text=text).wait_for()
    return said(page)


def said(page: Page) -> str:
    return page.locator("[data-headline]").first.inner_text().replace("\N{NO-BREAK SPACE}", " ")


def settle(page: Page, place: str = "7000ft") -> None:
    """Tell where the kitchen is."""
    page.goto("/place")
    page.fill("#told", place)
    page.press("#told", "Enter")
    page.locator(".headline").wait_for()


def test_a_question_and_a_follow_up_without_leaving_the_page(opened: Opened) -> None:
    page = opened()
    page.evaluate("window.stayed = true")
    assert ask(page, "how long to braise short ribs at 7,000 feet").startswith("About 4 h (")
    assert "at 9,000 ft" in ask(page, "and at 9,000?")
    assert page.evaluate("window.stayed") is True
    assert page.evaluate("document.activeElement.id") == "reply"
    assert page.input_value("#text") == ""
    # what was said before is folded, and can be opened
    page.locator(".earlier summary").click()
    assert page.locator(".earlier .headline").is_visible()


def test_the_head_of_the_page_follows_what_is_said(opened: Opened) -> None:
    page = opened()
    assert "Tell where you cook" in page.locator(".where").inner_text()
    ask(page, "my kitchen is at 7,000 feet")
    assert "7,000 ft" in page.locator(".where").inner_text()
    assert page.locator(".staff path.here").count() == 1


def test_the_first_line_is_read_at_arm_s_length(opened: Opened) -> None:
    """Letters of 6 mm on a tablet of 10 inches, 1280 CSS px wide: 24 px is 4 mm, so it has to be well above that."""
    page = opened()
    ask(page, "how long to braise short ribs at 7,000 feet")
    sizes = [float(size[:-2]) for size in (css(page, ".headline", "font-size"), css(page, ".reply li", "font-size"))]
    assert sizes[0] >= 32
    assert sizes[1] >= 18


def css(page: Page, what: str, of: str) -> str:
    found: str = page.locator(what).first.evaluate("(element, of) => getComputedStyle(element)[of]", of)
    return found


def test_a_recipe_is_pasted_and_a_change_opens_its_reason(opened: Opened) -> None:
    page = opened()
    settle(page)
    page.goto("/recipe")
    page.fill("#recipe", CAKE)
    page.get_by_role("button", name="Convert").click()
    change = page.locator("tr.changed", has_text="baking powder")
    assert not change.locator(".why").is_visible()
    change.locator("summary").click()
    assert "gas" in change.locator(".why").inner_text()


def convert(page: Page, recipe: str = CAKE) -> None:
    """Convert a recipe, where the kitchen is settled."""
    page.goto("/recipe")
    page.fill("#recipe", recipe)
    page.get_by_role("button", name="Convert").click()
    page.locator(".beside").first.wait_for()


def test_every_change_of_a_recipe_opens_its_reason_by_finger_or_key(opened: Opened) -> None:
    page = opened()
    settle(page)
    convert(page, BUTTER_CAKE)
    changes = page.locator("tr.changed")
    assert changes.count() >= 6
    for at in range(changes.count()):
        change = changes.nth(at)
        if at % 2:
            change.locator("summary").click()
        else:
            change.locator("summary").press("Enter")
        assert change.locator(".why").first.is_visible()
        assert len(change.locator(".why").first.inner_text()) > 20


@pytest.mark.parametrize(
    ("scheme", "size", "drawn"),
    [("light", TABLET, "/picture/light/wide"), ("dark", TABLET, "/picture/dark/wide"),
     ("light", PHONE, "/picture/light/narrow"), ("dark", PHONE, "/picture/dark/narrow")],
)  # fmt: skip
def test_pictures_are_drawn_as_the_page_is(scheme: str, size: tuple[int, int], drawn: str, opened: Opened) -> None:
    page = opened(size=size, color_scheme=scheme)
    ask(page, "how long to braise short ribs at 7,000 feet")
    picture = page.locator("#reply .picture img")
    picture.scroll_into_view_if_needed()
    page.wait_for_function("() => document.querySelector('#reply .picture img').complete")
    assert picture.evaluate("image => image.naturalWidth") > 0
    assert drawn in picture.evaluate("image => image.currentSrc")
    assert "4 h (3 h 35 min to 4 h 40 min)" in (picture.get_attribute("alt") or "")
    box = picture.bounding_box()
    assert box is not None
    # as wide as it is drawn for, so that its letters keep their size
    assert box["width"] >= 0.7 * (756 if "wide" in drawn else 378)


@pytest.mark.parametrize("sheet", ["A4", "Letter"])
def test_what_is_short_is_printed_on_one_sheet(sheet: str, opened: Opened) -> None:
    page = opened()
    settle(page)
    page.goto("/")
    ask(page, "how long to braise short ribs")
    ask(page, "and at 9,000?")
    assert sheets(page, sheet) == 1
    convert(page, BUTTER_CAKE)
    assert sheets(page, sheet) == 1
    # what was opened to be read makes it no longer
    page.evaluate("for (const reason of document.querySelectorAll('.beside details')) reason.open = true")
    assert sheets(page, sheet) == 1
    page.goto("/card")
    assert sheets(page, sheet) == 1
    page.goto("/menu")
    page.fill("#menu", MENU)
    page.fill("#covers", "90")
    page.get_by_role("button", name="Order", exact=True).click()
    page.locator(".order").first.wait_for()
    assert sheets(page, sheet) == 1
    page.fill("#serve", "6:30 pm")
    page.get_by_role("button", name="Schedule", exact=True).click()
    page.locator(".plan").first.wait_for()
    assert sheets(page, sheet) == 1


@pytest.mark.parametrize("sheet", ["A4", "Letter"])
def test_a_short_recipe_that_was_saved_as_a_page_is_printed_on_one_sheet(
    sheet: str, opened: Opened, tmp_path: Path
) -> None:
    saved = tmp_path / "cake.html"
    made = convert_recipe(BUTTER_CAKE.encode(), to_elevation_m=2133.6, units="us", name="cake")
    saved.write_text(forms.form("html").write(made, "us"), encoding="utf-8")
    page = opened("/enter")
    page.goto(saved.as_uri())
    assert "Butter cake" in page.locator("h1").inner_text()
    assert sheets(page, sheet) == 1


def sheets(page: Page, sheet: str) -> int:
    """How many sheets a page is printed on."""
    return len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=sheet)))


def test_a_drill_and_a_lesson_by_keyboard(opened: Opened) -> None:
    page = opened("/training")
    page.get_by_role("button", name="Begin").press("Enter")
    for _ in range(3):
        field = page.locator("#drill input[name=reply]").first
        field.wait_for()
        if field.get_attribute("type") == "radio":
            field.press("Space")
        else:
            field.fill("7")
        before = page.locator("#drill").inner_text()
        page.locator("#drill").get_by_role("button", name="Answer").press("Enter")
        page.wait_for_function("before => document.querySelector('#drill').innerText !== before", arg=before)
    page.goto("/training")
    page.fill("#lesson-at", "7000ft")
    page.get_by_role("button", name="The sheet").press("Enter")
    page.wait_for_url("**/training/lesson?**")
    assert "7,000 ft" in page.locator("body").inner_text()


def test_timers_move_with_the_service_before_the_cook_s_eyes(opened: Opened) -> None:
    page = opened()
    ask(page, "my kitchen is at 7,000 feet")
    ask(page, "short ribs and polenta for 6:30 pm tomorrow")
    ask(page, "set timers for it")
    left = page.locator(".clocks .left").first
    left.wait_for()
    page.wait_for_function("() => /^\\d+:\\d\\d:\\d\\d$/.test(document.querySelector('.clocks .left').textContent)")
    before = seconds(left.inner_text())
    ask(page, "service moved to 7")
    assert "The timers move with it." in page.locator("#reply").inner_text()
    moved = "before => {const [h, m, s] = document.querySelector('.clocks .left').textContent.split(':').map(Number);"
    page.wait_for_function(moved + " return h * 3600 + m * 60 + s > before + 1500}", arg=before)


def seconds(clock: str) -> int:
    hours, minutes, rest = map(int, clock.split(":"))
    return hours * 3600 + minutes * 60 + rest


def test_a_recipe_is_uploaded_or_dropped(opened: Opened) -> None:
    page = opened()
    settle(page)
    page.goto("/recipe")
    file = {"name": "muffins.html", "mimeType": "text/html", "buffer": SAVED.encode()}
    page.set_input_files("#file", [file])
    page.locator("h1", has_text="Corn muffins").first.wait_for()
    page.goto("/recipe")
    drop = """text => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], "cake.txt", {type: "text/plain"}));
        document.querySelector("[data-drop]").dispatchEvent(new DragEvent("drop", {dataTransfer, bubbles: true}));
    }"""
    page.evaluate(drop, CAKE)
    page.locator("h1", has_text="Carrot cake").wait_for()


def test_a_menu_is_ordered_scheduled_saved_and_printed(opened: Opened) -> None:
    page = opened()
    settle(page)
    page.goto("/menu")
    page.fill("#menu", MENU)
    page.fill("#covers", "90")
    page.get_by_role("button", name="Order", exact=True).click()
    page.locator("h1", has_text="Order for Saturday").wait_for()
    page.fill("#serve", "Saturday 6:30 pm")
    page.get_by_role("button", name="Schedule", exact=True).click()
    page.locator("h1", has_text="Schedule for Saturday").wait_for()
    with page.expect_download() as saved:
        page.get_by_role("button", name="calendar").click()
    assert saved.value.suggested_filename == "schedule.ics"
    page.emulate_media(media="print")
    assert not page.locator("nav").is_visible()
    assert not page.locator("form").first.is_visible()
    assert page.locator(".plan").first.is_visible()
    assert page.pdf().startswith(b"%PDF")


def test_the_device_tells_where_it_is(opened: Opened) -> None:
    here = {"latitude": 39.25, "longitude": -106.29}
    page = opened("/place", permissions=["geolocation"], geolocation=here)
    page.get_by_role("button", name="Find my elevation").click()
    page.locator(".headline", has_text="9,930 ft").wait_for()
    assert "Assumed" in page.locator(".headline").inner_text()
    assert "9,930 ft" in page.locator(".where").inner_text()


def test_a_device_that_may_not_tell_is_no_end(opened: Opened) -> None:
    page = opened("/place")
    page.get_by_role("button", name="Find my elevation").click()
    page.locator("[data-locate-says]", has_text="say the elevation or a town").wait_for()


def test_what_is_said_aloud_comes_as_a_wav_of_16_khz_and_is_shown_first(opened: Opened) -> None:
    sent: list[bytes] = []
    page = opened(permissions=["microphone"])

    def hear(route: Any) -> None:
        sent.append(route.request.post_data_buffer)
        others = ["how long to braise short ribs at 9,000 ft"]
        route.fulfill(
            json={"text": "how long to braise short ribs", "read_back": "At 7,000 ft?", "alternatives": others}
        )

    page.route("**/api/heard", hear)
    button = page.get_by_role("button", name="Hold to speak")
    button.hover()
    page.mouse.down()
    page.locator(".listening").wait_for()
    page.wait_for_timeout(900)
    page.mouse.up()
    page.locator("[data-hold-says]", has_text="At 7,000 ft?").wait_for()
    # nothing is asked before the cook has seen it
    assert page.input_value("#text") == "how long to braise short ribs"
    assert page.locator("#reply").count() == 0
    page.get_by_role("button", name="at 9,000 ft").click()
    assert page.input_value("#text") == "how long to braise short ribs at 9,000 ft"
    with wave.open(io.BytesIO(sent[0])) as file:
        assert (file.getframerate(), file.getnchannels(), file.getsampwidth()) == (16000, 1, 2)
        assert any(file.readframes(file.getnframes()))


def test_without_voice_the_page_says_how_to_get_it(opened: Opened) -> None:
    page = opened(permissions=["microphone"])
    told = {"status": 501, "detail": 'Voice is not installed here: pip install "simmerline[voice]"'}
    page.route("**/api/heard", lambda route: route.fulfill(status=501, json=told))
    button = page.get_by_role("button", name="Hold to speak")
    button.focus()
    page.keyboard.down("Space")
    page.locator(".listening").wait_for()
    page.wait_for_timeout(400)
    page.keyboard.up("Space")
    page.locator("[data-hold-says]", has_text="pip install").wait_for()


def test_a_timer_rings_in_every_tab_and_keeps_the_screen_awake(opened: Opened) -> None:
    page = opened("/timers")
    watch = """
        window.woken = 0;
        Object.defineProperty(navigator, "wakeLock", {value: {request: async () => {
            window.woken += 1;
            return {release: () => {}, addEventListener: () => {}};
        }}});
        navigator.vibrate = () => { window.shaken = true; };
    """
    page.context.add_init_script(watch)
    page.reload()
    page.fill("#name", "beans")
    page.fill("#minutes", "0.05")
    page.get_by_role("button", name="Set the timer").click()
    page.locator(".timers [data-left]", has_text=re.compile(r"^0:0\d$")).wait_for()
    assert page.evaluate("window.woken") >= 1
    other = page.context.new_page()
    other.goto("/recipe")
    page.wait_for_function("() => document.title.startsWith('Time is up')")
    assert page.locator("#announce").inner_text() == "Time is up: beans."
    assert page.evaluate("window.shaken") is True
    other.wait_for_function("() => document.title.startsWith('Time is up')")
    page.get_by_role("button", name="Stop the ringing").click()
    page.get_by_role("button", name="Stop", exact=True).click()
    page.locator(".timers .none").wait_for()


def test_timers_run_on_while_the_server_is_away(opened: Opened) -> None:
    page = opened("/timers")
    page.fill("#minutes", "20")
    page.get_by_role("button", name="Set the timer").click()
    left = page.locator(".clocks .left")
    left.wait_for()
    page.context.set_offline(True)
    before = left.inner_text()
    page.wait_for_function("before => document.querySelector('.clocks .left').textContent !== before", arg=before)


def test_two_tabs_show_the_same_conversation(opened: Opened) -> None:
    first = opened()
    ask(first, "how long to braise short ribs at 7,000 feet")
    second = first.context.new_page()
    second.goto("/")
    assert "at 9,000 ft" in ask(second, "and at 9,000?")
    first.bring_to_front()
    first.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    first.locator("#reply .asked", has_text="and at 9,000?").wait_for()


def test_asked_and_converted_without_scripts(opened: Opened) -> None:
    page = opened(java_script_enabled=False)
    page.fill("#text", "how long to braise short ribs at 7,000 feet")
    page.get_by_role("button", name="Ask").click()
    assert said(page).startswith("About 4 h (")
    assert page.locator("[data-hold]").is_hidden()
    page.goto("/recipe")
    page.fill("#recipe", CAKE)
    page.fill("#at", "7000ft")
    page.get_by_role("button", name="Convert").click()
    page.locator("tr.changed", has_text="baking powder").locator("summary").click()
    assert page.locator("tr.changed", has_text="baking powder").locator(".why").is_visible()


def test_with_the_cable_out_no_page_lacks_anything(opened: Opened, server: Server) -> None:
    """Every request goes to the server itself, and whatever else would be asked for fails the test."""
    page = opened()
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.context.route(lambda url: not url.startswith((server.url, "data:")), lambda route: route.abort())
    settle(page)
    for path in PAGES:
        page.goto(path, wait_until="networkidle" if path == "/card" else "load")
    page.goto("/")
    ask(page, "how long to braise short ribs")
    page.locator("#reply .picture img").scroll_into_view_if_needed()
    convert(page)
    page.wait_for_load_state("networkidle")
    assert {"/picture/light/wide", "/timers/running"} <= {
        url.removeprefix(server.url).partition("?")[0] for url in asked
    }
    assert [url for url in asked if not url.startswith((server.url, "data:"))] == []


# at 200 % a tablet has half its width
@pytest.mark.parametrize("size", [NARROWEST, (TABLET[0] // 2, TABLET[1] // 2)], ids=["narrow", "zoomed"])
def test_nothing_runs_over_the_edge(size: tuple[int, int], opened: Opened) -> None:
    page = opened("/place", size)
    settle(page)
    over = []
    for path in PAGES:
        page.goto(path)
        over += [path] if runs_over(page) else []
    page.goto("/")
    ask(page, "how long to braise short ribs")
    over += ["a reply"] if runs_over(page) else []
    convert(page)
    over += ["a recipe"] if runs_over(page) else []
    page.goto("/menu")
    page.fill("#menu", MENU)
    page.fill("#covers", "90")
    for button, sheet in (("Order", ".order"), ("Schedule", ".plan")):
        page.fill("#serve", "6:30 pm")
        page.get_by_role("button", name=button, exact=True).click()
        page.locator(sheet).first.wait_for()
        over += [button] if runs_over(page) else []
    assert over == []


def runs_over(page: Page) -> bool:
    found: bool = page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth")
    return found


@pytest.mark.parametrize("size", [TABLET, PHONE], ids=["tablet", "phone"])
def test_what_is_touched_is_large_enough_for_wet_hands(size: tuple[int, int], opened: Opened) -> None:
    page = opened("/place", size)
    settle(page)
    page.goto("/timers")
    page.fill("#minutes", "20")
    page.get_by_role("button", name="Set the timer").click()
    measure = """() => [...document.querySelectorAll("a, button, input, select, textarea, summary")]
        .map(one => [one.outerHTML.slice(0, 80), (one.closest("label") ?? one).getBoundingClientRect()])
        .filter(([, box]) => box.width > 0 && box.right > 0 && box.height < MINIMUM && box.height > 1)
        .map(([text, box]) => `${text} ${box.height}`)""".replace("MINIMUM", str(TOUCH_PX))
    small = {}
    for path in PAGES:
        page.goto(path)
        small[path] = page.evaluate(measure)
    # a link within a sentence is no button
    assert {path: [one for one in found if "openapi.json" not in one] for path, found in small.items() if found} in (
        {},
        {"/programs": []},
    )


# what dark changes is colours alone
@pytest.mark.parametrize(("scheme", "rules"), [("light", None), ("dark", ["color-contrast"])], ids=["light", "dark"])
def test_nothing_serious_for_those_who_do_not_see_or_touch(scheme: str, rules: Any, opened: Opened) -> None:
    library = pytest.importorskip("axe_playwright_python.sync_playwright")
    axe = partial(library.Axe().run, options={"resultTypes": ["violations"]} | ({"runOnly": rules} if rules else {}))
    page = opened("/place", color_scheme=scheme)
    settle(page)
    found = {path: serious(axe, page, path) for path in PAGES}
    page.goto("/")
    ask(page, "can green beans in a water bath")
    ask(page, "set a timer for 20 minutes for the beans")
    found["a reply"] = serious(axe, page)
    ask(page, "how long to braise short ribs")
    found["a picture"] = serious(axe, page)
    convert(page)
    found["a recipe"] = serious(axe, page)
    page.goto("/menu")
    page.fill("#menu", MENU)
    page.fill("#covers", "90")
    page.get_by_role("button", name="Order", exact=True).click()
    page.locator(".order").first.wait_for()
    found["an order"] = serious(axe, page)
    assert {where: faults for where, faults in found.items() if faults} == {}


def serious(axe: Any, page: Page, path: str | None = None) -> list[str]:
    """What axe-core finds serious or worse."""
    if path:
        page.goto(path)
    violations = axe(page).response["violations"]
    return [
        f"{one['id']}: {node['html'][:120]}"
        for one in violations
        if one["impact"] in ("serious", "critical")
        for node in one["nodes"]
    ]


def test_all_of_it_by_keyboard(opened: Opened) -> None:
    page = opened()
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.className") == "skip"
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.id") == "text"
    page.keyboard.type("how long to braise short ribs at 7,000 feet")
    page.keyboard.press("Enter")
    page.locator("#reply").wait_for()
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Why"
    assert css(page, ":focus", "outline-style") == "solid"


def test_nothing_moves_where_that_is_not_wanted(opened: Opened) -> None:
    page = opened("/timers", reduced_motion="reduce")
    page.fill("#minutes", "0.02")
    page.get_by_role("button", name="Set the timer").click()
    page.locator(".clocks .over").wait_for()
    assert css(page, ".clocks .over", "animation-name") == "none"
    assert page.evaluate("document.getAnimations().length") == 0
