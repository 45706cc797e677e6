"""What a conversation holds that bears on safety, and what of it still stands when the cook goes on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import concepts, unclaimed
from assistant.understanding.concepts import Heard
from assistant.understanding.temperatures import Said

# words that set a food beside the one that is talked of, or put it in with it: pink like the steaks
COMPARING, WITH = ("like", "than"), ("with",)
# words that point back at a food of many
THEM = ("them", "those", "these", "em")
SAME_WAY = "same_way"
# dishes that take any food
MADE_DISH = "made_dish"
MOST_WORDS, MOST_REFUSED = 40, 4
# kinds of concepts that stand until another of the kind is named, and the act that jars are for
LASTING, IN_JARS = ("food", "vessel", "person", "place"), ("canning",)
# words that point back at the food before: boil them, before the barley goes in
POINTING = ("it", "them", "this", "those", "these", "they", "theyre")


@dataclass(frozen=True, slots=True)
class Refusal:
    """Something that was refused, to come back to.

    hazard: what was refused; concepts: what stood after it; told: what made the hazard; dishes: the foods it was of
    """

    hazard: str
    concepts: tuple[str, ...] = ()
    told: tuple[str, ...] = ()
    dishes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Scene:
    """What a conversation holds of foods, acts, vessels, people and circumstances, and what it was warned of last.

    danger: the hazard that was refused last; said: words of the last utterances, as their stems
    temperature: the last that was said; elevation_m: likewise [m]
    celsius: whether temperatures were told in Celsius last; dishes: those that were named last
    refused: what was refused of each food, the latest last; allergens: what guests are allergic to
    """

    concepts: tuple[str, ...] = ()
    danger: str | None = None
    said: tuple[str, ...] = ()
    temperature: Said | None = None
    elevation_m: float | None = None
    celsius: bool = False
    dishes: tuple[str, ...] = ()
    refused: tuple[Refusal, ...] = ()
    allergens: tuple[str, ...] = ()


def kind(id: str) -> str:
    """The kind of a concept."""
    return concepts.concepts()[id].kind


def names_food(doc: Doc, heard: Sequence[Heard]) -> bool:
    """Whether another food is named: a dish that takes any food, a soup or a salad, leaves the one before in place."""
    made = tokens(heard, MADE_DISH)
    foods = ((h.start, h.end) for h in heard if kind(h.concept) == "food" and concepts.concepts()[h.concept].names)
    dishes = ((f.start, f.end) for f in doc._.found if f.kind == "dish")
    pointing = next((i for i, word in enumerate(norms(doc)) if word in THEM), len(doc))
    return any(
        not made.issuperset(range(*span)) and not _compared(doc, span[0]) and not _beside(doc, span[0], pointing)
        for span in (*foods, *dishes)
    )


def names_other(doc: Doc, heard: Sequence[Heard]) -> bool:
    """Whether a dish is named that is not made of the food before, is no word for it and not set beside it."""
    taking = tokens(heard, MADE_DISH)
    others = [f.start for f in doc._.found if f.kind == "dish" and not taking.issuperset(range(f.start, f.end))]
    return bool(others) and not any(word in POINTING for word in norms(doc)[: others[0]])


def ids(doc: Doc) -> frozenset[str]:
    """The concepts that an utterance tells."""
    return frozenset(heard.concept for heard in doc._.concepts)


def dishes_named(doc: Doc) -> tuple[str, ...]:
    """The dishes that an utterance names, each once."""
    return tuple(dict.fromkeys(found.id for found in doc._.found if found.kind == "dish"))


def refused(before: Sequence[Refusal], now: Refusal) -> tuple[Refusal, ...]:
    """What was refused, with one more, which takes the place of one of the same food; the latest few are kept."""
    others = (one for one in before if one.hazard != now.hazard and not (set(one.dishes) & set(now.dishes)))
    return (*others, now)[-MOST_REFUSED:]


def tokens(heard: Sequence[Heard], *ids: str) -> frozenset[int]:
    """The tokens that tell some concepts."""
    return frozenset(i for h in heard if h.concept in ids for i in range(h.start, h.end))


def _beside(doc: Doc, at: int, pointing: int) -> bool:
    """Whether a food goes in with the one before, which is pointed at ahead of it: dump them in with the beef."""
    return pointing < at and any(word in WITH for word in norms(doc)[max(0, at - 2) : at])


def _compared(doc: Doc, at: int) -> bool:
    """Whether a food is only named beside the one talked of."""
    return any(word in COMPARING for word in norms(doc)[max(0, at - 2) : at])


def carried(doc: Doc, own: frozenset[str], scene: Scene, *, another_food: bool) -> frozenset[str]:
    """What was said before and still stands: of each kind until another of it is named; people for good."""
    said = {kind(c) for c in own}
    leans = unclaimed.is_elliptical(doc) or SAME_WAY in own
    anew = another_food and bool(said & {"act", "vessel"}) and not leans
    dropped = {"food"} if another_food else set()
    dropped |= {"act", "vessel", "thing", "circumstance"} if anew else said & {"vessel", "thing"}
    return frozenset(c for c in scene.concepts if kind(c) not in dropped)


def staying(held: frozenset[str], own: frozenset[str]) -> tuple[str, ...]:
    """The concepts that stand after the utterance they were said in.

    Foods, vessels, people and places stand until others take their place; what was done, with what and how, for the
    next utterance alone, or chance would bring it together with what is said later. What is put up in jars stays so.

    own: what was said in the utterance itself
    """
    return tuple(sorted(c for c in held if _stands(c, said_now=c in own)))


def _stands(concept: str, *, said_now: bool) -> bool:
    if kind(concept) in LASTING or concept in IN_JARS:
        return True
    return said_now and (kind(concept) != "circumstance" or concepts.concepts()[concept].stays)


def words_after(scene: Scene, doc: Doc) -> tuple[str, ...]:
    """The last words of the conversation, as their stems."""
    return (*scene.said, *(one for one, word in zip(concepts.stems(doc), norms(doc), strict=True) if word.isalpha()))[
        -MOST_WORDS:
    ]
