"""How a food is wanted: meat by its doneness, an egg by its yolk, where the words tell."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from assistant.understanding.cue_words import cues, said
from rules.catalogue import marked
from rules.foods import eggs, meat
from rules.model import Request

TOO_MUCH = "too"
HARD, EGG, SHORT, TIME = "hard", "egg", 5, "time"
YOLKS = {yolk: cues("yolk", yolk) for yolk in eggs.YOLK_C}
SOFT, NOT_WANTED = "soft", cues("yolk", "not_wanted")


def doneness(words: Sequence[str]) -> str | None:
    """How done meat is wanted, an id of data/lexicon/doneness.toml; of several phrases the longest.

    >>> doneness("a steak medium rare".split()), doneness("on medium heat".split())
    ('medium_rare', None)
    """
    text = f" {' '.join(words)} "
    told = [
        (len(phrase), row.id)
        for row in meat.doneness().values()
        for phrase in row.heard_as
        if f" {phrase} " in text and not any(f" {phrase} {word} " in text for word in row.not_before)
    ]
    return max(told)[1] if told else None


def other_yolk(words: Sequence[str], last: str | None, dish_class: str | None, longest: int = SHORT) -> str | None:
    """The eggs that are wanted behind a question of eggs: and hard?; soft instead.

    longest: of how many words it may be at most
    """
    yolks = [yolk for yolk, phrases in YOLKS.items() if said(words, phrases) or yolk in words]
    # what came out too hard is a fault, and no wish; hard ones too is one
    at_fault = any(word == TOO_MUCH for word in words[:-1])
    if dish_class != EGG or len(words) > longest or len(yolks) != 1 or at_fault:
        return None
    return eggs.of_yolk(yolks[0]) if eggs.of_yolk(yolks[0]) != last else None


def next_yolk(dish: str | None, step: int) -> str | None:
    """The eggs whose yolk is one step firmer (1) or softer (-1) than that of a dish; None where there is none.

    >>> next_yolk("soft-boiled eggs", 1), next_yolk("hard-boiled eggs", 1)
    ('medium-boiled eggs', None)
    """
    order = list(eggs.YOLK_C)
    yolks = eggs.wanted(dish)
    if not step or not yolks or not eggs.in_shell(dish):
        return None
    at = (order.index(yolks[-1]) if step < 0 else order.index(yolks[0])) + step
    return eggs.of_yolk(order[at]) if 0 <= at < len(order) else None


def given_hard(question: Request, last: Request | None = None) -> Request:
    """A question of eggs in the shell for a child or somebody ill, who are given them hard: how long that takes.

    last: the question before it, which is meant where that person alone is told of
    """
    if last and question.dish is None and question.topic in marked("of_nothing"):
        question = replace(last, text=question.text)
    if question.dish_class != EGG and question.dish != eggs.PLAIN:
        return question
    topic = question.topic if question.topic in marked("by_method") else TIME
    own_min = question.planned_min or question.time_min
    forms = tuple(dict.fromkeys(("enough", *question.forms))) if own_min else question.forms
    judged = replace(question, planned_min=own_min, time_min=None, time_high_min=None, forms=forms)
    hard = replace(judged, topic=topic, subject=None, belief=None, terms=(), choices=(), small_talk=None)
    return replace(hard, dish=eggs.of_yolk(HARD), method="boil")


def egg(dish: str | None, words: Sequence[str]) -> str | None:
    """The dish; of eggs of which one yolk is wanted, those eggs.

    >>> egg("eggs", "eggs with a runny yolk".split()), egg("eggs", "soft or hard".split())
    ('soft-boiled eggs', 'eggs')
    >>> egg("eggs", "my eggs are still soft".split())
    'hard-boiled eggs'
    """
    yolks = [yolk for yolk, phrases in YOLKS.items() if said(words, phrases)]
    if dish == eggs.of_yolk(HARD) and HARD not in words and yolks and HARD not in yolks:
        # boiled eggs are hard where nothing else is said: boiled eggs, soft
        dish = eggs.PLAIN
    if dish != eggs.PLAIN:
        return dish
    if yolks == [SOFT] and said(words, NOT_WANTED):
        # what is still soft was to be hard
        return eggs.of_yolk(HARD)
    return eggs.of_yolk(yolks[0]) if len(yolks) == 1 else dish
