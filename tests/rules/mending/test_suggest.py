"""One next change for everything that goes wrong, sized for the dish and the elevation; and how the log goes on."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.replies.sentences import worded
from rules.baking.change import WAYS, WHATS
from rules.errors import OutOfRange, UnknownWord
from rules.mending import Mending, Ranked, Trial, Tried, catalogue, suggest
from rules.recipe import IngredientLine, Recipe, Step, TempMark
from rules.tables import sources

FT = 0.3048
SANK = "sank_in_the_middle"
TOGETHER = st.sampled_from(sorted(catalogue()))


def as_tried(row: Ranked) -> Tried:
    c = row.change
    return Tried(
        what=c.what, way=c.way, rule=c.rule, item=c.item, from_value=c.from_value, from_unit=c.from_unit,
        to_value=c.to_value, to_unit=c.to_unit,
    )  # fmt: skip


def next_of(found: Mending) -> Ranked:
    assert found.next is not None
    return found.next


@pytest.mark.parametrize("elevation_ft", [-1000, 0, 5000, 9000, 14000])
@pytest.mark.parametrize("symptom", sorted(catalogue()))
def test_every_fault_has_one_next_change(symptom: str, elevation_ft: float) -> None:
    for dish_class in (None, "general", "water", *catalogue()[symptom].classes):
        for units in ("us", "metric"):
            found = suggest([symptom], dish_class=dish_class, elevation_m=elevation_ft * FT, units=units)
            first = next_of(found)
            assert worded(first.line, units).endswith(".")
            assert first.change.what in WHATS
            assert first.change.way in WAYS
            assert set(first.change.sources) <= set(sources())
            assert len({row.cause.id for row in found.causes}) == len(found.causes) >= 2


def test_powder_at_7000_ft() -> None:
    change = next_of(suggest([SANK], dish_class="layer_cake", elevation_m=7000 * FT)).change
    assert (change.what, change.way, change.from_value, change.to_value) == ("leavening", "less", 2.0, 1.5)
    assert change.to_unit == "tsp"


def test_the_published_order_settles_a_tie() -> None:
    found = suggest(["candy_grainy"], dish_class="candy")
    tied = [row for row in found.causes if row.points == found.causes[0].points]
    assert [row.cause.id for row in tied] == sorted(row.cause.id for row in tied)
    whats = [row.change.what for row in suggest([SANK], dish_class="layer_cake", elevation_m=7000 * FT).causes]
    assert whats.index("leavening") < whats.index("sugar") < whats.index("liquid")


def test_nothing_wrong_needs_nothing() -> None:
    assert suggest([]).next is None


def test_bad_input_is_named() -> None:
    with pytest.raises(UnknownWord):
        suggest(["sank_in_middle"])
    with pytest.raises(OutOfRange):
        suggest([SANK], elevation_m=9000)


def test_several_faults_add_up() -> None:
    one = suggest([SANK], dish_class="layer_cake")
    both = suggest([SANK, "crumb_coarse"], dish_class="layer_cake")
    assert next_of(both).points > next_of(one).points
    assert next_of(both).cause.id == "too_much_leavening"


# the recipe


def line(item: str, amount: float, unit: str, mass_g: float) -> IngredientLine:
    return IngredientLine(line=f"{amount:g} {unit} {item}", item=item, amount=amount, unit=unit, mass_g=mass_g)


def cake(powder_tsp: float, sugar_g: float) -> Recipe:
    return Recipe(
        title="Lodge butter cake",
        ingredients=(
            line("all-purpose flour", 2, "cup", 250), line("granulated sugar", sugar_g / 200, "cup", sugar_g),
            line("baking powder", powder_tsp, "tsp", powder_tsp * 4.6), line("butter", 0.5, "cup", 113),
            line("milk", 1, "cup", 244), line("egg", 2, "piece", 100),
        ),
        steps=(Step(text="Bake at 350 °F.", temperatures=(TempMark(8, 14, 176.67, 176.67, "degF", "oven"),)),),
    )  # fmt: skip


def test_the_formula_makes_a_cause_likelier() -> None:
    leavened = suggest([SANK], recipe=cake(4.0, 200), dish_class="layer_cake")
    sweet = suggest([SANK], recipe=cake(1.5, 380), dish_class="layer_cake")
    assert next_of(leavened).change.what == "leavening"
    assert next_of(sweet).change.what == "sugar"


def test_the_change_is_made_on_the_recipes_own_line() -> None:
    first = next_of(suggest([SANK], recipe=cake(4.0, 200), dish_class="layer_cake", elevation_m=7000 * FT))
    assert first.change.at == "ingredient 3"
    assert (first.change.from_value, first.change.to_value, first.change.to_unit) == (4.0, 3.0, "tsp")


def test_the_oven_is_set_from_the_recipes_setting() -> None:
    found = suggest(["pale"], recipe=cake(2, 200), dish_class="layer_cake", elevation_m=7000 * FT)
    change = next_of(found).change
    assert (change.what, change.way, change.from_value) == ("oven", "hotter", 176.7)
    assert 15 <= (change.to_value - 176.67) * 1.8 <= 25


def test_what_a_recipe_lacks_is_not_taken_from_it() -> None:
    whole = cake(2, 200)
    without = replace(whole, ingredients=tuple(i for i in whole.ingredients if i.item != "baking powder"))
    found = suggest([SANK], recipe=without, dish_class="layer_cake", elevation_m=7000 * FT)
    assert all(row.change.what != "leavening" for row in found.causes)


def test_soda_that_sour_milk_needs_stays() -> None:
    soda = line("baking soda", 0.5, "tsp", 2.3)
    sour = line("buttermilk", 1, "cup", 245)
    plain = tuple(i for i in cake(2, 200).ingredients if i.item not in ("baking powder", "milk"))
    found = suggest(["tastes_soapy"], recipe=Recipe(ingredients=(*plain, soda, sour)), dish_class="layer_cake",
                    elevation_m=7000 * FT)  # fmt: skip
    assert all(row.change.what != "leavening" for row in found.causes)


def test_beans_above_their_threshold_go_under_pressure() -> None:
    assert next_of(suggest(["beans_hard"], dish_class="dried_bean", elevation_m=0)).change.what == "time"
    assert next_of(suggest(["beans_hard"], dish_class="dried_bean", elevation_m=10_500 * FT)).change.what == "pressure"
    low = suggest(["beans_hard"], dish_class="dried_bean", elevation_m=10_500 * FT).causes[-1]
    assert low.cause.by == "boil"


# the log


def trial(*changes: Tried, rating: int | None = 2, symptoms: tuple[str, ...] = (SANK,)) -> Trial:
    return Trial(changes=changes, symptoms=symptoms, rating=rating)


def carried(*log: Trial) -> Mending:
    return suggest([SANK], dish_class="layer_cake", elevation_m=7000 * FT, log=log)


POWDER = Tried(
    what="leavening", way="less", item="baking powder", from_value=2, from_unit="tsp", to_value=1.5, to_unit="tsp"
)


def test_what_did_not_help_is_not_said_again() -> None:
    found = carried(trial(), trial(POWDER))
    assert next_of(found).change.what == "sugar"
    assert found.causes[-1].change.what == "leavening"
    assert "no difference" in worded(found.note, "us")


def test_what_helped_goes_half_a_step_further_from_where_it_is() -> None:
    found = carried(trial(), trial(POWDER, rating=3))
    change = next_of(found).change
    assert (change.what, change.way, change.from_value) == ("leavening", "less", 1.5)
    assert 1.0 < change.to_value < 1.5
    assert "helped" in worded(found.note, "us")


def test_what_helped_is_left_after_two_steps_further() -> None:
    first = next_of(carried(trial(rating=1)))
    log = [trial(rating=1), trial(as_tried(first), rating=2)]
    for rating in (3, 4):
        step = next_of(carried(*log))
        assert step.change.what == "leavening"
        log.append(trial(as_tried(step), rating=rating))
    assert next_of(carried(*log)).change.what != "leavening"


def test_what_hurt_goes_back_first() -> None:
    found = carried(trial(rating=3), trial(POWDER, rating=2))
    back = next_of(found)
    assert worded(back.line, "us") == "Go back to 2 tsp of baking powder from 1 1/2 tsp, and change nothing else."
    assert (back.change.way, back.change.to_value) == ("more", 2)
    after = carried(trial(rating=3), trial(POWDER, rating=2), trial(as_tried(back), rating=3))
    assert next_of(after).change.what == "sugar"


def test_two_changes_at_once_tell_nothing() -> None:
    sugar = Tried(what="sugar", way="less", item="sugar", from_value=1, from_unit="cup", to_value=0.75, to_unit="cup")
    found = carried(trial(), trial(POWDER, sugar, rating=4))
    assert "more than one thing" in worded(found.note, "us")
    assert next_of(found).change.what not in ("leavening", "sugar")


def test_fewer_faults_count_as_help_where_there_is_no_rating() -> None:
    before = trial(rating=None, symptoms=(SANK, "crumb_coarse"))
    assert "helped" in worded(carried(before, trial(POWDER, rating=None)).note, "us")


@settings(max_examples=60, deadline=None)
@given(
    symptom=TOGETHER,
    elevation_ft=st.sampled_from([0, 5000, 9000]),
    known=st.booleans(),
    ratings=st.lists(st.sampled_from([None, 1, 2, 3, 4, 5]), min_size=1, max_size=8),
)
def test_no_log_breaks_it(symptom: str, elevation_ft: int, known: bool, ratings: list[int | None]) -> None:
    dish_class = next(iter(catalogue()[symptom].classes), None) if known else None
    log: list[Trial] = [Trial(symptoms=(symptom,), rating=ratings[0])]
    for rating in ratings[1:]:
        row = next_of(suggest([symptom], dish_class=dish_class, elevation_m=elevation_ft * FT, log=log))
        assert row.change.to_value is None or row.change.to_unit == "K" or row.change.to_value >= 0
        log.append(Trial(changes=(as_tried(row),), symptoms=(symptom,), rating=rating))


@pytest.mark.parametrize("elevation_ft", [0, 9000])
@pytest.mark.parametrize("symptom", sorted(catalogue()))
def test_never_twice_in_a_row_what_was_tried_without_help(symptom: str, elevation_ft: float) -> None:
    log: list[Trial] = [Trial(symptoms=(symptom,), rating=2)]
    said: list[str] = []
    for _ in range(12):
        row = next_of(suggest([symptom], elevation_m=elevation_ft * FT, log=log))
        line = worded(row.line, "us")
        assert line not in said[-1:]
        said.append(line)
        log.append(Trial(changes=(as_tried(row),), symptoms=(symptom,), rating=2))
    assert len(set(said[:2])) == 2
