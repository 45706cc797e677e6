"""How an answer opens: its verdict, and what stands behind it."""

from __future__ import annotations

from dataclasses import replace

from rules.said import Listed, Said, Words, sentences

say = sentences("forms/opening")
YES_OR_NO = ("yes", "no", "little", "hardly", "just")


def opened(verdict: str, rest: Words) -> Said:
    """A sentence behind its verdict: "No: the oven stays ...".

    verdict: one that data/wording/en/forms/opening.ftl opens with
    """
    return say("opened", verdict=verdict, rest=rest)


def unopened(words: Words) -> Words:
    """The words without their yes or no, where a question of two ways is answered: what stands behind it names one."""
    if isinstance(words, Listed) and words.items and isinstance(words.items[0], Said):
        return replace(words, items=(unopened(words.items[0]), *words.items[1:]))
    if not isinstance(words, Said) or (words.file, words.id) != ("forms/opening", "opened"):
        return words
    values = dict(words.values)
    return opened("none", values["rest"]) if values["verdict"] in YES_OR_NO else words  # type: ignore[arg-type]
