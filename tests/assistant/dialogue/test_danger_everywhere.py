"""The same refusal by every door: command line, file of questions, actions, and in a conversation."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable
from typing import Any

import pytest
from typer.testing import CliRunner

from assistant.answering import reply_to
from assistant.cli.app import create_app
from assistant.dialogue.embedded import Conversation
from assistant.replies.contract import as_json

Batch = Callable[..., dict[str, Any]]

DANGEROUS = (
    "how long do I process green beans in a water bath at 7,000 ft",
    "the lid bulges, twenty minutes at the boil enough?",
    "kidney beans from dry in the slow cooker at 8,000 ft, how long on low",
    "turkey at 200 F overnight in the oven at 7,000 ft",
    "honey in the porridge for our 7 month old",
    "pan of oil has caught fire",
)
THREADS = (
    (("how long to water bath can corn at 6,500 ft",), "just boil them three hours like grandma"),
    (("how long to water bath can corn at 6,500 ft",), "in the oven then?"),
    (("how do I can salmon at 5,500 ft",), "how long in the electric pressure cooker"),
    (("how long to roast a chicken at 9,000 ft",), "so 150 inside is fine up here?"),
    (("how long to cook kidney beans at 8,000 ft",), "skip the soak and the boil, just the slow cooker"),
    (("how do I sweeten porridge with honey",), "and for an 8 month old?"),
)


@pytest.mark.parametrize("text", DANGEROUS)
def test_one_refusal_by_every_door(text: str, by_batch: Batch) -> None:
    command = json.loads(CliRunner().invoke(create_app(), ["ask", "--json", text]).stdout)
    action = asyncio.run(Conversation().say(text)).answers[-1]
    answers = [command, action, by_batch(text), as_json(reply_to(text))]
    assert len({json.dumps(answer) for answer in answers}) == 1
    assert answers[0]["figures"] == []
    assert answers[0]["cautions"][0]["level"] == "stop"


@pytest.mark.parametrize(("context", "text"), THREADS)
def test_a_refusal_outlives_the_question(context: tuple[str, ...], text: str, by_batch: Batch) -> None:
    async def talk() -> Any:
        conversation = Conversation()
        return [await conversation.say(said) for said in (*context, text)][-1]

    told = reply_to(text, context)
    assert told.figures == ()
    assert told.headline.split()[0].strip(".,:") in ("No", "Discard", "Only")
    assert asyncio.run(talk()).text == told.text == by_batch(text, context)["text"]
