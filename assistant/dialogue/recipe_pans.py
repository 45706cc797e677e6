"""What is said of a pan that is named with an amount of the recipe: halve it, loaf pan."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.recipes.dictated import listed
from assistant.understanding.cue_words import said as said_among
from rules.said import Words, sentences

say = sentences("dialogue/recipe_pans")
SHAPES = ("deep", "flat", "small")


def note_on_pan(words: Sequence[str]) -> Words:
    """How a batter bakes in the pan that is named; "" where none is. words: of the utterance, as compared"""
    shape = next((shape for shape in SHAPES if said_among(words, listed(f"{shape}_pans"))), None)
    return say("pan", shape=shape) if shape else ""
