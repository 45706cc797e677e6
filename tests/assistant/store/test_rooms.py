"""What is kept comes back as it was, in SQLite and in PostgreSQL alike."""

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta, timezone

import pytest

from assistant.dialogue.timer import Timer
from assistant.store import batches, conversations, keys, kitchens, open_store, progress, timers
from assistant.store.batches import Batch
from assistant.store.conversations import Utterance
from assistant.store.database import Store
from assistant.store.kitchens import KitchenExists, SavedKitchen, UnknownKitchen
from assistant.store.progress import DrillAnswer
from rules.errors import OutOfRange

NOON = datetime(2026, 3, 7, 12, 0, tzinfo=UTC)
LODGE = SavedKitchen(
    name="Timberfold Lodge",
    elevation_m=2133.6,
    place="top of the pass",
    units="metric",
    equipment=("pressure_cooker", "convection_oven"),
    barometer_offset_pa=-120.5,
    thermometer_offset_c=0.75,
)
BAKERY = SavedKitchen(name="Bakery", elevation_m=1615.44)


def test_a_kitchen_comes_back_as_it_was(store: Store) -> None:
    kitchens.add(store, LODGE)
    assert kitchens.named(store, " timberfold  LODGE") == replace(LODGE, in_use=True)


def test_the_first_kitchen_is_in_use_until_another_is_chosen(store: Store) -> None:
    assert kitchens.in_use(store) is None
    kitchens.add(store, LODGE)
    kitchens.add(store, BAKERY)
    assert kitchens.in_use(store) == replace(LODGE, in_use=True)
    kitchens.use(store, "bakery")
    assert [(k.name, k.in_use) for k in kitchens.every(store)] == [("Bakery", True), ("Timberfold Lodge", False)]
    kitchens.use(store, None)
    assert kitchens.in_use(store) is None


def test_removing_the_kitchen_in_use_leaves_none_in_use(store: Store) -> None:
    kitchens.add(store, LODGE)
    kitchens.add(store, BAKERY)
    kitchens.remove(store, "TIMBERFOLD LODGE")
    assert kitchens.in_use(store) is None
    assert [k.name for k in kitchens.every(store)] == ["Bakery"]


def test_a_name_is_taken_once_unless_replaced(store: Store) -> None:
    kitchens.add(store, LODGE)
    with pytest.raises(KitchenExists, match="Timberfold Lodge"):
        kitchens.add(store, replace(LODGE, name="TIMBERFOLD lodge", elevation_m=0.0))
    kitchens.add(store, replace(LODGE, elevation_m=2100.0), replacing=True)
    assert kitchens.every(store) == (replace(LODGE, elevation_m=2100.0, in_use=True),)


def test_an_unknown_kitchen_names_the_nearest(store: Store) -> None:
    kitchens.add(store, BAKERY)
    for act in (kitchens.named, kitchens.use, kitchens.remove):
        with pytest.raises(UnknownKitchen, match="did you mean Bakery"):
            act(store, "Bakry")
    assert kitchens.in_use(store) is not None


@pytest.mark.parametrize("name", ["", "   ", "a\nb", "x" * 81])
def test_a_name_must_be_one(name: str) -> None:
    with pytest.raises(ValueError, match="needs a name"):
        SavedKitchen(name=name)


@pytest.mark.parametrize(
    "wrong",
    [
        {"elevation_m": 9000.0},
        {"elevation_m": float("nan")},
        {"barometer_offset_pa": float("inf")},
        {"thermometer_offset_c": -40.0},
    ],
)
def test_a_kitchen_with_impossible_figures_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(OutOfRange):
        replace(LODGE, **wrong)


def test_a_question_takes_the_kitchen_for_granted() -> None:
    kitchen = LODGE.taken_for_granted()
    assert (kitchen.name, kitchen.elevation_m, kitchen.units) == ("Timberfold Lodge", 2133.6, "metric")
    assert (kitchen.equipment, kitchen.thermometer_offset_c) == (LODGE.equipment, 0.75)


def test_kitchens_of_two_people_and_of_the_house_are_apart(store: Store) -> None:
    kitchens.add(store, LODGE, owner="anna")
    kitchens.add(store, replace(LODGE, elevation_m=1615.44), owner="bea")
    assert kitchens.every(store) == ()
    # the first kitchen of the house is in use, whatever people keep of their own
    assert kitchens.add(store, BAKERY).in_use
    assert [k.elevation_m for k in kitchens.every(store, "anna")] == [2133.6]
    assert kitchens.named(store, "timberfold lodge", "bea").elevation_m == 1615.44
    kitchens.remove(store, "timberfold lodge", "anna")
    assert kitchens.every(store, "anna") == ()
    assert [k.name for k in kitchens.every(store, "bea")] == ["Timberfold Lodge"]
    with pytest.raises(UnknownKitchen):
        kitchens.named(store, "timberfold lodge")


@pytest.mark.parametrize("owner", ["%", "_", "ann"])
def test_an_owner_whose_name_begins_another_s_has_nothing_of_theirs(store: Store, owner: str) -> None:
    kitchens.add(store, LODGE, owner="anna")
    assert kitchens.every(store, owner) == ()


def test_batches_of_two_people_and_of_the_house_are_apart(store: Store) -> None:
    made = {
        owner: batches.add(store, Batch(recipe="butter cake", made_on=date(2026, 3, 7), note=owner), owner)
        for owner in ("", "anna", "bea")
    }
    for owner, batch in made.items():
        assert batches.every(store, owner) == batches.of_recipe(store, "Butter Cake", owner) == (batch,)
    assert not batches.remove(store, made["anna"].id, "bea")
    assert not batches.amend(store, replace(made["anna"], note="bea was here"), "bea")
    assert batches.by_id(store, made["anna"].id) is None
    assert batches.by_id(store, made["anna"].id, "anna") == made["anna"]


def test_a_conversation_comes_back_in_order(store: Store) -> None:
    conversations.begin(store, "table 4", "chat", NOON)
    said = [
        Utterance("cook", "how long to braise short ribs", NOON, {"topic": "time", "elevation_m": None}),
        Utterance("assistant", "What elevation are you at?", NOON + timedelta(seconds=1)),
        Utterance("cook", "7,000 ft, crème brûlée 🍮", NOON + timedelta(seconds=9, microseconds=123456)),
    ]
    conversations.say(store, "table 4", *said[:2])
    conversations.say(store, "table 4", said[2])
    assert conversations.said(store, "table 4") == tuple(said)
    assert conversations.said(store, "table 4", last=1) == (said[2],)


def test_text_that_no_database_can_keep_is_kept_as_near_as_can_be(store: Store) -> None:
    conversations.begin(store, "noise", "chat", NOON)
    conversations.say(store, "noise", Utterance("cook", "a\0b\ud800c", NOON))
    assert conversations.said(store, "noise")[0].text == "a?b?c"


def test_beginning_twice_resumes(store: Store) -> None:
    conversations.begin(store, "a", "chat", NOON)
    again = conversations.begin(store, "a", "web", NOON + timedelta(days=1))
    assert (again.front_end, again.started_at) == ("chat", NOON)


def test_the_latest_conversation_is_the_one_spoken_in_last(store: Store) -> None:
    assert conversations.latest(store, "chat") is None
    for name in ("a", "b", "silent"):
        conversations.begin(store, name, "chat", NOON)
    conversations.begin(store, "page", "web", NOON)
    for name in ("a", "b", "a", "page"):
        conversations.say(store, name, Utterance("cook", "hello", NOON))
    latest = conversations.latest(store, "chat")
    assert latest is not None
    assert latest.id == "a"


def test_forgetting_a_conversation_leaves_the_others(store: Store) -> None:
    for name in ("a", "b"):
        conversations.begin(store, name, "chat", NOON)
        conversations.say(store, name, Utterance("cook", name, NOON))
    conversations.forget(store, "a")
    assert conversations.said(store, "a") == ()
    assert [u.text for u in conversations.said(store, "b")] == ["b"]


def test_a_moment_keeps_its_instant_in_any_zone(store: Store) -> None:
    here = datetime(2026, 3, 7, 18, 30, tzinfo=timezone(timedelta(hours=-7)))
    conversations.begin(store, "a", "chat", here)
    assert conversations.begin(store, "a", "chat", NOON).started_at == here


def test_a_moment_without_a_zone_is_refused(store: Store) -> None:
    with pytest.raises(Exception, match="lacks a time zone"):
        conversations.begin(store, "a", "chat", datetime(2026, 3, 7))


def test_the_batch_log_of_a_recipe_is_in_the_order_of_baking(store: Store) -> None:
    change = {
        "what": "leavening",
        "way": "less",
        "from": {"value": 2, "unit": "tsp"},
        "to": {"value": 1.5, "unit": "tsp"},
    }
    second = Batch(
        recipe="Carrot Cake",
        made_on=date(2026, 3, 8),
        style="layer_cake",
        kitchen="Timberfold Lodge",
        elevation_m=2133.6,
        symptoms=("sank_in_the_middle",),
        changes=(change,),
        rating=4,
        note="still a little coarse",
    )
    first = Batch(recipe="carrot cake", made_on=date(2026, 3, 1), rating=2)
    kept = batches.add(store, second), batches.add(store, first)
    batches.add(store, Batch(recipe="Brownies", made_on=date(2026, 3, 2)))
    assert batches.of_recipe(store, "CARROT  cake") == kept[::-1]
    assert kept[0] == replace(second, id=kept[0].id)
    assert len(batches.every(store)) == 3
    assert batches.by_id(store, kept[0].id) == kept[0]
    assert batches.remove(store, kept[0].id)
    assert not batches.remove(store, kept[0].id)
    assert batches.by_id(store, kept[0].id) is None


@pytest.mark.parametrize("rating", [0, 6])
def test_a_rating_is_one_to_five(rating: int) -> None:
    with pytest.raises(OutOfRange):
        Batch(recipe="Carrot Cake", made_on=date(2026, 3, 1), rating=rating)


def test_timers_outlive_the_store_that_set_them(store: Store) -> None:
    beans = timers.add(store, Timer(name="beans", starts_at=NOON, ends_at=NOON + timedelta(minutes=90)))
    eggs = timers.add(store, Timer(name="eggs", dish="eggs", starts_at=NOON, ends_at=NOON + timedelta(minutes=9)))
    timers.add(store, Timer(name="rice", starts_at=NOON, ends_at=NOON, conversation="another"))
    store.close()
    assert timers.of_conversation(store, "") == (eggs, beans)


def test_a_timer_rings_once(store: Store) -> None:
    beans = timers.add(store, Timer(name="beans", starts_at=NOON, ends_at=NOON + timedelta(minutes=90)))
    assert timers.due(store, NOON + timedelta(minutes=89)) == ()
    late = NOON + timedelta(minutes=91)
    assert timers.due(store, late) == (beans,)
    assert timers.due(store, late, "another") == ()
    assert timers.announce(store, [beans.id]) == {beans.id}
    assert timers.due(store, late) == ()
    timers.move_end(store, beans.id, late + timedelta(minutes=5))
    assert [t.name for t in timers.due(store, late + timedelta(minutes=5))] == ["beans"]
    timers.remove(store, [beans.id])
    assert timers.of_conversation(store, "") == ()


def test_of_two_servers_that_see_a_timer_end_one_announces_it(store: Store) -> None:
    timers.add(store, Timer(name="beans", starts_at=NOON, ends_at=NOON))
    other = open_store(store.engine.url.render_as_string(hide_password=False))
    ids = [timer.id for own in (store, other) for timer in timers.due(own, NOON)]
    assert ids == [ids[0]] * 2
    assert timers.announce(store, ids[:1]) == set(ids)
    assert timers.announce(other, ids[1:]) == set()
    other.close()


def test_servers_that_begin_at_once_share_a_key_and_a_conversation(store: Store) -> None:
    url = store.engine.url.render_as_string(hide_password=False)
    others = [open_store(url) for _ in range(4)]
    with ThreadPoolExecutor(len(others)) as at_once:
        held = set(at_once.map(lambda own: keys.shared(own[1], "page", bytes([own[0]])), enumerate(others)))
        begun = set(at_once.map(lambda own: conversations.begin(own, "web-robin", "web", NOON), others))
    assert len(held) == 1
    assert held == {keys.shared(store, "page", b"late")}
    assert begun == {conversations.Conversation("web-robin", "web", NOON)}
    for own in others:
        own.close()


def test_progress_is_kept_per_name(store: Store) -> None:
    answers = [DrillAnswer("Robin", 2**40, f"q{n}", n % 2 == 0, NOON + timedelta(minutes=n)) for n in range(3)]
    for answer in answers:
        progress.record(store, answer)
    progress.record(store, DrillAnswer("Sam", 1, "q0", True, NOON))
    assert progress.of_trainee(store, "ROBIN") == tuple(answers)
