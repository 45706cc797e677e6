"""What is timed of a dough: its rise, or its bake."""

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn


@pytest.mark.parametrize(
    ("text", "method"),
    [
        ("how long should ciabatta rise at 6,200 ft", "proof"),
        ("at 2,300 m how long before the panettone has doubled", "proof"),
        ("how long does ciabatta bake at 6,200 ft", "bake"),
        ("how long in the oven for challah at 6,200 ft", "bake"),
    ],
)
def test_a_dough_that_rises_is_proofed(text, method):
    turn = take_turn(text, Memory())
    assert turn.reply.request.method == method or turn.reply.request.subject == method
