"""Memory to slots and back; the domain that Rasa is told of; memory in the store."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.dialogue import domain
from assistant.dialogue.memory import Memory, learn_kitchen, without_place
from assistant.dialogue.record import Record
from assistant.dialogue.slots import NAMES, BadSlot, memory_of, slots_of
from assistant.dialogue.tonight import Tonight
from assistant.dialogue.workbench import Baked, RecipeTalk, Run
from assistant.recipes.sheet import Entry, Sheet
from assistant.understanding.scene import Refusal, Scene
from rules.catalogue import topics
from rules.model import MISSING_WORDS, Kitchen, Quantity, Request, Unused
from rules.said import elevation, listed, sentences

ROOT = Path(__file__).parents[3]
FIGURES = st.none() | st.floats(min_value=-1e6, max_value=1e6)
WORDS = st.text(max_size=20)
REQUESTS = st.builds(
    Request,
    text=WORDS,
    topic=st.sampled_from(tuple(topics())),
    dish=st.none() | WORDS,
    elevation_m=FIGURES,
    elevation_from=st.sampled_from([None, "stated", "place", "boil_test"]),
    time_min=FIGURES,
    quantity=st.none() | st.builds(Quantity, st.floats(0, 1e6), WORDS),
    portions=st.none() | st.integers(1, 1000),
    units=st.sampled_from(["us", "metric"]),
    depth=st.integers(1, 3),
    equipment=st.lists(WORDS, max_size=3).map(tuple),
    unused=st.lists(st.builds(Unused, WORDS, WORDS, WORDS), max_size=3).map(tuple),
)
KITCHENS = st.builds(Kitchen, name=WORDS, elevation_m=FIGURES, units=st.sampled_from(["us", "metric"]))
REFUSALS = st.builds(Refusal, WORDS, *(st.lists(WORDS, max_size=3).map(tuple) for _ in range(3)))
SCENES = st.builds(
    Scene,
    danger=st.none() | WORDS,
    elevation_m=FIGURES,
    celsius=st.booleans(),
    dishes=st.lists(WORDS, max_size=3).map(tuple),
    refused=st.lists(REFUSALS, max_size=3).map(tuple),
)
MEMORIES = st.builds(
    Memory, request=st.none() | REQUESTS, asked=st.sampled_from([None, *MISSING_WORDS]), kitchen=KITCHENS, scene=SCENES
)


SHEETS = st.builds(
    Sheet,
    title=WORDS,
    ingredients=st.lists(st.builds(Entry, WORDS, WORDS), max_size=3).map(tuple),
    steps=st.lists(st.builds(Entry, WORDS), max_size=2).map(tuple),
)
TALKS = st.builds(
    RecipeTalk, sheet=SHEETS, question=REQUESTS, open=st.booleans(), portions=st.none() | st.integers(1, 99)
)
BAKED = st.builds(
    Baked,
    symptoms=st.lists(WORDS, max_size=2).map(tuple),
    changes=st.just(({"what": "sugar", "way": "less", "to": {"value": 1.5, "unit": "cup"}},)),
    elevation_m=FIGURES,
    formula=WORDS,
    id=st.integers(0, 9),
)
RUNS = st.builds(Run, title=WORDS, batches=st.lists(BAKED, min_size=1, max_size=3).map(tuple), kept=st.booleans())


@settings(deadline=None)
@given(TALKS, RUNS)
def test_a_recipe_and_batches_there_and_back(talk: RecipeTalk, run: Run) -> None:
    memory = Memory(talk=talk, run=run)
    assert memory_of(json.loads(json.dumps(slots_of(memory)))) == memory


@settings(deadline=None)
@given(st.builds(Tonight, covers=st.none() | st.integers(1, 999), service_time=st.none() | st.just("18:45")))
def test_the_service_that_is_talked_of_there_and_back(tonight: Tonight) -> None:
    memory = Memory(tonight=tonight)
    assert memory_of(json.loads(json.dumps(slots_of(memory)))) == memory


@settings(deadline=None)
@given(MEMORIES)
def test_there_and_back_through_json(memory: Memory) -> None:
    """Nothing is lost on the way through Rasa's tracker store."""
    assert memory_of(json.loads(json.dumps(slots_of(memory)))) == memory


def test_no_slots_are_a_new_conversation() -> None:
    """Rasa sends null for what has not been set."""
    assert memory_of({}) == memory_of(dict.fromkeys(NAMES)) == Memory()


@pytest.mark.parametrize(
    ("slots", "says"),
    [
        ({"request": "braise"}, '"request"'),
        ({"request": {"topic": 7}}, "topic"),
        ({"request": {"quantity": {"value": "four"}}}, "quantity.value"),
        ({"kitchen": {"units": "cubits"}}, "units"),
        ({"kitchen": []}, '"kitchen"'),
        ({"asked": "money"}, "money"),
        ({"asked": ["dish"]}, '"asked"'),
    ],
)
def test_a_slot_that_is_not_ours_is_named(slots: dict[str, object], says: str) -> None:
    """With what is wrong, and what to do."""
    with pytest.raises(BadSlot, match=says) as fault:
        memory_of(slots)
    assert "restart the conversation" in str(fault.value)


def test_the_files_for_rasa_are_those_of_the_catalogue() -> None:
    """Stale files: python -m assistant.contributing rasa-domain."""
    for name, text in domain.files().items():
        assert (ROOT / domain.FOLDER / name).read_text(encoding="utf-8") == text


def test_the_domain_has_an_intent_a_topic_and_our_slots() -> None:
    """Every topic can be routed, and every slot kept."""
    made = domain.domain()
    assert set(made["intents"]) == {*topics(), "nlu_fallback", "EXTERNAL_timer_up"}
    assert set(made["slots"]) == set(NAMES)
    assert not any(slot["influence_conversation"] for slot in made["slots"].values())


def test_another_elevation_makes_another_kitchen_and_the_same_does_not() -> None:
    """Its name goes with it; equipment is added to."""
    lodge = Kitchen(name="Timberfold Lodge", elevation_m=2133.6, equipment=("combi_oven",))
    same = learn_kitchen(lodge, Request(elevation_m=2133.6, equipment=("stovetop_pressure_cooker",)))
    assert same == replace(lodge, equipment=("combi_oven", "stovetop_pressure_cooker"))
    assert learn_kitchen(lodge, Request(elevation_m=1615.4)) == replace(lodge, name="", elevation_m=1615.4)


def test_without_place_nothing_of_the_place_is_left() -> None:
    """Units stay: they are the cook's."""
    request = Request(
        dish="rice", elevation_m=2133.6, elevation_from="stated", pressure_pa=78000.0, equipment=("combi_oven",),
        unused=(Unused("elevation", "70,000", "too high"), Unused("dish", "zorgon", "unknown")),
    )  # fmt: skip
    left = without_place(Memory(request=request, kitchen=Kitchen(elevation_m=2133.6, units="metric")))
    assert left.kitchen == Kitchen(units="metric")
    assert left.request == Request(dish="rice", unused=(Unused("dish", "zorgon", "unknown"),))


@pytest.mark.usefixtures("database")
def test_what_is_remembered_is_kept_with_the_utterance() -> None:
    """And read again by the next run."""
    complaints: list[str] = []
    first = Record.resume(new=False, warn=complaints.append)
    memory = Memory(request=Request(dish="short ribs"), asked="elevation", kitchen=Kitchen(units="metric"))
    first.keep("how long to braise short ribs", "What elevation are you at?", memory)
    first.close()
    again = Record.resume(new=False, warn=complaints.append)
    assert (again.id, again.memory(Kitchen())) == (first.id, memory)
    assert again.said_by_cook() == ("how long to braise short ribs",)
    again.close()
    assert not complaints


@pytest.mark.usefixtures("database")
def test_a_memory_that_cannot_be_read_starts_over_and_says_so() -> None:
    """As after a change of what a request holds."""
    from datetime import UTC, datetime

    from assistant.store import conversations

    complaints: list[str] = []
    record = Record.resume(new=True, warn=complaints.append)
    assert record.store is not None
    now = datetime.now(UTC)
    conversations.begin(record.store, record.id, "chat", now)
    conversations.say(
        record.store, record.id, conversations.Utterance("cook", "hello", now, {"kitchen": {"units": "cubits"}})
    )
    record.close()
    again = Record.resume(new=False, warn=complaints.append)
    kitchen = Kitchen(name="Timberfold Lodge", elevation_m=2133.6)
    assert again.memory(kitchen) == Memory(kitchen=kitchen)
    assert "starting over" in complaints[0]
    again.close()


def test_a_store_that_fails_half_way_is_said_once(database: str, tmp_path: Path) -> None:
    """The conversation goes on."""
    complaints: list[str] = []
    record = Record.resume(new=True, warn=complaints.append)
    record.keep("hello", "Hello.", Memory())
    for file in tmp_path.glob("simmerline.db*"):
        file.write_bytes(b"spoilt" * 1000)
    for _ in range(3):
        record.keep("hello", "Hello.", Memory())
    assert len(complaints) == 1
    assert "without memory" in complaints[0]
    assert record.rings(record.id) == ()


def test_a_reason_in_words_travels_too() -> None:
    """Also where it holds a quantity and another sentence."""
    named = sentences("understanding/unclaimed")("unknown-place", name="Zorgville")
    told = sentences("dialogue/made")("equipment", owned=listed(["a wok", elevation(2133.6), named], "commas"))
    memory = Memory(request=Request(unused=(Unused("elevation", "Zorgville", told),)))
    assert memory_of(json.loads(json.dumps(slots_of(memory)))) == memory
