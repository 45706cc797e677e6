"""Raw meat in a chamber that is too cool: the agencies' limits, and temperatures that are the centre's."""

import pytest

from assistant.replies.sentences import worded
from rules.book import Case, Part, Rule
from rules.heat import chamber
from rules.model import Request
from rules.physics.units import to_c, to_f
from rules.tables import sources

CHICKEN = {"dish": "whole chicken", "dish_class": "whole_bird"}
BEEF = {"dish": "beef roast", "dish_class": "tender_cut"}
BRISKET = {"dish": "beef brisket", "dish_class": "collagen_cut"}


def case(method, asked_f=None, *, topic="temperature", **fields):
    asked_c = None if asked_f is None else to_c(asked_f)
    return Case(Request(topic=topic, method=method, temperature_c=asked_c, elevation_m=2133.6, **fields))


def text(part):
    said = (part.headline, part.because, *part.steps, *(c.text for c in part.cautions))
    return " ".join(worded(words, "us") for words in said)


# printed: oven no lower than 325 degF for meat and poultry; a smoker at 225 degF and up
@pytest.mark.parametrize(
    ("method", "food", "least_f", "advised_f"),
    [
        ("roast", CHICKEN, 325, 325), ("bake", CHICKEN, 325, 325), ("smoke", CHICKEN, 225, 225),
        ("grill", CHICKEN, 225, 225), ("roast", BEEF, 200, 325), ("slow_cook", BRISKET, 176, None),
    ],
)  # fmt: skip
def test_the_limits_are_those_of_the_agency(method, food, least_f, advised_f):
    found = chamber.limit(case(method, **food))
    assert to_f(found.least_c) == pytest.approx(least_f)
    assert found.advised_c is None if advised_f is None else to_f(found.advised_c) == pytest.approx(advised_f)
    assert found.source in sources()


@pytest.mark.parametrize(
    ("method", "food"),
    [("roast", {"dish": "carrots", "dish_class": "root_vegetable"}), ("boil", CHICKEN), ("fry", BEEF), ("roast", {})],
)
def test_there_is_no_limit_for_what_is_not_meat_or_not_in_a_chamber(method, food):
    assert chamber.limit(case(method, **food)) is None


@pytest.mark.parametrize(
    ("asked_f", "cool"),
    [(325, False), (324.9, False), (324, True), (323.5, True), (250, True), (70, True), (68, False), (60, False)],
)
def test_too_cool_is_under_the_limit_and_over_a_room(asked_f, cool):
    assert (chamber.too_cool(case("roast", asked_f, **CHICKEN)) is not None) is cool


def test_a_dish_that_is_always_set_so_cool_is_let_be():
    jerky = {"dish": "beef jerky", "dish_class": "cured_meat"}
    assert chamber.too_cool(case("smoke", 170, **jerky)) is None
    assert chamber.too_cool(case("smoke", **jerky)) is None


@pytest.mark.parametrize(("asked_f", "cool"), [(199, True), (200, False), (225, False), (250, False), (251, True)])
def test_confit_is_cooked_at_200_to_250_f_and_no_cooler(asked_f, cool):
    confit = {"dish": "duck confit", "dish_class": "poultry_pieces"}
    assert (chamber.too_cool(case("bake", asked_f, **confit)) is not None) is cool


@pytest.mark.parametrize(
    ("method", "asked_f", "food", "centre"),
    [
        # printed safe temperatures: poultry 165, whole cuts 145 degF; cooks take beef to 130 (rare) and 160 (well done)
        ("roast", 165, CHICKEN, True), ("roast", 164, CHICKEN, False), ("roast", 170, CHICKEN, True),
        ("roast", 175, CHICKEN, False), ("roast", 160, BEEF, True), ("roast", 135, BEEF, True),
        ("roast", 170, BEEF, False),
        # pulled meat is taken to 188 to 207 degF, but not in a crock
        ("smoke", 203, BRISKET, True), ("roast", 188.1, BRISKET, True), ("roast", 199, BRISKET, True),
        ("roast", 180, BRISKET, False), ("slow_cook", 165, BRISKET, False),
    ],
)  # fmt: skip
def test_a_temperature_to_which_cooks_take_the_centre_is_the_centres(method, asked_f, food, centre):
    found = chamber.for_centre(case(method, asked_f, **food))
    assert found is (centre and chamber.limit(case(method, asked_f, **food)) is not None)


@pytest.mark.parametrize(("minutes", "centre"), [(None, True), (100.0, True), (165.0, True), (166.0, False)])
def test_left_for_much_longer_than_it_takes_the_chamber_is_meant(minutes, centre):
    """A bird takes 70 to 110 min in the oven; half as much again is 165."""
    assert chamber.for_centre(case("roast", 165, time_min=minutes, dish_class="whole_bird")) is centre


def test_nothing_asked_is_nothing_of_the_centre():
    assert chamber.for_centre(case("roast", **CHICKEN)) is False
    assert chamber.for_centre(case("roast", 165, dish="carrots", dish_class="root_vegetable")) is False


def test_refused_meat_is_told_what_to_set_and_how_far_to_take_it():
    part = chamber.refused.work(case("roast", 250, **CHICKEN))
    said = text(part)
    assert "No. Never cook whole chicken in an oven at 250 °F" in said
    assert "set the oven to 325 °F" in said
    assert "take the centre to 165 °F (74 °C)." in said
    assert "in an oven under 325 °F" in said
    (least,) = part.figures
    assert (least.id, worded(least.label, "us")) == ("least_setting", "The oven, at the least")
    assert to_f(least.value) == pytest.approx(325, abs=0.01)
    assert [c.level for c in part.cautions] == ["stop"]


def test_a_whole_cut_is_to_rest_three_minutes():
    """Printed: 145 degF with a rest of at least 3 min."""
    assert worded(chamber.safe_finish(case("roast", **BEEF)), "us") == (
        "take the centre to 145 °F (63 °C) and rest it 3 min"
    )
    assert chamber.safe_finish(case("roast", dish="toast", dish_class="yeast_bread")) == ""


def test_a_crock_is_told_by_its_marks():
    part = chamber.refused.work(case("slow_cook", 150, **BRISKET))
    assert "cook on LOW or HIGH, never on WARM" in text(part)
    assert "a crock under 176 °F" in text(part)
    assert part.figures == ()


def test_a_temperature_for_the_centre_is_told_apart_from_the_ovens():
    part = chamber.centre.work(case("roast", 165, **CHICKEN))
    assert text(part).startswith("165 °F (74 °C) is for the centre")
    assert "never for the oven" in text(part)
    assert [c.level for c in part.cautions] == ["warn"]
    assert set(part.sources) <= set(sources())


def test_asked_for_the_time_it_tells_the_time_at_the_usual_heat_first():
    part = chamber.centre.work(case("roast", 165, topic="time", **CHICKEN))
    said = text(part)
    assert said.startswith("About ")
    assert "at 7,000 ft" in said.split("165 °F")[0]


@pytest.mark.parametrize(("dish", "least_f"), [("chicken tenders", 325), ("corn dogs", 200)])
def test_what_is_under_a_batter_is_judged_by_what_it_is(dish, least_f):
    assert to_f(chamber.limit(case("bake", dish=dish, dish_class="battered")).least_c) == pytest.approx(least_f)
    assert chamber.limit(case("bake", dish="onion rings", dish_class="battered")) is None


@pytest.mark.parametrize(("dish", "dish_class"), [("chicken pot pie", "pie"), ("ham", "cured_meat")])
def test_meat_that_was_cooked_before_is_not_raw(dish, dish_class):
    assert chamber.limit(case("bake", dish=dish, dish_class=dish_class)) is None


@pytest.mark.parametrize(("asked_f", "noted"), [(199, False), (200, True), (250, True), (324, True), (325, False)])
def test_a_whole_cut_in_a_cooler_oven_hears_what_the_agency_asks(asked_f, noted):
    part = chamber.cooler_than_asked.work(case("roast", asked_f, **BEEF))
    assert (part is not None) is noted
    if part:
        assert "an oven of 325 °F" in text(part)
        assert [c.level for c in part.cautions] == ["note"]


def test_what_is_refused_is_not_reckoned_with():
    left = chamber.plain(case("roast", 250, time_min=60.0, time_high_min=90.0, **CHICKEN)).request
    assert (left.temperature_c, left.time_min, left.time_high_min) == (None, None, None)
    assert (left.dish, left.method, left.elevation_m) == ("whole chicken", "roast", 2133.6)


@pytest.mark.parametrize(
    ("asked_f", "of", "needed"),
    [
        (250, None, ()),
        (350, None, ("time",)),
        (165, None, ("time",)),
        (250, "core", ("time",)),
        (None, None, ("time",)),
    ],
)
def test_a_refusal_waits_for_nothing(asked_f, of, needed):
    asked = case("roast", asked_f, temperature_of=of, **CHICKEN).request
    assert chamber.needs(asked, ("time",)) == needed


@pytest.mark.parametrize(
    ("asked_f", "of", "opens", "seen_f"),
    [
        (350, None, None, 350),
        (165, "core", None, None),
        (165, None, "chamber.centre", None),
        (250, None, "chamber.refused", None),
    ],
)
def test_the_rules_of_a_method_speak_of_the_heat_that_holds(asked_f, of, opens, seen_f):
    """A setting is worked with; a centre's or a refused one is not, and what is wrong with it is said first."""
    told = Rule("told", ("common-practice",), lambda case: Part(headline=str(case.request.temperature_c)))
    asked = case("roast", asked_f, temperature_of=of, **CHICKEN)
    rules = chamber.guarded(asked.request, (told,))
    assert [rule.id for rule in rules if rule.id in ("chamber.centre", "chamber.refused")] == ([opens] if opens else [])
    heard = [rule.work(asked).headline for rule in rules if rule.id == "told"]
    assert heard == [str(None if seen_f is None else to_c(seen_f))]
    assert (rules[0].id == opens) or opens is None
    assert ("chamber.cooler_than_asked" in [rule.id for rule in rules]) is (opens is None)
