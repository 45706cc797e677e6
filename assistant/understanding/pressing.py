"""Whether a later turn presses for what was refused, leaves it behind, or asks about something beside it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import canning_turns, kitchen_told, righted, scene, unclaimed
from assistant.understanding.cue_words import cues, said
from assistant.understanding.hazards import Figures, Hazard, hazard_of, pieces, rows_of
from assistant.understanding.safety_subjects import DRY_JAR
from assistant.understanding.scene import POINTING, Refusal, Scene
from rules.catalogue import marked

# apart: about something beside it; open: nothing tells, and what is heard by itself counts
Stance = Literal["pressed", "left", "apart", "open"]

AGAIN, ANOTHER_TIME, INSTEAD, FREEZE, BOILED, ADDED, WORD = (
    "again", "time", "instead", "freeze", "boiled", "added", "word",
)  # fmt: skip
# what a cook says for what was refused, by the concept that hears it; the first that is heard counts
PLEAS = {
    "plea_added": ADDED,
    "plea_senses": "senses",
    "plea_luck": "luck",
    "plea_word": WORD,
    "plea_small": "small",
    "plea_trim": "trim",
    "cold_hope": "cold",
    "plea_sure": "sure",
}
SAFE_WAY, MOVES_ON = "safe_way", "moves_on"
# the pressure of a canner is told anew, and never one that was refused
PRESSURES = cues("canning_turns", "pressures")
OTHERWISE = cues("pressing", "otherwise")
SOMEONE, OPENING = cues("pressing", "someone"), 4
TAKES, MAKES_SAFE = cues("pressing", "takes"), cues("pressing", "makes_safe")
EVEN_SO = cues("pressing", "even_so")
BEFORE_EATING = cues("pressing", "before_eating")
SAID_BEFORE = cues("pressing", "said_before")
BACK, MORE_OR_LESS = cues("pressing", "back"), cues("pressing", "more_or_less")
# words of an utterance that asks on about what was refused, unless the danger goes on in whatever is asked
SHORT = 18
SHORTEST, POINTING_AT_MANY = 8, ("them", "those", "these", "they", "theyre")
# kinds of concepts that tell nothing of the food and of what is done with it
OF_THE_COOK = ("place", "person")
DONE_WITH_IT = ("vessel", "thing")
CANNING, FREEZING = "canning", "freezing_instead"
CANNER, LOW_ACID = frozenset(("pressure_canner", "ten_lb")), "low_acid"


@dataclass(frozen=True, slots=True)
class Pressing:
    """What a later turn does about a refusal.

    how: what is said for it, where it is pressed; INSTEAD where it is left for a safe way
    anew: whether what was done with the food is over
    elsewhere: whether another vessel or thing takes the place of the one that made it dangerous
    """

    refusal: Refusal
    stance: Stance
    how: str = AGAIN
    elsewhere: bool = False
    anew: bool = False


def meant(doc: Doc, before: Scene) -> Refusal | None:
    """The refusal that an utterance may be about: of a food that is named again, else the last that stands."""
    named = {found.id for found in doc._.found if found.kind == "dish"}
    again = next((one for one in reversed(before.refused) if named & set(one.dishes)), None)
    stands = next((one for one in reversed(before.refused) if one.hazard == before.danger), None)
    if not named and stands is None and before.refused and not CANNER.isdisjoint(scene.ids(doc)):
        # a pressure canner is for what was refused, and not for the jam after it
        return next((one for one in reversed(before.refused) if LOW_ACID in one.told), None)
    if again and again != stands and before.danger is None and not comes_back(doc):
        return None
    return again or stands or (None if named else _done_again(doc, before))


def _done_again(doc: Doc, before: Scene) -> Refusal | None:
    """The refusal whose vessel or act is named again, though the talk had gone on to another dish: and the oven?"""
    done = {concept for concept in scene.ids(doc) if scene.kind(concept) in DONE_WITH_IT}
    return next((one for one in reversed(before.refused) if done & set(one.told)), None)


def comes_back(doc: Doc) -> bool:
    """Whether an utterance goes back to a food, and asks nothing of its own about it: back to the peas, two hours."""
    return (
        said(norms(doc)[:4], BACK)
        or said(norms(doc), MAKES_SAFE)
        or unclaimed.is_elliptical(doc)
        or bool(pleas(scene.ids(doc)))
    )


def revived(before: Scene, refusal: Refusal) -> Scene:
    """The scene in which something was refused, with what else stands."""
    kept = (c for c in before.concepts if refusal.hazard == before.danger or scene.kind(c) != "food")
    return replace(before, concepts=tuple(sorted({*kept, *refusal.concepts})))


def apart_from(before: Scene) -> Scene:
    """The scene without what is done with the food, for a turn that asks about something beside it."""
    return replace(before, concepts=tuple(c for c in before.concepts if scene.kind(c) in ("food", "person", "place")))


def pleas(own: frozenset[str]) -> tuple[str, ...]:
    """What is said for what was refused: that nobody fell ill, that somebody says it is fine."""
    return tuple(how for concept, how in PLEAS.items() if concept in own)


def taken(doc: Doc, own: frozenset[str], figures: Figures, refusal: Refusal) -> Pressing:
    """What an utterance does about a refusal.

    own: concepts that are said now; figures: of the utterance
    """
    said_for, rows = pleas(own), rows_of(refusal.hazard)
    if _of_jars(refusal) and (doc._.safety == DRY_JAR or canning_turns.asks_of_dry(norms(doc))):
        # what keeps without a canner is another matter
        return Pressing(refusal, "left", anew=True)
    if _of_jars(refusal) and said(norms(doc), BEFORE_EATING):
        # a boil at the table makes no jar safe that was put up wrong
        return Pressing(refusal, "pressed")
    if ADDED in said_for and refusal.hazard not in righted.ACID_MENDS:
        return Pressing(refusal, "pressed", ADDED)
    if left := _left(doc, own, figures, refusal, pleads=bool(said_for)):
        return left
    if said_for and ADDED not in said_for:
        return Pressing(refusal, "pressed", said_for[0])
    if of_somebody(doc):
        return Pressing(refusal, "pressed", WORD)
    of_the_past = refusal.hazard in righted.NOT_MENDED and not said(norms(doc), OTHERWISE)
    mended = (righted.is_mended(own, rows) and not of_the_past) or ADDED in said_for
    if not mended and SAFE_WAY not in own and is_even_so(doc):
        return Pressing(refusal, "pressed", AGAIN)
    if is_apart(doc, own, rows, figures) or (not _of_jars(refusal) and asks_of_dish(doc, own, rows)):
        return Pressing(refusal, "left" if mended else "apart", anew=True)
    if SAFE_WAY in own and refusal.hazard not in righted.NOT_MENDED:
        return Pressing(refusal, "left", FREEZE if FREEZING in own and _of_jars(refusal) else INSTEAD)
    if mended:
        return Pressing(refusal, "left")
    if of_the_past and (SAFE_WAY in own or righted.is_mended(own, rows)):
        # what has stood out is mended by no refrigerator
        return Pressing(refusal, "pressed")
    if not asks_on(doc, own, rows, figures):
        return Pressing(refusal, "open")
    by_time = figures.minutes and _of_jars(refusal) and not any(hazard.numeric for hazard in rows)
    return Pressing(refusal, "pressed", ANOTHER_TIME if by_time else AGAIN)


def _left(doc: Doc, own: frozenset[str], figures: Figures, refusal: Refusal, *, pleads: bool) -> Pressing | None:
    """A refusal that is left for another vessel, another figure or another food; None where it is not.

    pleads: whether something is said for what was refused, which then may name the food again by another word
    """
    if righted.is_dropped(doc, refusal):
        return Pressing(refusal, "left", anew=True)
    if righted.is_taken_away(own, refusal):
        return Pressing(refusal, "left", elsewhere=True)
    if righted.is_boiled(figures, refusal):
        return Pressing(refusal, "left", BOILED)
    same_food = any(scene.kind(concept) == "food" for concept in own & frozenset(refusal.told))
    elsewhere = righted.names_other(doc, refusal) and not (pleads and same_food)
    by_figure = righted.is_right(doc, figures, refusal)
    if not (elsewhere or by_figure or (righted.is_another_way(doc, refusal) and not pleads)):
        return None
    how = INSTEAD if SAFE_WAY in own else AGAIN
    return Pressing(refusal, "left", how, anew=righted.is_anew(doc, refusal))


def _of_jars(refusal: Refusal) -> bool:
    return hazard_of(refusal.hazard).family == CANNING


def says_only_why(own: frozenset[str], hazard: Hazard) -> bool:
    """Whether nothing of a hazard is said now but circumstances, beside what is said for what was refused."""
    said_now = own & pieces(rows_of(hazard.id))
    return all(scene.kind(concept) == "circumstance" for concept in said_now)


def is_apart(doc: Doc, own: frozenset[str], rows: Sequence[Hazard], figures: Figures) -> bool:
    """Whether an utterance is about something beside what was refused: thanks, a timer, the kitchen."""
    if said(norms(doc), SAID_BEFORE) and not righted.of_the_act(own, rows):
        return True
    same_act = righted.of_the_act(own, rows) or bool(figures.minutes)
    moves_on = (MOVES_ON in own and not same_act) or said(norms(doc), PRESSURES)
    return doc._.topic.id in marked("leaves_refusal") or moves_on or _is_of_a_place(doc, own, rows)


def is_even_so(doc: Doc) -> bool:
    """Whether the same is asked with one thing more: even if I boil it hard?"""
    words = norms(doc)
    return len(words) <= SHORT and said(words[:OPENING], EVEN_SO)


def of_somebody(doc: Doc) -> bool:
    """Whether it is told that somebody does so or may be trusted, and nothing is asked: she is a nurse."""
    words = norms(doc)
    plain = doc._.topic.id in marked("of_nothing") and not (doc._.measures or doc._.clock or doc._.numbers)
    return plain and len(words) <= SHORT and said(words[:OPENING], SOMEONE) and not kitchen_told.asks(doc)


def asks_on(doc: Doc, own: frozenset[str], rows: Sequence[Hazard], figures: Figures) -> bool:
    """Whether an utterance asks on about what was refused: it says a piece of it, points at it, or says little more."""
    topic, words = doc._.topic.id, norms(doc)
    if _cooks_otherwise(doc, own, rows):
        return False
    # in a longer one "it" may mean anything
    pointing = POINTING if len(words) <= SHORTEST else POINTING_AT_MANY
    about_it = (
        any(scene.kind(piece) not in OF_THE_COOK for piece in own & pieces(rows))
        or any(word in pointing for word in words)
        or bool(figures.minutes)
    )
    about_it = about_it or unclaimed.is_elliptical(doc) or said(words, MORE_OR_LESS)
    if any(hazard.lasting for hazard in rows):
        asks = topic in marked("asks_on") - marked("of_nothing")
        return about_it or (asks and not doc._.elevations)
    if any(f.kind == "ingredient" for f in doc._.found) and not righted.of_the_act(own, rows):
        # what goes into the pot is asked about: and if I use baking soda
        return False
    if topic in marked("of_nothing"):
        return about_it and len(doc) <= SHORT
    return topic in marked("asks_on") and len(doc) <= SHORT and (about_it or bool(doc._.numbers))


def _cooks_otherwise(doc: Doc, own: frozenset[str], rows: Sequence[Hazard]) -> bool:
    """Whether it is asked how long or how hot something is cooked in a way of its own, and not in jars."""
    asks = any(form.id in ("how_long", "how_hot") for form in doc._.forms)
    by_method = any(found.kind == "method" for found in doc._.found) and not own & pieces(rows)
    if any(hazard.family == CANNING for hazard in rows):
        # a time that is told beside jars is soon taken for theirs
        return False
    return asks and by_method


def asks_of_dish(doc: Doc, own: frozenset[str], rows: Sequence[Hazard]) -> bool:
    """Whether it is asked how long a dish takes, and nothing of what was refused: how long does rice take."""
    forms, words = {form.id for form in doc._.forms}, norms(doc)
    named = any(found.kind == "dish" for found in doc._.found) and not any(word in POINTING for word in words)
    said_of_it = righted.of_the_act(own, rows) or said(words, MAKES_SAFE)
    return "how_long" in forms and "safe" not in forms and named and said(words, TAKES) and not said_of_it


def _is_of_a_place(doc: Doc, own: frozenset[str], rows: Sequence[Hazard]) -> bool:
    """Whether another place is told of in words of its own: off to the coast on Friday, ordinary times again?"""
    moves = any(elevation.role == "here" for elevation in doc._.elevations)
    said_of_it = any(scene.kind(piece) != "person" for piece in own & pieces(rows))
    return moves and not said_of_it and not unclaimed.is_elliptical(doc)


def told_of(hazard: Hazard, held: frozenset[str]) -> tuple[str, ...]:
    """The concepts that made a hazard, of those that hold."""
    return tuple(sorted(pieces(rows_of(hazard.id)) & held))
