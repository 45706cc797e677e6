"""Danger in an utterance, heard before any topic, in the light of what was said before."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import alarm, concepts, pressing, righted, scene, spread, temperatures, unclaimed
from assistant.understanding.alarm import Alarm
from assistant.understanding.concepts import INFANT
from assistant.understanding.cue_words import cues
from assistant.understanding.hazards import Figures, Hazard, hazard_of, holding, nearly, pieces, rows_of
from assistant.understanding.pressing import ADDED, FREEZE, INSTEAD, PLEAS, Pressing
from assistant.understanding.safety_subjects import DRY_JAR, VINEGAR
from assistant.understanding.scene import Refusal, Scene
from rules.baking.styles import is_baked
from rules.catalogue import marked
from rules.foods.dishes import dishes

MOST_OTHERS = 2
# families that lead where several are likely: a guest's allergy before how full the fryer is
FIRST = {"people": 0.3}
SOME, BY_ITSELF_FROM = 0.05, 0.25
# what the net must say, 0 to 1: for a hazard that was heard in one breath, for one that was put together from afar, and
# for a warning of its own in general words
NEAR_FROM, SPREAD_FROM, ALONE_FROM = 0.15, 0.3, 0.35
# the same for what needs little leave, a question whether it will do, and for what needs the more: a question that
# is plainly about another matter, how long or how hot, while the pieces stand in sentences that nothing joins
ASKED_FROM, OTHER_MATTER_FROM = 0.1, 0.6
# from where the rule of the family it hears is said after the words on a hazard of another
SURE_FROM = 0.9
# from where it gives a verdict of its own unasked, and from where it warns beside the answer
SURE_ALONE_FROM, BESIDE_FROM = 0.97, 0.85
# words between two things that tell of danger, and forms of question that ask about it
MOST_BETWEEN = 16
ASKS_SAFETY = frozenset(("safe", "is_ok", "can_it", "enough", "done", "is_true"))
# forms that ask about the cooking itself, and those that ask about safety and nothing else
ASKS_COOKING = frozenset(
    ("how_long", "how_hot", "how_much", "why", "which", "wrong", "factor", "more", "changes", "differ", "remaining")
)
ASKS_DANGER = frozenset(("safe",))
CANNING, PEOPLE, CLEANING, TIMES = "canning", "people", "sanitising", "time_temperature"
BATH, SAFE_BATH_F = "bath", 165.0
# infant formula is mixed with water of 70 degC or hotter
FORMULA, FORMULA_F, OF_BOTTLES = "formula", 157.5, (PEOPLE, "water")
DRINKING, WATER, BOILED, ONLY_WARM = "drinking_water", "water", "boil_word", "only_warm"
SHOWN = "demonstration"
# words of timers, and what tells that jars are talked of
TIMED = frozenset((*cues("time_roles", "set"), *cues("time_roles", "sets")))
JARS = frozenset((*scene.IN_JARS, "canner_word", "jar_lid"))


@dataclass(frozen=True, slots=True)
class Listened:
    """What one utterance means for safety.

    hazard: None where there is none; others: further hazards to be named; scene: after the utterance
    pressing: what it does about what was refused before, where something was
    """

    hazard: Hazard | None
    scene: Scene
    others: tuple[Hazard, ...] = ()
    pressing: Pressing | None = None

    @property
    def pressed(self) -> str:
        """What is said for what was refused before, where the same is refused again; empty where it is not."""
        again = self.pressing and self.pressing.stance == "pressed" and self.hazard
        return self.pressing.how if again and self.pressing and self.is_same else ""

    @property
    def is_same(self) -> bool:
        """Whether what is refused now was refused before."""
        return bool(self.pressing and self.hazard and self.hazard.id == self.pressing.refusal.hazard)


@dataclass(frozen=True, slots=True)
class HeardIn:
    """An utterance in its scene.

    own: concepts said now; before: those said before; held: own and what still stands
    another_food: whether it turns to another food
    fired: hazards that hold, those beside an answer last; spreads: how far apart each was said, by its id
    figures: of the wrong size or not; features: what the net looks at
    """

    own: frozenset[str]
    before: frozenset[str]
    held: frozenset[str]
    another_food: bool
    fired: tuple[Hazard, ...]
    spreads: dict[str, str]
    figures: Figures
    features: tuple[str, ...]


def listen(doc: Doc, before: Scene) -> Listened:
    """Hear the danger in an utterance.

    A food stays until another is named, and what was refused stays refused for it however the cook asks on.
    """
    refusal = pressing.meant(doc, before)
    heard = heard_in(doc, pressing.revived(before, refusal) if refusal else before)
    taken = pressing.taken(doc, heard.own, heard.figures, refusal) if refusal else None
    if taken and taken.anew:
        before = pressing.apart_from(before)
    if taken and taken.stance != "pressed" and not taken.elsewhere:
        heard = heard_in(doc, before)
    alarmed = alarm.sound(heard.features)
    by_itself = alarmed if before == Scene() else alarm.sound(heard_in(doc, Scene()).features)
    likely = (
        h
        for h in likeliest(heard.fired, alarmed)
        if granted(h, doc, heard, alarmed if _from_before(h, heard) else by_itself)
    )
    ranked = tuple(h for h in likely if not _is_over(h, heard, taken))
    hazard = ranked[0] if ranked else None
    if taken and taken.stance == "pressed" and (hazard is None or hazard.beside or _is_plea(taken, heard.own, hazard)):
        hazard = hazard_of(taken.refusal.hazard)
    if hazard is None and not _was_put_right(taken, alarmed) and warns_alone(doc, heard, before, alarmed):
        # what the net alone hears is a verdict where it is sure, else it is warned of beside the answer
        doubted = alarmed.family != CANNING and alarmed.danger < SURE_ALONE_FROM and not _asks_safety(doc)
        if not doubted or alarmed.danger >= BESIDE_FROM:
            hazard = replace(hazard_of(f"general_{alarmed.family}"), beside=doubted)
    after = _after(doc, before, heard, taken, hazard)
    return Listened(hazard, after, besides(hazard, ranked, alarmed), taken)


def _asks_safety(doc: Doc) -> bool:
    """Whether it is asked if something will do."""
    return any(form.id in ASKS_SAFETY for form in doc._.forms)


def _is_plea(taken: Pressing, own: frozenset[str], hazard: Hazard) -> bool:
    """Whether what is said speaks for what was refused, and is no other danger: mother always did."""
    pleads = taken.how in PLEAS.values() or taken.refusal.hazard in righted.NOT_MENDED
    return taken.how == ADDED or (pleads and pressing.says_only_why(own, hazard))


def _is_over(hazard: Hazard, heard: HeardIn, taken: Pressing | None) -> bool:
    """Whether a hazard is made of what was said before, and a safe way was named since."""
    safe = taken is not None and taken.stance == "left" and taken.how in (INSTEAD, FREEZE)
    return safe and not hazard.beside and heard.spreads[hazard.id] == spread.BEFORE


def _was_put_right(taken: Pressing | None, alarmed: Alarm) -> bool:
    """Whether what was refused was just left for another way, of which the net hears but the old danger."""
    return taken is not None and taken.stance == "left" and hazard_of(taken.refusal.hazard).family == alarmed.family


def _is_of_food_before(hazard: Hazard, heard: HeardIn) -> bool:
    """Whether the food of a hazard was named before, and who eats it now: it is for the baby."""
    foods = (group for group in hazard.when if all(scene.kind(concept) == "food" for concept in group))
    return not heard.another_food and any(map(heard.own.isdisjoint, foods))


def _from_before(hazard: Hazard, heard: HeardIn) -> bool:
    """Whether a piece of a hazard was said earlier, or the elevation that makes it one."""
    placed_before = hazard.elevation_m is not None and not heard.figures.new_height
    return placed_before or heard.spreads.get(hazard.id) == spread.BEFORE


def granted(hazard: Hazard, doc: Doc, heard: HeardIn, alarmed: Alarm) -> bool:
    """Whether a hazard that holds is one: the net does not take it for harmless, and what is said of people is of food.

    A hazard that is only told about, not refused, needs nobody's leave unless chance brought its pieces together; nor
    does one that is sure or has a figure of its own, or in a question about safety, its pieces said in one breath.
    """
    if hazard.beside:
        return hazard.family != PEOPLE or spread.names_food_beside(doc, hazard) or _is_of_food_before(hazard, heard)
    if doc._.safety == DRY_JAR and hazard.family == CANNING:
        # a jar that is only filled with what is dry
        return False
    if hazard.temps_f and spread.of_another_food(doc, hazard):
        return False
    if hazard.family == CANNING and _is_of_a_bake(doc, heard.own):
        # the tins of a cake are no jars, and its dome is no bulge
        return False
    from_before = heard.spreads[hazard.id] == spread.BEFORE
    told_apart = hazard.within and hazard.family == PEOPLE and not unclaimed.is_elliptical(doc)
    if from_before and (told_apart or not _brings_new(doc, hazard, heard)):
        return False
    apart = heard.spreads[hazard.id] == spread.APART
    if apart and asks_another_matter(doc) and alarmed.danger < OTHER_MATTER_FROM:
        return False
    if hazard.subject is not None and not apart:
        return True
    forms = {form.id for form in doc._.forms}
    near = heard.spreads[hazard.id] in spread.NEAR
    if near and (hazard.sure or hazard.numeric or not forms.isdisjoint(ASKS_DANGER)):
        return True
    asked = near and not forms.isdisjoint(ASKS_SAFETY)
    return alarmed.danger >= (ASKED_FROM if asked else NEAR_FROM if near else SPREAD_FROM)


def _is_of_a_bake(doc: Doc, own: frozenset[str]) -> bool:
    """Whether all dishes that are named go into the oven as a batter or a dough, and nothing is said of jars."""
    named = [dishes()[dish].dish_class for dish in scene.dishes_named(doc)]
    return bool(named) and JARS.isdisjoint(own) and all(map(is_baked, named))


def _brings_new(doc: Doc, hazard: Hazard, heard: HeardIn) -> bool:
    """Whether a piece or a figure of a hazard is said now that was not said before, or the utterance goes on with it.

    That a food is named again, or jars, puts no danger together of what was said before; nor does a timer for it.
    """
    if _sets_timer(doc):
        return False
    said_now = heard.own & pieces(rows_of(hazard.id)) - JARS
    figured = hazard.numeric and (doc._.measures or doc._.numbers)
    return bool(said_now - heard.before or figured) or unclaimed.is_elliptical(doc)


def _sets_timer(doc: Doc) -> bool:
    """Whether a timer of some length is set."""
    timed = not TIMED.isdisjoint(norms(doc)) and any(measure.kind == "time" for measure in doc._.measures)
    return timed and doc._.topic.id in marked("leaves_refusal")


def asks_another_matter(doc: Doc) -> bool:
    """Whether a question is about the cooking, how long or why, and in no word about safety."""
    forms = {form.id for form in doc._.forms}
    return not forms.isdisjoint(ASKS_COOKING) and forms.isdisjoint(ASKS_DANGER)


def warns_alone(doc: Doc, heard: HeardIn, before: Scene, alarmed: Alarm) -> bool:
    """Whether the net warns of what no hazard says: it is alarmed, and things are named that tell of such danger.

    They are two that stand together, one now and one before, or one in a question about safety. In a question about
    the cooking the net must be surer, but for jars; and people are warned of what they are given to eat.
    """
    least = OTHER_MATTER_FROM if alarmed.family != CANNING and asks_another_matter(doc) else ALONE_FROM
    if doc._.safety == FORMULA and alarmed.family in OF_BOTTLES and not _names_cool_water(heard.figures):
        # the rule of the bottle answers it
        return False
    asks_cooking = any(form.id in ASKS_COOKING for form in doc._.forms)
    boiled = BOILED in heard.own and ONLY_WARM not in heard.own
    if alarmed.family == WATER and _is_of_drinking(doc) and (asks_cooking or boiled):
        # how long it boils is what makes it safe, and a boil is one however cool
        return False
    if alarmed.family == WATER and SHOWN in heard.own and not _is_of_drinking(doc):
        # what boils in a bell jar is looked at
        return False
    if doc._.safety in (VINEGAR, DRY_JAR):
        # full vinegar is acid, and what is dry keeps, which no word of the net stands for
        return False
    if alarmed.danger < least or not _may_alarm(doc, heard, before):
        return False
    if alarmed.family == TIMES and _is_hot_bath(heard.figures):
        return False
    if doc._.allergies and alarmed.family == PEOPLE and INFANT not in heard.own:
        # a guest's allergy has a room of its own
        return False
    told = alarm.telling(alarmed.family)
    if doc._.subject == CLEANING and alarmed.family == PEOPLE:
        # what is cleaned for people is told by its own room
        return False
    heard_told = [h for h in doc._.concepts if h.concept in told]
    places = sorted({h.start for h in heard_told})
    if not before.concepts and not _names_food(doc) and all(scene.kind(h.concept) == "person" for h in heard_told):
        return False
    together = any(later - earlier <= MOST_BETWEEN for earlier, later in pairwise(places))
    return bool(places) and (together or _asks_safety(doc) or not told.isdisjoint(heard.held - heard.own))


def _is_hot_bath(figures: Figures) -> bool:
    """Whether every temperature that was said is of a bath in which any food comes out safe."""
    return figures.told_heat and all(said.role == BATH and said.temp_f >= SAFE_BATH_F for said in figures.temps)


def _is_of_drinking(doc: Doc) -> bool:
    """Whether water to drink is asked about."""
    return doc._.safety == DRINKING or DRINKING.replace("_", " ") in scene.dishes_named(doc)


def _names_cool_water(figures: Figures) -> bool:
    """Whether a temperature was said at which nobody mixes formula."""
    return any(said.temp_f < FORMULA_F for said in figures.temps)


def _names_food(doc: Doc) -> bool:
    named = any(f.kind in ("dish", "ingredient") for f in doc._.found)
    return named or any(scene.kind(h.concept) == "food" for h in doc._.concepts)


def besides(hazard: Hazard | None, ranked: Sequence[Hazard], alarmed: Alarm) -> tuple[Hazard, ...]:
    """What is named after a hazard: others that hold, and the rule of another family that the net is sure of."""
    if hazard is None or hazard.beside:
        return ()
    others = tuple(h for h in ranked if not h.beside and h.id != hazard.id)[:MOST_OTHERS]
    if alarmed.danger < SURE_FROM or alarmed.family == hazard.family:
        return others
    return (*others, hazard_of(f"general_{alarmed.family}"))


def likeliest(fired: Sequence[Hazard], alarmed: Alarm) -> tuple[Hazard, ...]:
    """Hazards that hold, each once, by how likely their family is; those beside an answer come last."""
    once = {hazard.id: hazard for hazard in reversed(fired)}
    each = [once[id] for id in dict.fromkeys(hazard.id for hazard in fired)]
    shares = {name: round(share, 1) + FIRST.get(name, 0.0) for name, share in alarmed.families.items()}
    return tuple(sorted(each, key=lambda hazard: (hazard.beside, -shares[hazard.family])))


def heard_in(doc: Doc, before: Scene) -> HeardIn:
    """The concepts of an utterance and of what was said before, and the hazards that they make."""
    own = frozenset(h.concept for h in doc._.concepts)
    another_food = scene.names_food(doc, doc._.concepts)
    held = own | scene.carried(doc, own, before, another_food=another_food)
    figures = Figures.of(doc, before.temperature, before.elevation_m, celsius=before.celsius)
    fired = holding(own, held, doc._.concepts, figures)
    spreads = _spreads(doc, fired)
    known = (*(h.id for h in fired), *sorted({*spreads.values(), *(h.family for h in fired if not h.beside)}))
    scenic = alarm.of_scene(sorted(held), known, nearly(held), dict.fromkeys(before.said))
    return HeardIn(
        own, frozenset(before.concepts), held, another_food, fired, spreads, figures, (*alarm.of_words(doc), *scenic)
    )


def _spreads(doc: Doc, fired: Sequence[Hazard]) -> dict[str, str]:
    """How far apart the pieces of each hazard were said that is to be refused, in the way that brings them nearest."""
    found: dict[str, str] = {}
    for hazard in fired:
        if not hazard.beside:
            ways = (spread.spread(doc, hazard, doc._.concepts), found.get(hazard.id, spread.APART))
            found[hazard.id] = min(ways, key=spread.SPREADS.index)
    return found


def _may_alarm(doc: Doc, heard: HeardIn, before: Scene) -> bool:
    """Whether the net is asked: about the kitchen, and not because of what was said before alone."""
    if not heard.own - PLEAS.keys() or doc._.topic.id in marked("harmless"):
        return False
    if doc._.topic.id == "out_of_scope" and not (doc._.found or doc._.measures or doc._.numbers):
        return False
    return before == Scene() or alarm.sound(heard_in(doc, Scene()).features).danger >= least_alone(before)


def least_alone(before: Scene) -> float:
    """What the net must make of an utterance by itself to warn in general words; less behind what was refused."""
    return SOME if before.danger else BY_ITSELF_FROM


def foods_of(doc: Doc, hazard: Hazard) -> tuple[str, ...]:
    """The dishes of an utterance that are the food of a hazard: the kidney beans that go into the chilli."""
    parts = pieces(rows_of(hazard.id))
    return tuple(dish for dish in scene.dishes_named(doc) if not parts.isdisjoint(concepts.of_row("dish", dish)))


def _after(doc: Doc, before: Scene, heard: HeardIn, taken: Pressing | None, hazard: Hazard | None) -> Scene:
    """The scene after an utterance; a refusal stands until the cook leaves it, and is remembered with its food."""
    last = before.temperature if not heard.another_food else None
    temperature = heard.figures.temps[-1] if heard.figures.temps else last
    heights_m = heard.figures.elevations_m
    dishes, in_celsius = scene.dishes_named(doc) or before.dishes, temperatures.spoken_in_celsius(doc)
    # what is told for something that was refused makes nothing new
    pleaded = heard.own if taken and taken.stance == "pressed" and taken.how in PLEAS.values() else frozenset[str]()
    passing = frozenset(concept for concept in pleaded if scene.kind(concept) == "circumstance")
    after = Scene(
        concepts=scene.staying(heard.held - passing, heard.own),
        danger=before.danger,
        said=scene.words_after(before, doc),
        temperature=temperature,
        elevation_m=heights_m[-1] if heights_m else before.elevation_m,
        celsius=before.celsius if in_celsius is None else in_celsius,
        dishes=dishes,
        refused=before.refused,
        allergens=tuple(dict.fromkeys((*before.allergens, *(told.id for told in doc._.allergies)))),
    )
    if hazard and (hazard.advises or (hazard.in_general and hazard.family != CANNING)):
        # what was warned of in general words says nothing that a later turn could press for
        return after
    if hazard and not hazard.beside:
        same = taken is not None and taken.stance == "pressed"
        foods = taken.refusal.dishes if same and taken else foods_of(doc, hazard) or dishes
        told = pressing.told_of(hazard, heard.held) or (taken.refusal.told if same and taken else ())
        now = Refusal(hazard.id, after.concepts, told, foods)
        return replace(after, danger=hazard.id, dishes=foods, refused=scene.refused(before.refused, now))
    if taken and taken.stance == "left":
        elsewhere = righted.names_other(doc, taken.refusal)
        kept = before.refused if elsewhere else tuple(r for r in before.refused if r != taken.refusal)
        return replace(after, danger=None, refused=kept)
    if taken and taken.stance in ("apart", "open") and not set(scene.dishes_named(doc)) <= set(taken.refusal.dishes):
        # the talk has gone on to another dish: what was refused is remembered with its food, and no longer in the air
        return replace(after, danger=None)
    return after
