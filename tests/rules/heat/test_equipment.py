"""Equipment that changes the advice."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant.replies.sentences import worded
from assistant.replies.worded import answer
from rules.book import Case
from rules.foods.methods import methods
from rules.heat import equipment
from rules.model import Request
from rules.tables import read_toml, sources

KNOWN = {row["id"] for row in read_toml("lexicon/equipment.toml")["equipment"]}
USED = [(id, method.id) for method in methods().values() for id in method.equipment]


def ask(method, *owned, elevation_m=2133.6):
    return answer(Request(topic="time", method=method, dish_class="general", elevation_m=elevation_m, equipment=owned))


def told(answered):
    return [b for b in answered.because if b.rule == "equipment.note"]


def test_advice_is_about_known_equipment_that_some_method_uses():
    assert set(equipment.ADVICE) <= KNOWN
    assert {id for id, _ in USED} == set(equipment.ADVICE)


@pytest.mark.parametrize(
    ("id", "method"), [(i, m) for i, m in USED if m in ("boil", "braise", "steam", "pressure_cook", "brew")]
)
def test_a_method_hears_of_its_equipment(id, method):
    assert told(ask(method, id))


def test_nothing_is_said_of_equipment_that_is_not_used():
    assert not told(ask("boil", "espresso_machine", "smoker", "none_such"))


def test_what_is_owned_adds_and_takes_nothing_away():
    plain, owned = ask("boil"), ask("boil", "gas_burner")
    assert owned.figures == plain.figures
    assert owned.because[: len(plain.because)] == plain.because


@given(st.floats(-430, 5500))
def test_gas_is_derated_from_two_thousand_feet(elevation_m):
    less, more = equipment.derated_percent(elevation_m)
    assert (more == 0) == (elevation_m / 0.3048 <= 2000)
    assert 0 <= less <= more < 75


def test_gas_at_sea_level_says_nothing():
    assert not told(ask("boil", "gas_burner", elevation_m=0.0))


def test_gas_warns_of_carbon_monoxide():
    assert any("carbon monoxide" in c.text for c in ask("boil", "gas_burner").cautions)


def test_a_pressure_cooker_is_told_by_its_own_marks():
    text = told(ask("pressure_cook", "electric_pressure_cooker"))[0].text
    assert "LOW (5 psi)" in text
    assert "HIGH (12 psi)" in text


def test_an_electric_cooker_is_no_canner():
    asked = Request(
        topic="preserve", dish_class="tender_vegetable", elevation_m=2000, equipment=("electric_pressure_cooker",)
    )
    assert any("not a pressure canner" in c.text for c in answer(asked).cautions if c.level == "stop")


@pytest.mark.parametrize(("elevation_m", "out_of_reach"), [(1900, False), (2100, True)])
def test_a_slow_cooker_cannot_hold_200_f_high_up(elevation_m, out_of_reach):
    """The advice fails from about 6,600 ft, where water boils at 200 degF."""
    given = ask("slow_cook", "slow_cooker", elevation_m=elevation_m)
    assert ("cannot be met" in told(given)[0].text) is out_of_reach


@pytest.mark.parametrize(
    ("owned", "subject", "gauge"),
    [
        (("dial_gauge_canner",), None, "14 psi"),
        (("weighted_gauge_canner",), None, "15 psi"),
        (("dial_gauge_canner",), "weighted_gauge", "15 psi"),
    ],
)
def test_a_canner_is_told_by_its_own_gauge(owned, subject, gauge):
    asked = Request(topic="preserve", dish="stock", elevation_m=2133.6, equipment=owned, subject=subject)
    assert gauge in answer(asked).headline
    assert ("14 psi" in answer(asked).headline) == (gauge == "14 psi")


def test_a_steam_canner_is_taken_for_acid_food():
    asked = Request(topic="preserve", dish="peaches", elevation_m=2000, time_min=20, equipment=("steam_canner",))
    assert "open steam" in answer(asked).headline


# at 7,000 ft: water boils at 199 degF by the extension tables, air weighs 0.811 of its sea-level weight by the standard
# atmosphere, and steam is as hot as the steam tables say for the gauge and 11.34 psi of air
FIGURES = [
    ("stovetop_pressure_cooker", ["LOW (8 psi) 226 °F", "HIGH (15 psi) 243 °F", "Rings on the valve stem"]),
    ("electric_pressure_cooker", ["LOW (5 psi) 217 °F (103 °C), HIGH (12 psi) 236 °F"]),
    ("commercial_pressure_steamer", ["At 15 psi", "243 °F", "against 250 °F"]),
    ("gas_burner", ["20 to 28 % less heat", "Use a wider burner"]),
    ("induction_hob", ["8 % less heat"]),
    ("electric_hob", ["8 % less heat"]),
    ("camp_stove", ["less heat in thin air"]),
    ("kettle", ["199 °F", "Set a variable kettle to 197 °F"]),
    ("espresso_machine", ["245 °F", "against 252 °F", "flashes to steam", "Set brew water to 197 °F"]),
    ("immersion_circulator", ["up to 196 °F", "Cover the bath"]),
    ("slow_cooker", ["200 °F", "199 °F", "Start on HIGH"]),
    ("rice_cooker", ["switches off", "few spoonfuls"]),
    ("convection_oven", ["19 % less", "full preheat"]),
    ("rack_oven", ["19 % less"]),
    ("air_fryer", ["19 % less"]),
    ("standard_oven", ["thermostat reads true"]),
    ("deck_oven", ["thermostat reads true"]),
    ("combi_oven", ["199 °F", "altitude setting"]),
    ("convection_steamer", ["199 °F"]),
    ("steam_kettle", ["199 °F"]),
    ("grill", ["81 %", "Open the vents wider"]),
    ("smoker", ["81 %"]),
    ("chafing_dish", ["199 °F", "does not reheat"]),
    ("blast_chiller", ["moves 19 % less air", "let the probe"]),
]
EVERYWHERE = {"stovetop_pressure_cooker", "electric_pressure_cooker", "immersion_circulator", "steam_kettle"}


def noted(id, elevation_m=2133.6, method=None, topic="time"):
    asked = Request(topic=topic, method=method or dict(USED[::-1])[id], elevation_m=elevation_m, equipment=(id,))
    return equipment.note.work(Case(asked))


def text_of(part):
    said = [worded(words, "us") for words in (part.because, *part.steps, *(c.text for c in part.cautions))]
    return " ".join(said)


@pytest.mark.parametrize(("id", "figures"), FIGURES, ids=[id for id, _ in FIGURES])
def test_each_is_told_with_its_figures_at_7000_ft(id, figures):
    text = text_of(noted(id))
    assert [figure for figure in figures if figure not in text] == [], text
    assert "None" not in text


def test_every_piece_of_equipment_was_looked_at():
    assert {id for id, _ in FIGURES} == set(equipment.ADVICE)


@pytest.mark.parametrize("id", equipment.ADVICE)
def test_advice_names_known_sources_and_levels(id):
    part = noted(id)
    assert part.sources
    named = {*part.sources, *(source for caution in part.cautions for source in caution.sources)}
    assert named <= set(sources())
    assert {caution.level for caution in part.cautions} <= {"stop", "warn", "note"}
    assert all(caution.sources for caution in part.cautions)


@pytest.mark.parametrize("id", equipment.ADVICE)
def test_at_sea_level_only_what_holds_everywhere_is_said(id):
    assert (noted(id, elevation_m=0.0) is not None) is (id in EVERYWHERE)


@pytest.mark.parametrize("id", ["grill", "smoker", "camp_stove", "gas_burner"])
def test_fire_warns_of_what_it_breathes_out(id):
    assert [caution.level for caution in noted(id).cautions] == ["warn"]


def test_marks_say_nothing_of_valve_stems_on_an_electric_cooker():
    assert "valve stem" not in text_of(noted("electric_pressure_cooker"))


@pytest.mark.parametrize(("elevation_m", "over"), [(1500, False), (2050, False), (2133.6, True), (3048, True)])
def test_espresso_flashes_where_water_boils_under_93_degrees(elevation_m, over):
    """93 degC is the usual brew water; water boils there at some 2,100 m."""
    part = noted("espresso_machine", elevation_m=elevation_m)
    assert ("flashes" in text_of(part)) is over
    assert len(part.steps) == over


def test_the_brew_water_stays_a_degree_under_the_boil():
    """Water boils at 194 degF (90 degC) at 10,000 ft, by the steam tables on the standard atmosphere."""
    assert "Set brew water to 192 °F" in text_of(noted("espresso_machine", elevation_m=3048))


def test_setting_up_a_kitchen_hears_of_all_of_it():
    assert noted("espresso_machine", method="roast") is None
    assert noted("espresso_machine", method="roast", topic="set_kitchen") is not None


def test_an_electric_cooker_for_jars_is_stopped_and_its_marks_are_not_told():
    part = noted("electric_pressure_cooker", topic="preserve")
    assert [caution.level for caution in part.cautions] == ["stop"]
    assert "LOW" not in text_of(part)
    assert part.cautions[0].sources
    assert set(part.cautions[0].sources) <= set(sources())


@pytest.mark.parametrize("id", ["electric_pressure_cooker", "espresso_machine", "combi_oven", "steam_kettle"])
def test_steam_rests_on_the_steam_tables(id):
    assert "iapws-r7-97" in noted(id).sources


def test_a_fitter_is_told_whole_percents():
    """2,000 m is 6,562 ft: 18.2 and 26.2 % by the rule."""
    assert "gives 18 to 26 % less heat" in text_of(noted("gas_burner", elevation_m=2000.0))


def test_where_espresso_does_not_flash_nothing_more_is_said():
    assert text_of(noted("espresso_machine", elevation_m=1500)).strip().endswith("so steam is a little weaker.")


@pytest.mark.parametrize(
    ("feet", "percents"), [(0, (0, 0)), (1999, (0, 0)), (3000, (4, 12)), (5000, (12, 20)), (10_000, (32, 40))]
)
def test_the_fuel_gas_rule_takes_four_percent_a_thousand_feet(feet, percents):
    assert equipment.derated_percent(feet * 0.3048) == pytest.approx(percents, abs=0.05)


@pytest.mark.parametrize(
    ("topic", "method", "about"),
    [
        ("preserve", "boil", "preserve"), ("preserve", None, "preserve"), ("pressure", None, "pressure_cook"),
        ("pressure", "steam", "steam"), ("time", "roast", "roast"), ("time", None, None),
    ],
)  # fmt: skip
def test_the_method_is_named_or_follows_from_the_topic(topic, method, about):
    assert equipment.method_of(Request(topic=topic, method=method)) == about


def test_equipment_has_its_name_or_goes_by_its_id():
    assert equipment.label("electric_pressure_cooker") == "electric pressure cooker"
    assert equipment.label("none_such") == "none_such"
