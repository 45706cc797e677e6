"""Whether what was refused is put right: another vessel, figure or food, the acid, a boil that is long enough."""

from __future__ import annotations

from collections.abc import Sequence

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import concepts, scene, unclaimed
from assistant.understanding.cue_words import cues, said
from assistant.understanding.hazards import Figures, Hazard, hazard_of, hazards, pieces, rows_of
from assistant.understanding.scene import POINTING, Refusal

# dangers of water that a boil of so many minutes mends at any elevation
BOIL_MENDS, BOILED_MIN = frozenset(cues("pressing", "boil_mends")), 3.0
# dangers of what has happened already, which no cold and no other way mends, and those that acid mends
NOT_MENDED, ACID_MENDS = (frozenset(cues("pressing", name)) for name in ("not_mended", "acid_mends"))
# dangers of one way to cook, which another way mends, and their family
OTHER_WAY_MENDS, KITCHEN = frozenset(cues("pressing", "other_way_mends")), "kitchen"
# a bare figure behind one of a canner's pressure that was too low [psi]
RIGHT_POUNDS = (11.5, 20.0)
# ways to cook that are also said of what is done with jars, and what tells of food for the table
IN_A_CANNER, HOW_LONG = frozenset(("boil", "steam", "pressure_cook", "preserve")), "how_long"
TO_EAT = cues("pressing", "to_eat")
# what stands before a food that is left out
DROPPED = tuple(tuple(phrase.split()) for phrase in cues("pressing", "dropped"))
PINK, UNDERCOOKED = "pink_", "undercooked_"
POINTING_AT = frozenset(POINTING)
# what is set in the place of what was said before
REPLACED = ("vessel", "thing")


def names_other(doc: Doc, refusal: Refusal) -> bool:
    """Whether a dish is named that is not the food that was refused, nor made of it, nor set beside it."""
    named = {found.id for found in doc._.found if found.kind == "dish"}
    if not named or named & set(refusal.dishes):
        return False
    return is_anew(doc, refusal) or scene.names_other(doc, doc._.concepts)


def is_dropped(doc: Doc, refusal: Refusal) -> bool:
    """Whether the food that was refused is left out: no beans then, just the barley."""
    words, parts = norms(doc), pieces(rows_of(refusal.hazard))
    dishes = (found for found in doc._.found if found.kind == "dish")
    refused = (f for f in dishes if f.id in refusal.dishes or not parts.isdisjoint(concepts.of_row("dish", f.id)))
    return any(tuple(words[f.start - len(phrase) : f.start]) == phrase for f in refused for phrase in DROPPED)


def is_anew(doc: Doc, refusal: Refusal) -> bool:
    """Whether a question of its own is asked about another dish: how long does a burger take at 5,280 ft."""
    other, words = {found.id for found in doc._.found if found.kind == "dish"} - set(refusal.dishes), norms(doc)
    placed = any(elevation.role == "here" for elevation in doc._.elevations)
    cooked = {found.id for found in doc._.found if found.kind == "method"} - IN_A_CANNER
    asked_anew = any(form.id == HOW_LONG for form in doc._.forms) and (cooked or said(words, TO_EAT))
    return (
        bool(other)
        and bool(placed or asked_anew)
        and POINTING_AT.isdisjoint(words)
        and not unclaimed.is_elliptical(doc)
    )


def is_boiled(figures: Figures, refusal: Refusal) -> bool:
    """Whether water is to boil as long as makes it safe at any elevation: three minutes, is that not too few?"""
    return refusal.hazard in BOIL_MENDS and any(minutes >= BOILED_MIN for minutes in figures.minutes)


def is_right(doc: Doc, figures: Figures, refusal: Refusal) -> bool:
    """Whether another figure is said in the place of the one that was refused, and it is none of the wrong ones."""
    rows = rows_of(refusal.hazard)
    heated = [hazard for hazard in rows if hazard.temps_f] or _measured(rows)
    if heated and figures.told_heat and not any(hazard.fit_heat(figures) for hazard in heated):
        return True
    pressed = [hazard for hazard in rows if hazard.psi]
    pounds = figures.psi or tuple(number.value for number in doc._.numbers)
    if not pressed or not pounds:
        return False
    if figures.psi:
        return not any(hazard.fit_pressure(figures) for hazard in pressed)
    return all(RIGHT_POUNDS[0] <= value <= RIGHT_POUNDS[1] for value in pounds)


def is_another_way(doc: Doc, refusal: Refusal) -> bool:
    """Whether the food is to be cooked in another way than the one that was refused: roast it then."""
    names_method = any(found.kind == "method" for found in doc._.found)
    of_a_way = refusal.hazard in OTHER_WAY_MENDS or hazard_of(refusal.hazard).family == KITCHEN
    return names_method and of_a_way


def _measured(rows: Sequence[Hazard]) -> list[Hazard]:
    """The hazards by temperature of a food that was refused by its colour: pink mince, and mince at 145."""
    names = {hazard.id.replace(PINK, UNDERCOOKED) for hazard in rows if hazard.id.startswith(PINK)}
    return [hazard for hazard in hazards() if hazard.id in names and hazard.temps_f]


def is_taken_away(own: frozenset[str], refusal: Refusal) -> bool:
    """Whether a vessel or a thing is named in the place of the one that made it dangerous: in the pressure cooker."""
    rows = rows_of(refusal.hazard)
    anew = {scene.kind(c) for c in own} & {scene.kind(c) for c in refusal.told} & set(REPLACED)
    # what a vessel was set to goes with it: on low
    held = own | {concept for concept in refusal.told if scene.kind(concept) not in (*anew, "circumstance")}
    made = [hazard for hazard in rows if not any(map(frozenset(refusal.told).isdisjoint, hazard.when))]
    return bool(anew and made) and all(any(map(held.isdisjoint, hazard.when)) for hazard in rows)


def is_mended(own: frozenset[str], rows: Sequence[Hazard]) -> bool:
    """Whether something is said now that takes the danger away."""
    return any(own & hazard.unless for hazard in rows)


def of_the_act(own: frozenset[str], rows: Sequence[Hazard]) -> bool:
    """Whether what was done, or in what, is said now."""
    return any(scene.kind(piece) in ("act", "vessel") for piece in own & pieces(rows))
