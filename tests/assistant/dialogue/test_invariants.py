"""Whatever is said in whatever order: never an exception, never an elevation that nobody gave."""

from __future__ import annotations

import asyncio

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from assistant.dialogue.embedded import Conversation, Said
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.memory import Memory
from assistant.dialogue.moves import phrases
from rules.catalogue import topics
from rules.model import MISSING_WORDS, Kitchen

FT_M = 0.3048
ROUNDING_M = 0.06
EXECUTOR = KitchenExecutor()
WITHOUT_PLACE = (
    "how long to braise short ribs", "what about lamb shanks", "in Celsius", "in Fahrenheit", "why?", "thanks",
    "why not just boil harder", "and in the pressure cooker", "for 60 covers", "make it by 6 pm", "shorter",
    "show the maths", "how hot should the oil be for doughnuts", "4 lb of short ribs", "how much brisket for 20 people",
    "my cake sank", "it was dry", "what does water boil at", "hello", "who won the match", "braised", "about two hours",
    "we have an electric pressure cooker", "use metric", "calibrate my thermometer", "set a timer for 10 minutes",
    "how long do I process pints of tomatoes", "can I can green beans in a water bath", "soft ball", "is it safe",
    "yes", "no", "help", "25 minutes", "6:30", "2 tsp baking powder", "at 350 F", "",
)  # fmt: skip
ELEVATIONS_FT = (300, 1000, 2500, 5300, 6200, 7000, 7500, 9000, 12000)
FRAMES = ("and at {:,} ft?", "{:,} feet", "my kitchen is at {:,} ft", "no, {:,} ft", "how long to boil rice at {:,} ft")
SIGNS = st.characters(exclude_categories=["Nd", "Nl", "No"])
# letters of a word that names no town, and marks of every kind
NOISE = st.text(st.one_of(SIGNS.filter(lambda c: not c.isalpha()), st.sampled_from("xqz")), max_size=60)


class Talk(RuleBasedStateMachine):
    """A conversation at random. given_m: every elevation that anybody gave in it, or that the kitchen has."""

    @initialize(at=st.none() | st.sampled_from(ELEVATIONS_FT))
    def begin(self, at: int | None) -> None:
        """Begin in a kitchen, or nowhere."""
        self.given_m = {at * FT_M} if at else set()
        kitchen = Kitchen(name="Timberfold Lodge", elevation_m=at * FT_M) if at else Kitchen()
        self.conversation = Conversation("random", Memory(kitchen=kitchen), EXECUTOR)
        self.said: Said | None = None

    def say(self, text: str) -> None:
        """Say it, and keep the reply for the invariants."""
        self.said = asyncio.run(self.conversation.say(text))

    @rule(text=st.sampled_from(WITHOUT_PLACE))
    def say_anything(self, text: str) -> None:
        """Something of the kitchen that names no place."""
        self.say(text)

    @rule(text=st.sampled_from(sorted(phrases())))
    def make_a_move(self, text: str) -> None:
        """Something about the conversation itself."""
        self.say(text)

    @rule(frame=st.sampled_from(FRAMES), feet=st.sampled_from(ELEVATIONS_FT))
    def give_an_elevation(self, frame: str, feet: int) -> None:
        """Something that names an elevation."""
        self.given_m.add(feet * FT_M)
        self.say(frame.format(feet))

    @rule(text=NOISE)
    def make_noise(self, text: str) -> None:
        """Nothing that means anything."""
        self.say(text)

    @rule()
    def forget(self) -> None:
        """After this nobody has given any elevation."""
        self.say("forget my kitchen")
        self.given_m = set()

    @invariant()
    def no_elevation_that_nobody_gave(self) -> None:
        """The elevation of an answer is one of those that were given."""
        for answer in self.said.answers if self.said else ():
            heard_m = answer["heard"]["elevation_m"]
            assert heard_m is None or any(abs(heard_m - given_m) <= ROUNDING_M for given_m in self.given_m), heard_m
            known_m = self.conversation.memory.kitchen.elevation_m
            assert known_m is None or any(abs(known_m - given_m) <= ROUNDING_M for given_m in self.given_m), known_m

    @invariant()
    def always_something_is_said(self) -> None:
        """There is a reply, and words of the contract in it."""
        if self.said is not None:
            assert self.said.text.strip()
            for answer in self.said.answers:
                assert answer["heard"]["topic"] in topics()
                assert set(answer["missing"]) <= set(MISSING_WORDS)

    @invariant()
    def what_is_asked_is_awaited(self) -> None:
        """The form is open exactly while a piece is asked for, and a reply asks for it, but for mere thanks."""
        if self.said is not None:
            asked = self.conversation.memory.asked
            assert (self.conversation.tracker.active_loop.get("name") == "piece_form") == (asked is not None)
            answer = self.said.answers[-1]
            thanked = answer["heard"]["topic"] == "smalltalk" and not answer["missing"]
            assert asked is None or thanked or answer["missing"][0] == asked


TestTalk = Talk.TestCase
TestTalk.settings = settings(
    max_examples=40, stateful_step_count=15, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
