"""Random input at every door, to find what breaks it. Run: python tests/bench/fuzz.py [MINUTES [SEED]]

Whatever is said, pasted or sent gets an answer or an error of ours, never another exception, and no input takes long.
What is found is printed with the smallest input that shows it. The API is tried by schemathesis against a server:
schemathesis run http://localhost:8080/programs/openapi.json --checks not_a_server_error
"""

from __future__ import annotations

import asyncio
import io
import json
import os
import random
import signal
import struct
import sys
import tempfile
import time
import tomllib
import traceback
import wave
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st
from rasa_sdk.executor import ActionNotFoundException
from rasa_sdk.interfaces import ActionExecutionRejection, ActionMissingDomainException

from assistant.answering import reply_to
from assistant.cli.ask import question_of
from assistant.dialogue.domain import ACTIONS, domain
from assistant.dialogue.embedded import Conversation
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.slots import memory_of
from assistant.errors import AssistantError
from assistant.planning import order_forms, plan_forms
from assistant.reading.reader import hear
from assistant.recipes.converting import convert_recipe
from assistant.replies.contract import as_json
from assistant.replies.recipe import forms as recipe_forms
from assistant.understanding import lexicon
from assistant.voice import wav
from assistant.web.asked import MenuAsked, ordered, scheduled
from rules.errors import RulesError
from rules.model import Kitchen

TESTS = Path(__file__).parents[1]
# processor time after which an input is told as slow, and after which it is given up [s]
SLOW_S, GIVEN_UP_S = 1.5, 20.0
A_ROUND = 60
NOW = datetime(2027, 3, 12, 9, tzinfo=ZoneInfo("America/Denver"))
TIMBERFOLD = Kitchen(elevation_m=2134.0)
EXPECTED = (AssistantError, RulesError)

# What inputs are made of


def _lines(file: str) -> list[dict[str, Any]]:
    return [json.loads(line) for line in (TESTS / "seen" / file).read_text(encoding="utf-8").splitlines()]


TALKS = [row["turns"] for row in _lines("conversations.jsonl")]
QUESTIONS = [row["text"] for row in _lines("asked.jsonl")] + [turn for turns in TALKS for turn in turns]
RECIPES = [path.read_text(encoding="utf-8") for path in sorted((TESTS / "assistant/recipes/samples").iterdir())] + [
    row["text"] for row in tomllib.loads((TESTS / "assistant/recipes/pasted.toml").read_text(encoding="utf-8"))["text"]
]
MENUS = [
    "Dinner at Timberfold Lodge\nCovers: 90\nService: Saturday 6:30 pm\nAt: 7000ft\nShort ribs 40%\nRoast chicken, 35\n"
    "Mashed potatoes (side) all\nGreen beans, 4 oz\nCarrot cake\n",
    "dish,course,share,covers,portion\nlasagna,main,60,,8 oz\nsalmon,main,40%,,\nrice,side,,90,\n",
]
UNITS = (
    "ft", "feet", "'", '"', "m", "km", "F", "°C", "K", "min", "mins", "hrs", "hours", "h", "s", "days", "psi", "bar",
    "hPa", "inHg", "g", "kg", "lb", "oz", "fl oz", "cups", "tsp", "tbsp", "qt", "gal", "ml", "L", "%", "x", "dozen",
    "pm", "o'clock", "covers", "servings", "inch", "cm", "Brix", "gas mark", "in. pan", "quarts",
)  # fmt: skip
ODD_FIGURES = (
    "1e999", "-1e999", "7e3", "1e-400", "nan", "inf", "0", "-0", "00", "½", "1½", "1/0", "0/0", "3/4", "1 1/2", "²",
    "٣", "一", "1,000,000", "1.000,5", "9" * 400, "0." + "0" * 400 + "1", "1:99", "25:61", "12:", "1-2-3", "5–3",
    "10 to 2", "1/2/3", "−4", "2027-02-30",
)  # fmt: skip
ODD_TEXT = (
    "\x00", "\ufeff", "\u202e", "\ud800", "\u2028", "\x85", "\r", "\t", "\xa0", "\u200b", "ﬁ", "İ", "ß", "é", "e\u0301",
    "🍳", "&nbsp;", "<b>", "</", "<!--", "{", "}", "{{", "{ $x }", "%s", "[", "]", "(", ")", "*", "\\", "\n\n",
    "---", "...", "?!", "|", "=", "#", "@", "://", "www.",
)  # fmt: skip
figures = st.one_of(
    st.integers(-3, 20_000).map(str),
    st.floats(allow_nan=False).map(str),
    st.floats(0, 500).map("{:.2f}".format),
    st.sampled_from(ODD_FIGURES),
)
measures = st.builds("{}{}{}".format, figures, st.sampled_from(("", " ", "-", " 1/2 ")), st.sampled_from(UNITS))
phrases = st.sampled_from(sorted(lexicon.phrase_book().phrases))
said_words = st.sampled_from(sorted({word for question in QUESTIONS for word in question.split()}))
characters = st.text(st.characters(), max_size=6)
pieces = st.one_of(said_words, said_words, phrases, figures, measures, st.sampled_from(ODD_TEXT), characters)
repeated = st.builds(lambda piece, times: piece * times, pieces, st.sampled_from((2, 3, 30, 400)))


@st.composite
def strung(draw: st.DrawFn) -> str:
    """Pieces of what cooks say and write, one after the other."""
    joint = st.sampled_from((" ", " ", " ", "", ", ", "\n", " - ", ". "))
    parts = draw(st.lists(st.tuples(st.one_of(pieces, pieces, pieces, pieces, repeated), joint), max_size=24))
    return "".join(part + join for part, join in parts)


@st.composite
def spoilt(draw: st.DrawFn, whole: list[str]) -> str:
    """A true text with parts of it cut out, doubled, put elsewhere or overwritten."""
    text = draw(st.sampled_from(whole))
    for _ in range(draw(st.integers(0, 4))):
        at, till = sorted((draw(st.integers(0, len(text))), draw(st.integers(0, len(text)))))
        piece = draw(st.one_of(pieces, st.just(text[at:till]), st.just(""), strung()))
        text = text[:at] + piece + text[draw(st.sampled_from((at, till))) :]
    return text


utterances = st.one_of(spoilt(QUESTIONS), strung())
talks = st.one_of(
    st.lists(utterances, min_size=2, max_size=6),
    st.tuples(st.sampled_from(TALKS), st.integers(0, 9), utterances).map(lambda t: [*t[0][t[1] :][:5], t[2]]),
)
recipe_texts = st.one_of(spoilt(RECIPES), spoilt(RECIPES), strung())
KEYS = (
    "@type", "@graph", "@id", "@context", "name", "headline", "recipeIngredient", "ingredients", "recipeInstructions",
    "step", "steps", "text", "itemListElement", "recipeYield", "prepTime", "cookTime", "totalTime", "mainEntity",
    "Recipe", "HowToStep", "HowToSection", "description",
)  # fmt: skip
leaves = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(),
    st.floats(),
    st.sampled_from(("Recipe", "HowToStep", "HowToSection", "PT40M", "P1Y", "PT", "12 rolls")),
    spoilt(["2 cups flour", "1 (14 oz) can tomatoes", "Bake 20 minutes at 400 F.", "Simmer 1 hour."]),
    measures,
    characters,
)
json_values = st.recursive(
    leaves,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.sampled_from(KEYS), inner, max_size=6),
    max_leaves=25,
)
json_recipes = st.builds(
    lambda base, more: json.dumps({**base, **more}),
    st.just({"@context": "https://schema.org", "@type": "Recipe", "name": "Rolls", "recipeIngredient": ["2 cups flour"],
             "recipeInstructions": "Bake 20 minutes at 400 F."}),
    st.dictionaries(st.sampled_from(KEYS), json_values, max_size=6),
)  # fmt: skip


@st.composite
def documents(draw: st.DrawFn) -> str:
    """JSON-LD, whole or broken, alone or in a page."""
    text = draw(json_recipes)
    if draw(st.booleans()):
        text = draw(spoilt([text]))
    if draw(st.booleans()):
        before, after = draw(st.sampled_from((("<html>", "</html>"), ("<div itemscope>" * 40, ""), ("<p>", "<!-- "))))
        text = f'{before}<script type="application/ld+json">{text}</script>{after}'
    return text


@st.composite
def recordings(draw: st.DrawFn) -> bytes:
    """WAV files, whole or broken."""
    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        out.setnchannels(draw(st.sampled_from((1, 1, 2))))
        out.setsampwidth(draw(st.sampled_from((2, 2, 1, 4))))
        out.setframerate(draw(st.sampled_from((16_000, 16_000, 8_000, 1))))
        out.writeframes(bytes(draw(st.sampled_from((0, 3, 6_400, 40_001, 960_000, 960_002)))))
    content = bytearray(file.getvalue())
    for _ in range(draw(st.integers(0, 4))):
        at = draw(st.integers(0, min(len(content) - 4, 60)))
        content[at : at + 4] = struct.pack("<I", draw(st.integers(0, 2**32 - 1)))
    return bytes(content[: draw(st.one_of(st.just(len(content)), st.integers(0, 80)))])


# The doors


def heard(text: str) -> None:
    """The reader of kitchen English."""
    hear(text)
    hear(text, ranges=False)


def asked(text: str) -> None:
    """One question; the same question gets the same answer, which JSON can hold."""
    answer = reply_to(text, kitchen=TIMBERFOLD)
    assert answer.text.strip()
    told = json.dumps(as_json(answer), allow_nan=False)
    assert told == json.dumps(as_json(reply_to(text, kitchen=TIMBERFOLD)), allow_nan=False)


def talked(turns: list[str]) -> None:
    """A conversation, whose memory is what its slots hold."""
    conversation = Conversation()
    for turn in turns:
        asyncio.run(conversation.say(turn))
        slots = json.loads(json.dumps(conversation.tracker.slots, allow_nan=False))
        assert memory_of(slots) == conversation.memory


def line_read(text: str) -> None:
    """A line of --jsonl."""
    with suppress(ValueError):
        question_of(text.encode("utf-8", "surrogatepass"))


def converted(text: str) -> None:
    """A recipe, to 7,000 ft, in every form."""
    with suppress(*EXPECTED):
        done = convert_recipe(text, to_elevation_m=2134.0)
        for name in recipe_forms.names():
            recipe_forms.form(name).write(done, "us")


def converted_bytes(text: str) -> None:
    """A recipe as bytes, scaled and at another elevation."""
    with suppress(*EXPECTED):
        done = convert_recipe(text.encode("utf-8", "replace"), to_elevation_m=0.0, servings=90, units="metric")
        recipe_forms.form("json").write(done, "metric")


def planned(text: str) -> None:
    """A menu, ordered for and worked back from service."""
    with suppress(*EXPECTED):
        menu = MenuAsked(menu=text.encode("utf-8", "replace").decode(), kitchen=TIMBERFOLD, covers=90, serve="6:30 pm")
        sheet, _ = ordered(menu)
        for name in ("csv", "json", "print", "text"):
            order_forms.form(name).write(sheet, "us")
        plan, *_ = scheduled(menu, NOW)
        for name in ("csv", "ics", "json", "text"):
            plan_forms.form(name).write(plan, "us")


def called(call: Any) -> None:
    """A call of Rasa's."""
    with suppress(ActionExecutionRejection, ActionNotFoundException, ActionMissingDomainException):
        asyncio.run(KitchenExecutor().run(call))


def listened(content: bytes) -> None:
    """A recording."""
    with suppress(*EXPECTED):
        wav.read(content)


def _slots() -> list[dict[str, Any]]:
    """What trackers hold after talks that are true."""
    held = []
    for turns in TALKS[:12]:
        conversation = Conversation()
        for turn in turns[:4]:
            asyncio.run(conversation.say(turn))
        held.append(json.loads(json.dumps(conversation.tracker.slots)))
    return held


@st.composite
def calls(draw: st.DrawFn, held: list[dict[str, Any]]) -> Any:
    """Webhook calls with some of what they hold put by something else."""
    slots = dict(draw(st.sampled_from(held)))
    for name in draw(st.lists(st.sampled_from(sorted(slots)), max_size=3)):
        slots[name] = draw(st.one_of(json_values, st.just(_one_changed(draw, slots[name]))))
    tracker = {
        "sender_id": draw(st.one_of(characters, st.none())),
        "slots": slots,
        "latest_message": {"text": draw(utterances)},
        "events": [],
    }
    if draw(st.booleans()):
        tracker[draw(st.sampled_from(sorted(tracker)))] = draw(json_values)
    action = draw(st.one_of(st.sampled_from(ACTIONS), characters))
    call = {"next_action": action, "tracker": tracker, "domain": domain()}
    if draw(st.integers(0, 4)) == 0:
        call[draw(st.sampled_from(sorted(call)))] = draw(json_values)
    return call


def _one_changed(draw: st.DrawFn, value: Any) -> Any:
    """A slot with one value in it, however deep, put by another."""
    if isinstance(value, dict) and value:
        name = draw(st.sampled_from(sorted(value)))
        return {**value, name: _one_changed(draw, value[name])}
    if isinstance(value, list) and value:
        at = draw(st.integers(0, len(value) - 1))
        return [*value[:at], _one_changed(draw, value[at]), *value[at + 1 :]]
    return draw(leaves)


# The run


class GivenUp(Exception):
    """An input that took too long."""


@dataclass
class Door:
    """A door, what is tried at it, and what came of it: faults by where they arose, slow inputs by their seconds."""

    name: str
    enter: Callable[[Any], None]
    inputs: st.SearchStrategy[Any]
    tried: int = 0
    faults: dict[str, str] = field(default_factory=dict)
    slow: list[tuple[float, str]] = field(default_factory=list)

    def one_round(self, number: int) -> None:
        """Try some inputs; a fault that is known does not stop it, a new one is made small and told."""
        last: dict[str, str] = {}

        @seed(number)
        @settings(max_examples=A_ROUND, deadline=None, database=None, phases=(Phase.generate, Phase.shrink),
                  suppress_health_check=list(HealthCheck))  # fmt: skip
        @given(self.inputs)
        def attempt(value: Any) -> None:
            self.tried += 1
            before = time.process_time()
            signal.setitimer(signal.ITIMER_VIRTUAL, GIVEN_UP_S)
            try:
                self.enter(value)
            except GivenUp:
                pass
            except Exception as fault:
                at = _where(fault)
                if at not in self.faults:
                    last.update(at=at, told=f"{fault!r:.200} of {value!r:.3000}")
                    raise
            finally:
                signal.setitimer(signal.ITIMER_VIRTUAL, 0)
                taken_s = time.process_time() - before
                if taken_s > SLOW_S:
                    self.slow = sorted([*self.slow, (taken_s, repr(value)[:4000])], reverse=True)[:3]

        try:
            attempt()
        except Exception:
            if not last:
                raise
            self.faults[last["at"]] = last["told"]
            print(f"{self.name}: {last['at']}\n    {last['told']}", flush=True)


def _where(fault: BaseException) -> str:
    """What was raised, and the innermost lines of ours that it came through."""
    frames = traceback.extract_tb(fault.__traceback__)
    ours = [frame for frame in frames if {"assistant", "rules"} & set(Path(frame.filename).parts)]
    lines = (f"{Path(frame.filename).name}:{frame.lineno}" for frame in ours[-2:])
    return f"{type(fault).__name__} at {' > '.join(lines) or 'the door'}"


def doors() -> list[Door]:
    """All of them."""
    return [
        Door("reader", heard, utterances),
        Door("ask", asked, utterances),
        Door("turns", talked, talks),
        Door("jsonl", line_read, st.one_of(utterances, json_values.map(json.dumps))),
        Door("recipe", converted, recipe_texts),
        Door("recipe bytes", converted_bytes, st.one_of(recipe_texts, documents())),
        Door("JSON-LD", converted, documents()),
        Door("menu", planned, st.one_of(spoilt(MENUS), strung())),
        Door("webhook", called, calls(_slots())),
        Door("WAV", listened, recordings()),
    ]


def _give_up(*_: object) -> None:
    raise GivenUp


def run(minutes: float, first_seed: int) -> None:
    """Go round the doors until the time is up, then tell what was found."""
    os.environ["SIMMERLINE_DB"] = f"sqlite:///{tempfile.mkdtemp()}/simmerline.db"
    signal.signal(signal.SIGVTALRM, _give_up)
    ends, number, every = time.monotonic() + minutes * 60, first_seed, doors()
    while time.monotonic() < ends:
        for door in every:
            door.one_round(number)
        number += 1
    for door in every:
        print(f"{door.name:14} {door.tried:7,} inputs, {len(door.faults)} faults")
        for taken_s, told in door.slow:
            print(f"    {taken_s:.1f} s: {told}")
    print(f"{sum(door.tried for door in every):,} inputs, {sum(len(door.faults) for door in every)} faults")


if __name__ == "__main__":
    minutes, first_seed = [float(told) for told in sys.argv[1:2]] or [45.0], sys.argv[2:3] or [random.randrange(10**6)]
    run(minutes[0], int(first_seed[0]))
