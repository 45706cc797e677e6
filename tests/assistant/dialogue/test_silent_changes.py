"""Dish, elevation and time of service change only when they are spoken of, whatever is said in between."""

from __future__ import annotations

import asyncio

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from assistant.dialogue.embedded import Conversation
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.memory import Memory

FT_M = 0.3048
ROUNDING_M = 1.0
EXECUTOR = KitchenExecutor()
DISHES = {
    "and for lamb shanks?": "lamb shanks",
    "what about oxtail": "oxtail",
    "how long to boil potatoes": "potatoes",
    "beef brisket instead": "beef brisket",
    "no, chickpeas": "chickpeas",
    "how long to roast a turkey": "turkey",
}
PLACES_FT = {
    "and at 9,000 ft?": 9000,
    "no, 6,200 ft": 6200,
    "at the bakery, 5,300 ft": 5300,
    "sorry I meant 8,500 ft": 8500,
}
SERVICES = {"we serve at 8 pm now": "20:00", "service moved to 7:15 pm": "19:15", "dinner is at 18:30": "18:30"}
# names neither dish nor place nor a time of day
BETWEEN = (
    "why", "but why", "in Celsius", "in Fahrenheit", "lid?", "a bigger flame then", "salt?", "shorter", "the maths",
    "thanks", "ok", "who won the match", "what internal temp", "how much liquid", "is that safe", "bone in", "help",
    "how do I know it is done", "how long to rest", "does altitude matter", "what if I only have 3 hours", "k heard",
    "for 12 people", "double it", "you are useless", "what altitude did I say", "what was I making", "zzqx vlorp",
    "my oven runs hot", "?",
)  # fmt: skip


class Thread(RuleBasedStateMachine):
    """A conversation at random about dishes at places for a service, and what is to stand of them."""

    @initialize()
    def begin(self) -> None:
        """A braise at the lodge."""
        self.conversation = Conversation("thread", Memory(), EXECUTOR)
        self.dish, self.feet, self.service = "short ribs", 7000, None
        self.named = {"short ribs"}
        self.said = ["how long to braise short ribs at 7,000 ft"]
        self.say(self.said[0])

    def say(self, text: str) -> None:
        """Say it."""
        self.said.append(text)
        asyncio.run(self.conversation.say(text))

    @rule(text=st.sampled_from(BETWEEN))
    def say_something_else(self, text: str) -> None:
        """Nothing that names a dish, a place or a time of day."""
        self.say(text)

    @rule(text=st.sampled_from(sorted(DISHES)))
    def name_a_dish(self, text: str) -> None:
        """Another dish."""
        self.dish = DISHES[text]
        self.named.add(self.dish)
        self.say(text)

    @rule(text=st.sampled_from(sorted(PLACES_FT)))
    def name_a_place(self, text: str) -> None:
        """Another place."""
        self.feet = PLACES_FT[text]
        self.say(text)

    @precondition(lambda self: self.service is None)
    @rule(text=st.sampled_from(sorted(SERVICES)))
    def name_a_service(self, text: str) -> None:
        """A time of service."""
        self.service = SERVICES[text]
        self.say(text)

    @invariant()
    def what_was_not_spoken_of_stands(self) -> None:
        """The question that is remembered is of the dish, the place and the service that were named last."""
        request = self.conversation.memory.request
        assert request is not None
        if request.menu:
            assert {one.dish for one in request.menu} <= self.named, (request.menu, self.said)
        else:
            assert request.dish in (None, self.dish), (request.dish, self.said)
        heights = [request.elevation_m] if request.elevation_m is not None else []
        assert all(abs(height - self.feet * FT_M) <= ROUNDING_M for height in heights), (request.elevation_m, self.said)
        told = (request.service_time or "")[:5]
        assert told in ("", self.service), (told, self.said)


TestThread = Thread.TestCase
TestThread.settings = settings(
    max_examples=40, stateful_step_count=12, deadline=None, suppress_health_check=[HealthCheck.too_slow]
)
