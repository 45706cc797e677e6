"""Component: whether somebody complains that a dish went wrong; then the question is about that, whatever its words."""

from __future__ import annotations

from dataclasses import replace

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import fault_questions, faults, tins, what_is_in_it
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues, said
from assistant.understanding.forms import clause_starts
from assistant.understanding.topics import Topic
from rules.foods.dishes import dishes

TROUBLE = "troubleshoot"
# forms that ask for a figure or a judgement of their own: a fault beside them is only told with it
ASK_APART = frozenset((
    "how_long", "how_hot", "how_much", "more", "remaining", "start", "convert", "differ", "is_true", "worth", "done",
    "safe",
))  # fmt: skip
JUDGED = "doneness"
BAKE = "bake_adjust"
# what nobody asks of alone where it stands with flour
BATTER, EGG = ("flour", "sugar", "leavening"), "egg"
WHY, SURE, SHORT = "why", 1.0, 8
# the learned table is believed where it is surer than this that something else is asked
MOST_AGAINST = 4.0
# amounts of ingredients speak for the bake, and the fault told beside them is what is asked about all the same
MOST_AGAINST_A_FORMULA, FEWEST_AMOUNTS = 14.0, 2
# words that ask for the cause or the mend, and those that tell it is the asker's own dish
ASKS_CAUSE, OWN, CHANGES = (cues("complaint", name) for name in ("asks_cause", "own", "changes"))
# a dentist is asked for, whatever broke the tooth
NOT_OF_FOOD = "trades"
SAVING = cues("saving", "words")
COOKER_FAULTS = ("no_pressure", "vent_steams", "burn_notice")


@Language.component(
    "kitchen_complaints", requires=["doc._.faults", "doc._.forms", "doc._.topic"], assigns=["doc._.topic"]
)
def kitchen_complaints(doc: Doc) -> Doc:
    """Take a complaint for a question about what went wrong; and what is only feared for the question next to it."""
    topic = doc._.topic
    if NOT_OF_FOOD in doc._.signs:
        return doc
    most = MOST_AGAINST_A_FORMULA if tells_formula(doc) else MOST_AGAINST
    if (complains(doc) or asks_to_save(doc)) and (against(topic) < most or of_cooker(doc)):
        # what went into another tin for the same time is answered by its tins
        id = BAKE if tins.swapped(doc.text) else TROUBLE
        doc._.topic = replace(topic, id=id, margin=max(topic.margin, SURE))
    elif topic.id == JUDGED and names_a_batter(doc):
        doc._.topic = replace(topic, id=BAKE, margin=SURE)
    elif topic.id == TROUBLE and only_fears(doc):
        others = tuple(score for score in topic.scores if score[0] != TROUBLE)
        other = next((id for id, _ in others if id in topic.fitting), TROUBLE)
        doc._.topic = replace(topic, id=other, margin=SURE, scores=others)
    return doc


def names_a_batter(doc: Doc) -> bool:
    """Whether nothing is named but what a batter is made of: flour, sugar, eggs, powder."""
    roles = {what_is_in_it.roles().get(found.id) for found in doc._.found if found.kind == "ingredient"}
    named = {dishes()[found.id].dish_class for found in doc._.found if found.kind == "dish"}
    return "flour" in roles and len(roles.intersection(BATTER)) > 1 and named <= {EGG}


def tells_formula(doc: Doc) -> bool:
    """Whether two amounts or more of ingredients are told."""
    named = {found.id for found in doc._.found if found.kind == "ingredient"}
    figures = sum(measure.kind in ("mass", "volume") for measure in doc._.measures) + len(plain_numbers(doc))
    return min(len(named), figures) >= FEWEST_AMOUNTS


def against(topic: Topic) -> float:
    """How far the learned table puts another topic before the one of what went wrong."""
    scores = dict(topic.scores)
    return max(scores.values(), default=0.0) - scores.get(TROUBLE, 0.0)


def asks_to_save(doc: Doc) -> bool:
    """Whether nothing is asked but how to save what was spoken of: can I save them?"""
    words = norms(doc)
    return len(doc) <= SHORT and said(words, SAVING) and not any(f.kind == "dish" for f in doc._.found)


def only_fears(doc: Doc) -> bool:
    """Whether every fault of an utterance is but feared or supposed, and nothing is to be mended: will it sink."""
    words = norms(doc)
    feared = [fault.said == "wished" for fault in doc._.faults]
    return bool(feared) and all(feared) and not said(words, (*ASKS_CAUSE, *SAVING))


def complains(doc: Doc) -> bool:
    """Whether an utterance tells a fault that happened, and asks for nothing else.

    >>> from assistant.understanding.pipeline import read
    >>> complains(read("my muffins sank")), complains(read("why do muffins sink")), complains(read("do muffins sink"))
    (True, False, False)
    """
    if not any(fault.told for fault in doc._.faults):
        return False
    words = norms(doc)
    forms = {form.id for form in doc._.forms}
    if WHY in forms or doc._.topic.id == WHY:
        return is_own(doc) or of_cooker(doc)
    if fault_questions.either(doc):
        return True
    if changes_an_ingredient(doc):
        return False
    return said(words, ASKS_CAUSE) or forms.isdisjoint(ASK_APART)


def of_cooker(doc: Doc) -> bool:
    """Whether the fault is of a pressure cooker itself, whose words speak for its pressure whatever is asked.

    A question that opens with its no tells none: doesn't a pressure cooker make up for it?
    """
    told = (fault for fault in doc._.faults if fault.told and fault.symptom in COOKER_FAULTS)
    return any(fault.start not in clause_starts(doc) for fault in told)


def is_own(doc: Doc) -> bool:
    """Whether it is about a dish of the asker's own, and about something that can go wrong with it."""
    if not said(norms(doc), OWN):
        return False
    dish = next((found.id for found in doc._.found if found.kind == "dish"), None)
    if dish is None:
        return False
    # the rules of mending are imported only where somebody wonders at what went wrong
    from rules.mending.symptoms import Failed, all_meant

    failed = Failed(dish_class=dishes()[dish].dish_class, dish=dish)
    return any(row.befalls(failed) for row in all_meant(faults.told(doc), failed))


def changes_an_ingredient(doc: Doc) -> bool:
    """Whether it is asked outright for more or less of an ingredient: less yeast?"""
    starts = {found.start for found in doc._.found if found.kind == "ingredient"}
    return any(at and norms(doc)[at - 1] in CHANGES for at in starts)
