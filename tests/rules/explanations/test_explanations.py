"""Every explanation at every kind of elevation: fit to be read aloud, and its figures are the engine's."""

import math
import re
from dataclasses import dataclass
from typing import Any

import pytest

from assistant.replies.sentences import worded
from assistant.replies.worded import answer
from rules import explanations
from rules.book import Case
from rules.errors import UnknownWord
from rules.explanations import pace
from rules.model import Caution, Figure, Request
from rules.physics import kinetics, water
from rules.physics.units import round_to
from rules.say import Say, duration, number
from rules.topics import why

NAMES = sorted(why.rows())
ELEVATIONS_M = (0.0, 2133.6, -400.0, 5400.0)
KITCHENS = [(elevation_m, units) for elevation_m in ELEVATIONS_M for units in ("us", "metric")]


@dataclass(frozen=True)
class Told:
    """An explanation in words."""

    line: str
    paragraph: str
    equations: str
    figures: tuple[Figure, ...]
    cautions: tuple[Caution, ...]

    @property
    def words(self) -> str:
        return f"{self.line} {self.paragraph} {self.equations}"


def explained(name: str, elevation_m: float, units: str = "us", **more: Any) -> Told:
    part = why.explained(why.rows()[name], Case(Request(elevation_m=elevation_m, units=units, **more)))
    texts = (worded(words, units) for words in (part.headline, part.because, part.maths))
    return Told(*texts, part.figures, part.cautions)


def sentences(text: str) -> int:
    return len(re.findall(r"[.?](?:\s|$)", text))


@pytest.mark.parametrize(("elevation_m", "units"), KITCHENS)
@pytest.mark.parametrize("name", NAMES)
def test_fit_to_be_read_aloud(name: str, elevation_m: float, units: str) -> None:
    told = explained(name, elevation_m, units)
    assert sentences(told.line) == 1
    assert len(told.line) < 200
    assert 3 <= sentences(told.paragraph) <= 6
    assert len(told.paragraph) < 900
    assert told.equations
    assert told.figures
    for text in (told.line, told.paragraph, told.equations, *(worded(c.text, units) for c in told.cautions)):
        assert text.endswith(".")
        assert not re.search(r"[!{}]|  | \.|\bnan\b|\binf\b|None", text)


@pytest.mark.parametrize("name", NAMES)
def test_at_sea_level_no_word_says_that_it_is_high(name: str) -> None:
    told = explained(name, 0.0)
    assert "under sea level" not in told.paragraph
    assert not re.search(r"\bat 0 ft|\b0 ft\b", told.words)


@pytest.mark.parametrize("name", NAMES)
def test_nothing_pretends_that_an_example_is_the_askers_kitchen(name: str) -> None:
    told = explained(name, 1524.0)
    assert not re.search(r"\bup here\b|\byour kitchen\b|\byour elevation\b", f"{told.line} {told.paragraph}")


def forms(figure: Figure, say: Say) -> set[str]:
    """The ways in which a figure may stand in a sentence or an equation."""
    value = figure.value
    decimals = {f"{value:,.{digits}f}" for digits in range(4)} | {f"{value:.{digits}f}" for digits in range(4)}
    match figure.unit:
        case "degC":
            return {say.temp(value), say.oven(value), f"{value:.1f} °C", f"{value:.2f} °C"}
        case "K":
            return {say.temp_drop(value), *(f"{value:.{d}f} °C" for d in (1, 2, 3))}
        case "kPa":
            return {say.pressure(value * 1000)}
        case "ml":
            return {say.volume(value)}
        case "min":
            return {duration(value)}
        case "percent":
            return {f"{number(value, 0)} %", *decimals}
        case _:
            return decimals


@pytest.mark.parametrize(("elevation_m", "units"), KITCHENS)
@pytest.mark.parametrize("name", NAMES)
def test_every_figure_stands_in_the_words(name: str, elevation_m: float, units: str) -> None:
    told = explained(name, elevation_m, units)
    text = told.words
    for figure in told.figures:
        assert math.isfinite(figure.value)
        assert any(form in text for form in forms(figure, Say(units))), figure


@pytest.mark.parametrize("elevation_m", ELEVATIONS_M)
@pytest.mark.parametrize("name", NAMES)
def test_figures_that_a_method_gives_too_are_the_same(name: str, elevation_m: float) -> None:
    def by(method: str, dish_class: str) -> dict[str, float]:
        request = Request(topic="time", method=method, dish_class=dish_class, elevation_m=elevation_m)
        return {f.id: f.value for f in answer(request).figures}

    boil, braise = by("boil", "pasta"), by("braise", "collagen_cut")
    pressure = by("pressure_cook", "collagen_cut")
    known = {
        "boiling_point": boil["boiling_point"],
        "liquid_temperature": braise["liquid_temperature"],
        "oven": braise["oven"],
    }
    if name != "canning_pressure":
        known["inside_temperature"] = pressure["inside_temperature"]
    for figure in explained(name, elevation_m).figures:
        if figure.id in known:
            assert figure.value == pytest.approx(known[figure.id], abs=0.006)


PACES = {
    "pasta_takes_longer": "pasta",
    "beans_stay_hard": "dried_bean",
    "rice_stays_firm": "rice",
    "potatoes_take_longer": "starchy_root",
    "braise_longer": "collagen_cut",
    "stock_longer": "stock",
    "steaming_no_faster": "tender_vegetable",
}


@pytest.mark.parametrize(("name", "dish_class"), PACES.items())
def test_the_pace_in_the_words_is_that_of_the_softening_table(name: str, dish_class: str) -> None:
    case = Case(Request(elevation_m=2133.6))
    soft = kinetics.softening(dish_class)
    low, high = (
        kinetics.rate_factor(case.here.boiling_c, case.sea.boiling_c, z) for z in (soft.z_high_k, soft.z_low_k)
    )
    if high >= 1.9:
        told = f"{number(round_to(low, 0.1))} to {number(round_to(high, 0.1))} times as long"
    else:
        told = f"{number(round_to(low * 100 - 100, 5))} to {number(round_to(high * 100 - 100, 5))} % longer"
    explanation = explained(name, 2133.6)
    assert told in f"{explanation.line} {explanation.paragraph}"


def test_the_braise_is_the_braise_of_the_method() -> None:
    request = Request(topic="time", method="braise", dish="short ribs", dish_class="collagen_cut", elevation_m=2133.6)
    time = answer(request).figure("cook_time")
    assert time is not None
    assert time.low is not None
    assert time.high is not None
    assert f"{duration(time.low)} to {duration(time.high)}" in explained("braise_longer", 2133.6).paragraph


def test_a_lid_adds_next_to_nothing_to_the_boil() -> None:
    case = Case(Request(elevation_m=2133.6))
    lid_pa = 1.0 * 9.80665 / 0.06
    added_k = water.saturation_temp_c(case.here.pressure_pa + lid_pa) - case.here.boiling_c
    assert added_k < 0.1
    assert f"{added_k:.2f} °C of boiling point" in explained("lid_matters", 2133.6).words


def test_salt_needed_is_never_claimed_beyond_where_the_law_holds() -> None:
    assert "about 95 g in every litre, saltier than the sea" in explained("salt_in_water", 500).paragraph
    assert "more than 5 times as salty as the sea" in explained("salt_in_water", 2133.6).paragraph


def test_beans_below_their_threshold_are_told_to_the_pressure_cooker() -> None:
    threshold_c = kinetics.softening("dried_bean").threshold_c
    assert threshold_c is not None
    above, below = (water.elevation_from_boiling_m(threshold_c + k) for k in (-0.2, 0.2))
    assert "use a pressure cooker" in explained("beans_stay_hard", above).line
    assert "times as long" in explained("beans_stay_hard", below).line


def test_a_reading_that_the_cook_gives_is_explained() -> None:
    told = explained("full_boil_reading", 2133.6, temperature_c=92.22)
    height = Say("us").elevation(water.elevation_from_boiling_m(92.22))
    assert f"A true reading of 198 °F (92 °C) at a full boil belongs to about {height}." in told.paragraph


def test_a_barometer_counts_before_the_standard_air() -> None:
    told = explained("water_boils_cooler", 2133.6, pressure_pa=80_000)
    assert Say("us").temp(water.saturation_temp_c(80_000)) in told.line
    assert "as measured" in told.equations


def test_words_for_paces() -> None:
    soft = kinetics.softening("pasta")
    assert worded(pace.told(pace.Pace(soft, 2.37, 2.48, 2.78)), "us") == "2.4 to 2.8 times as long"
    assert worded(pace.told(pace.Pace(soft, 0.91, 0.95, 0.97)), "us") == "3 to 9 % less time"
    assert worded(pace.told(pace.Pace(soft, 1.041, 1.042, 1.043)), "us") == "about 4 % longer"


def test_a_name_that_nothing_has_is_refused_with_the_nearest() -> None:
    with pytest.raises(UnknownWord, match="boils"):
        explanations.value("boil_s")
    with pytest.raises(UnknownWord, match="boiling_point"):
        explanations.figure("boiling_points")


DANGEROUS = ("pressure_cooker_helps", "pressure_cooker_cooler", "candy_hard", "fat_turned_down", "canning_longer")
DANGEROUS += (
    "canning_pressure",
    "canning_tables",
    "jam_sets_cooler",
    "slow_cooker_slow",
    "steam_burns",
    "burners_weak",
)


@pytest.mark.parametrize("name", DANGEROUS)
def test_what_can_hurt_somebody_carries_a_warning(name: str) -> None:
    assert any(c.level == "warn" for c in explained(name, 2133.6).cautions)


@pytest.mark.parametrize("elevation_m", ELEVATIONS_M)
def test_canning_is_explained_without_a_time_or_a_setting_of_its_own(elevation_m: float) -> None:
    for name in ("canning_longer", "canning_tables"):
        assert not re.search(r"\d+ min\b|psi", explained(name, elevation_m).words)
    gauges = set(re.findall(r"([\d.]+) psi", explained("canning_pressure", elevation_m).words))
    assert gauges == {"10"}
