"""Replies of trainees as they type them."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.drill.reading import attempted, read
from assistant.drill.wording import hint, in_words
from assistant.drill.words import catalogue, wanted
from rules import drill

DEGREES, MINUTES = "boiling.point", "timing.pasta"


def ask(name, units="us", seed=1):
    theme, _, kind_name = name.partition(".")
    kind = next(kind for kind in drill.kinds_of(theme) if kind.name == kind_name)
    return in_words(drill.make_question(seed, theme, kind, 1, units))


@pytest.mark.parametrize(
    ("name", "units", "text", "value"),
    [
        (DEGREES, "us", "199 F", 92.78),
        (DEGREES, "us", "93 °C", 93),
        (DEGREES, "us", "about 199 degrees", 92.78),
        (DEGREES, "us", "It's around 199°F.", 92.78),
        (DEGREES, "us", "i think 199", 92.78),
        (DEGREES, "metric", "93", 93),
        (DEGREES, "metric", "93,5", 93.5),
        (DEGREES, "us", "one ninety nine", 92.78),
        (DEGREES, "us", "198 to 200 F", (92.22, 93.33)),
        ("boiling.fall", "us", "13", 7.22),
        ("boiling.fall", "us", "13 F", 7.22),
        ("boiling.fall", "us", "7 C", 7),
        ("boiling.fall", "metric", "about 7 degrees cooler", 7),
        ("boiling.elevation", "us", "7,000 ft", 2133.6),
        ("boiling.elevation", "us", "7k", 2133.6),
        ("boiling.elevation", "us", "2130 m", 2130),
        ("boiling.elevation", "metric", "2100", 2100),
        ("boiling.same_pressure", "us", "13.5 psi", 13.5),
        ("boiling.same_pressure", "us", "13.5", 13.5),
        ("boiling.same_pressure", "metric", "93 kPa", 13.49),
        (MINUTES, "us", "about 12 min", 12),
        (MINUTES, "us", "12", 12),
        (MINUTES, "us", "12-14 minutes", (12, 14)),
        ("timing.braised", "us", "4 hours", 240),
        ("timing.braised", "us", "3 h 45", 225),
        ("timing.braised", "us", "three and a half hours", 210),
        ("timing.braised", "us", "3½ hours", 210),
        ("safety.cool_first", "us", "2", 120),
        ("safety.cool_first", "us", "2 hours", 120),
        ("safety.cool_first", "us", "120 min", 120),
        ("baking.powder", "us", "1 1/2 tsp", 1.5),
        ("baking.powder", "us", "1½", 1.5),
        ("baking.powder", "us", "3/4 teaspoon", 0.75),
        ("baking.liquid", "us", "2 to 4 tbsp", (2, 4)),
        ("baking.liquid", "us", "3 tablespoons per cup", 3),
        ("baking.yeast", "us", "25 %", 25),
        ("baking.yeast", "us", "25 percent", 25),
        ("baking.gas", "us", "1.3 times", 1.3),
    ],
)
def test_a_figure_is_read_in_the_unit_of_the_question(name, units, text, value):
    said = read(ask(name, units), text)
    assert said.meaning == "answer"
    assert said.given == pytest.approx(value, abs=0.01)


def test_a_bare_figure_in_the_other_degrees_counts_where_it_is_right():
    question = ask(DEGREES)
    celsius = round(question.answer)
    assert drill.grade(question, read(question, str(celsius)).given).right
    assert not drill.grade(question, read(question, str(celsius + 5)).given).right


def test_a_difference_in_other_degrees_is_not_taken_for_the_one_asked():
    question = ask("boiling.fall", seed=4)
    assert not drill.grade(question, read(question, str(round(question.answer))).given).right
    assert drill.grade(question, read(question, f"{round(question.answer)} C").given).right


@pytest.mark.parametrize(
    ("name", "text"),
    [
        (DEGREES, "12 min"),
        (DEGREES, "how hot is it at 9,000 ft"),
        (DEGREES, "and at 9,000?"),
        (DEGREES, "hot"),
        (DEGREES, "yes"),
        (DEGREES, "199 and 201 and 203"),
        (DEGREES, "boil 3 potatoes"),
        (MINUTES, "199 F"),
        (MINUTES, "what about rice for 12 min"),
        (MINUTES, "😀"),
    ],
)
def test_what_is_no_such_figure_is_not_read(name, text):
    assert read(ask(name), text).meaning == "unread"


@pytest.mark.parametrize(
    ("text", "word"),
    [("yes", "yes"), ("Y", "yes"), ("Yep.", "yes"), ("no", "no"), ("Nope!", "no"), ("no, it doesn't", "no"),
     ("No, because steam is no hotter", "no"), ("yes, of course", "yes")],
)  # fmt: skip
def test_yes_and_no(text, word):
    assert read(ask("boiling.steam"), text).given == word


@pytest.mark.parametrize("text", ["b", "B", "(b)", "b.", "answer b", "option b", "it is b"])
def test_a_letter(text):
    assert read(ask("baking.whites"), text).given == "b"


def test_the_letter_a_is_not_the_article():
    question = ask("boiling.weather")
    assert read(question, "a").given == "a"
    assert read(question, "option a").given == "a"
    assert read(question, "a little").meaning == "unread"


def test_an_option_by_its_words():
    question = ask("baking.whites")
    assert read(question, "soft peaks").given == question.answer
    assert read(question, question.options[0]).given == "a"
    assert read(question, "e").meaning == "unread"


@pytest.mark.parametrize("text", ["b a c", "bac", "b, a, c", "B then A then C", "b a and c"])
def test_an_order(text):
    assert read(ask("baking.first_change"), text).given == "bac"


@pytest.mark.parametrize("text", ["b a", "b a c d", "b b c", "abc abc"])
def test_letters_that_are_no_order(text):
    assert read(ask("baking.first_change"), text).meaning == "unread"


@pytest.mark.parametrize(
    ("text", "meaning"),
    [("stop", "stop"), ("That's enough.", "stop"), ("next", "pass"), ("I don't know", "pass"), ("skip it", "pass"),
     ("say it again", "again"), ("", "unread")],
)  # fmt: skip
def test_words_about_the_drill(text, meaning):
    for name in (DEGREES, "boiling.steam", "baking.whites", "baking.first_change"):
        assert read(ask(name), text).meaning == meaning


@pytest.mark.parametrize("theme", drill.THEMES)
def test_the_right_answer_as_it_is_shown_is_read_as_right(theme):
    for kind in drill.kinds_of(theme):
        for units in ("us", "metric"):
            for seed in range(3):
                question = in_words(drill.make_question(seed, theme, kind, 1, units))
                for text in shown(question):
                    assert drill.grade(question, read(question, text).given).right, (question.text, text)
                assert hint(question)


def shown(question):
    """The answer as somebody types it."""
    if question.form in ("choice", "yes_no", "order"):
        return (question.answer, question.answer.upper())
    first = {"degC": "{:.4f} C", "K": "{:.4f} C", "min": "{:.4f} min", "psi": "{:.4f} psi", "m": "{:.4f} m",
             "tsp": "{:.4f} tsp", "tbsp": "{:.4f} tbsp"}.get(question.unit, "{:.4f}")  # fmt: skip
    return (first.format(question.answer), f"about {first.format(question.answer)}")


@settings(max_examples=80, deadline=None)
@given(st.text(max_size=80))
def test_nothing_that_is_typed_breaks_it(text):
    for name in (DEGREES, MINUTES, "boiling.steam", "baking.whites", "baking.first_change", "baking.powder"):
        said = read(ask(name), text)
        assert (said.given is not None) == (said.meaning == "answer")
    attempted(text)
    wanted(text)


@pytest.mark.parametrize("text", ["12 min", "199", "b", "yes", "about 3/4 cup", "b a c"])
def test_an_attempt_at_an_answer(text):
    assert attempted(text)


@pytest.mark.parametrize(
    "text", ["how long to boil pasta", "short ribs", "in the pressure cooker", "thanks", "", "why"]
)
def test_something_else_altogether(text):
    assert not attempted(text)


@pytest.mark.parametrize(
    ("text", "themes", "seed"),
    [
        ("Quiz me on altitude", (), None),
        ("quiz me", (), None),
        ("Quiz me on baking, please.", ("baking",), None),
        ("test me on food safety", ("safety",), None),
        ("can you drill me on boiling and safety", ("boiling", "safety"), None),
        ("quiz me on baking, set 12", ("baking",), 12),
        ("another quiz", (), None),
        ("Please give me a quiz about bread", ("baking",), None),
    ],
)
def test_a_drill_that_is_asked_for(text, themes, seed):
    heard = wanted(text)
    assert (heard.themes, heard.seed) == (themes, seed)


@pytest.mark.parametrize(
    "text",
    ["how do I test meat", "test the thermometer", "drill a hole in the lid", "how long to boil pasta at 7,000 ft",
     "is it a test method", "test meat with a probe", ""],
)  # fmt: skip
def test_what_asks_for_no_drill(text):
    assert wanted(text) is None


def test_the_words_of_the_lexicon_do_not_contradict_each_other():
    rows = catalogue()
    assert set(rows) == {"start", "alone", "yes", "no", "pass", "stop", "again", "filler", "asks", "themes", "named",
                         "numbered", "lettered", "each_cup", "hint", "why"}  # fmt: skip
    words = [word for listed in rows["themes"].values() for word in listed]
    assert len(words) == len(set(words))
