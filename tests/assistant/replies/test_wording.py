"""The text and the spoken line of whole answers."""

import json

import pytest

from assistant.replies.contract import as_json
from assistant.replies.worded import answer
from assistant.replies.wording import dress, sections
from rules import tables
from rules.catalogue import topics
from rules.model import Answer, Caution, Request, Unused

BRAISE = Request(
    text="how long to braise short ribs at 7,000 feet",
    topic="time",
    dish="short ribs",
    dish_class="collagen_cut",
    method="braise",
    elevation_m=2133.6,
    elevation_from="stated",
)


@pytest.fixture
def braise() -> Answer:
    return dress(answer(BRAISE))


def test_the_text_opens_with_the_answer(braise: Answer) -> None:
    first = braise.text.splitlines()[0]
    assert first.startswith("About 4 h (3 h 35 min to 4 h 40 min) for braising short ribs at 7,000 ft ")
    assert "7,000 ft" in first
    assert "sea level" in first


def test_the_text_has_its_parts_in_order(braise: Answer) -> None:
    marks = [braise.text.index(word) for word in ("\n- ", "\n1. ", "\nWhy: ", "\nTake care: ", "\nSources:")]
    assert marks == sorted(marks)


def test_one_line_is_one_line() -> None:
    brief = dress(answer(Request(**{**fields(BRAISE), "depth": 1})))
    assert "\n1. " not in brief.text
    assert brief.text.splitlines()[0] == dress(answer(BRAISE)).text.splitlines()[0]


def test_the_equations_come_at_depth_three() -> None:
    deep = dress(answer(Request(**{**fields(BRAISE), "depth": 3})))
    assert "T_sat" in deep.text
    assert "T_sat" not in dress(answer(BRAISE)).text


def test_a_missing_elevation_is_asked_for() -> None:
    asked = dress(answer(Request(**{**fields(BRAISE), "elevation_m": None, "elevation_from": None})))
    assert asked.missing == ("elevation",)
    assert "elevation" in asked.text.casefold()
    assert asked.text.endswith("?") or asked.text.endswith(".")


def test_an_impossible_elevation_is_asked_back_with_its_reason() -> None:
    doubt = Unused("elevation", "70,000 ft", "70,000 ft is above any kitchen. Did you mean 7,000 ft?")
    asked = dress(answer(Request(**{**fields(BRAISE), "elevation_m": None, "unused": (doubt,)})))
    assert asked.text == doubt.reason


def test_a_place_is_said_to_be_assumed() -> None:
    assert "from the place you named" in dress(answer(Request(**{**fields(BRAISE), "elevation_from": "place"}))).text


def test_the_spoken_line_has_words_for_symbols_and_one_caution(braise: Answer) -> None:
    assert "°" not in braise.spoken
    assert "ft" not in braise.spoken.split()
    stop = Caution("stop", "Do not can this in boiling water. Use a pressure canner.")
    spoken = dress(Answer(request=BRAISE, headline="No.", cautions=(stop,))).spoken
    assert spoken == "No. Do not can this in boiling water."


@pytest.mark.parametrize("topic", topics())
def test_every_topic_gives_a_reply_in_whole_sentences(topic: str) -> None:
    reply = dress(answer(Request(text="hello", topic=topic)))
    assert reply.text.strip()
    assert reply.spoken.strip()
    assert "!" not in reply.text


def test_the_contract_has_its_keys_and_is_json(braise: Answer) -> None:
    reply = json.loads(json.dumps(as_json(braise)))
    assert list(reply) == ["schema", "heard", "missing", "figures", "steps", "because", "cautions", "text", "spoken"]
    assert list(reply["heard"]) == [
        "text", "topic", "dish", "dish_class", "method", "elevation_m", "elevation_from", "from_elevation_m",
        "time_min", "elapsed_min", "temperature_c", "quantity", "portions",
    ]  # fmt: skip
    assert list(reply["figures"][0]) == ["id", "label", "value", "low", "high", "unit", "sea_level"]
    assert {level for c in reply["cautions"] for level in [c["level"]]} <= {"stop", "warn", "note"}
    assert all(b["sources"] for b in reply["because"])


def test_a_usual_reply_is_short_and_a_deep_one_has_it_all(braise: Answer) -> None:
    deep = dress(answer(Request(**{**fields(BRAISE), "depth": 3})))
    assert len(braise.text.split()) < 0.6 * len(deep.text.split())
    parts, whole = sections(braise), sections(deep)
    assert max(len(parts.figures), len(parts.steps)) <= 4
    assert len(parts.because) == 1
    assert len(parts.sources) <= 3
    assert len(whole.figures) == len(deep.figures) > len(parts.figures)
    assert braise.figures == deep.figures


def test_a_figure_that_the_headline_says_is_not_said_again(braise: Answer) -> None:
    parts = sections(braise)
    assert not any(line.startswith("Time here") for line in parts.figures)


def test_each_fact_stands_once(braise: Answer) -> None:
    """The oven and the extra liquid are told by the steps; the program still has both as figures."""
    assert {"oven", "extra_liquid"} <= {figure.id for figure in braise.figures}
    for told in ("325 °F", "6 tbsp"):
        assert braise.text.count(told) == 1


@pytest.mark.parametrize(
    "method", ["braise", "roast", "fry", "smoke", "pressure_cook", "slow_cook", "sous_vide", "grill"]
)
@pytest.mark.parametrize(
    ("dish", "dish_class"), [("short ribs", "collagen_cut"), ("turkey", "whole_bird"), ("pinto beans", "dried_bean")]
)
def test_a_usual_reply_is_twelve_lines_at_most(method: str, dish: str, dish_class: str) -> None:
    asked = Request(**{**fields(BRAISE), "method": method, "dish": dish, "dish_class": dish_class})
    assert len([line for line in dress(answer(asked)).text.splitlines() if line]) <= 12


def test_what_warns_is_shown_at_every_depth() -> None:
    fry = {**fields(BRAISE), "method": "fry", "dish": "doughnuts", "dish_class": "fried_dough"}
    for depth in (1, 2, 3):
        answered = dress(answer(Request(**{**fry, "depth": depth})))
        warned = [c.text for c in answered.cautions if c.level in ("warn", "stop")]
        assert warned
        assert all(text in answered.text for text in warned)


def test_sources_are_cited_short() -> None:
    """At full depth the basis stands beside a citation, only where nobody opened the source."""
    braise = dress(answer(Request(**{**fields(BRAISE), "depth": 3})))
    ids = [id for b in braise.because for id in b.sources]
    cited = sections(braise).sources
    assert "common practice" in cited
    for source in map(tables.source, ids):
        known = source.basis == "from memory" and source.id != "from-memory"
        assert (f"{source.short} (from memory)" if known else source.short) in cited
    assert not any(word in text for text in cited for word in ("reprint", "(common practice)", "(published"))


def test_front_ends_can_take_the_parts_one_by_one(braise: Answer) -> None:
    parts = sections(braise)
    assert all(line in braise.text for line in (parts.headline, *parts.figures, *parts.steps, *parts.because))


def fields(request: Request) -> dict[str, object]:
    return {name: getattr(request, name) for name in Request.__dataclass_fields__}
