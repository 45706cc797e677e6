"""How an answer opens: its verdict, and what stands behind it."""

from __future__ import annotations

from rules.said import Said, Words, sentences

say = sentences("forms/opening")


def opened(verdict: str, rest: Words) -> Said:
    """A sentence behind its verdict: "No: the oven stays ...".

    verdict: one that data/wording/en/forms/opening.ftl opens with
    """
    return say("opened", verdict=verdict, rest=rest)
