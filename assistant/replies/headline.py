"""The one sentence that answers: that of the rules, or one by the topic; or the question for what is missing."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from assistant.replies.figures import value_text
from assistant.replies.quantities import Say
from assistant.replies.sentences import worded
from rules.amounts.guests import for_guests
from rules.catalogue import marked, topics
from rules.foods.methods import methods
from rules.heat.batch_size import gist
from rules.heat.headline import about
from rules.model import Answer, Figure, Request
from rules.said import Words, sentences, together

say = sentences("replies/headline")

# who asks for help in few words asks for all of it
FEW_WORDS = 6
# which temperature answers how hot, the first that there is
TEMPERATURES = (
    "oven",
    "fat_temperature",
    "liquid_temperature",
    "inside_temperature",
    "core_temperature",
    "boiling_point",
)


def headline(answer: Answer) -> str:
    """The sentence, in the asker's units."""
    return worded(_headline(answer), answer.request.units)


def _headline(answer: Answer) -> Words:
    request = answer.request
    if answer.missing:
        return question(request, answer.missing[0])
    if answer.headline:
        return _with_amount(worded(answer.headline, request.units), request)
    if not answer.covered and request.topic not in marked("passing"):
        return _not_covered(request)
    return _with_amount(worded(by_topic(answer), request.units), request)


def by_topic(answer: Answer) -> Words:
    """The sentence by the topic alone."""
    request, figures = answer.request, {f.id: f for f in answer.figures}
    match request.topic:
        case "time":
            return how_long(request, figures)
        case "temperature":
            return how_hot(request, figures)
        case "smalltalk":
            return say("small-talk", kind=request.small_talk or "other")
        case "out_of_scope":
            return say("out-of-scope")
        case "help":
            return all_of_it(request) if len(request.text.split()) <= FEW_WORDS else say("help")
    return _not_covered(request)


def all_of_it(request: Request) -> str:
    """All that can be asked, a line each."""
    lines = (
        say("help"), say("help-time"), say("help-amount"), say("help-plan"), say("help-timer"), say("help-bake"),
        say("help-safe"), say("help-why"), say("help-talk"), say("help-kitchen"), say("help-drill"),
    )  # fmt: skip
    return "\n".join(worded(line, request.units) for line in lines)


def how_long(request: Request, figures: Mapping[str, Figure]) -> Words:
    """How long it takes, against what it takes at the baseline where both are known."""
    units, doing = Say(request.units), doing_of(request)
    place, baseline = places(request)
    if "cook_time" in figures:
        here, base = figures["cook_time"], figures.get("baseline_time")
        nothing = base is None or place == baseline
        known = value_text(base, units) if base else ""
        against = "nothing" if nothing else "same" if known == value_text(here, units) else "other"
        return say("takes", doing=doing, time=about(here), place=place, against=against, known=known, baseline=baseline)
    if "time_factor" in figures:
        factor = value_text(figures["time_factor"], units)
        return say("takes-times-as-long", doing=doing, factor=factor, baseline=baseline)
    return say("takes-unknown", doing=doing, place=place)


def how_hot(request: Request, figures: Mapping[str, Figure]) -> Words:
    """How hot it is to be, against sea level where it differs."""
    units, doing = Say(request.units), doing_of(request)
    shown = next((figures[id] for id in TEMPERATURES if id in figures), None)
    if shown is None:
        return say("how-hot-unknown", doing=doing)
    place, what, here = places(request)[0], shown.label.lower(), value_text(shown, units)
    if shown.sea_level is None or shown.sea_level == shown.value:
        return say("how-hot", doing=doing, place=place, what=what, temperature=here)
    at_sea = value_text(replace(shown, value=shown.sea_level), units)
    return say("how-hot-against", doing=doing, place=place, what=what, temperature=here, at_sea=at_sea)


def places(request: Request) -> tuple[str, str]:
    """Where the cook is and where the baseline was, in words."""
    units = Say(request.units)
    return units.elevation(request.elevation_m or 0.0), units.elevation(request.from_elevation_m or 0.0)


def question(request: Request, word: str) -> Words:
    """The question that asks for what is missing; a value that cannot be right is asked back by its reason."""
    if word == "choice":
        one, other = (topics()[topic].choice for topic in request.choices)
        return say("choice", one=one, other=other, dish=request.dish or "none")
    doubt = next((u.reason for u in request.unused if u.kind == word and u.reason), None)
    if doubt:
        return doubt
    if word == "symptom" and request.dish:
        from rules.topics.troubleshoot import which_fault

        return which_fault(request) or say("missing", word=word, food=request.dish)
    asks = topics()[request.topic].ask if request.topic in topics() else {}
    return asks.get(word) or say("missing", word=word, food=request.dish or "it")


def _not_covered(request: Request) -> Words:
    topic = topics().get(request.topic)
    return say("not-covered", what=topic.description.lower().strip(".")) if topic else say("not-covered-kind")


def _with_amount(text: str, request: Request) -> str:
    """A time with what the amount does to it, where one was said."""
    told = together(for_guests(request), gist(request)) if request.topic == "time" else ""
    more = worded(told, request.units) if told else ""
    return f"{text} {more}".rstrip() if more not in text else text


def doing_of(request: Request) -> str:
    """What is done to the dish: "braising short ribs"."""
    food, row = request.dish or "it", methods().get(request.method or "")
    return row.doing_to(food) if row else f"cooking {food}"
