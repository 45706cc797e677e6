"""Component: what a why, stage, symptom or adjustment question is about."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.tokens import norms
from assistant.understanding import bake_subject, cooker_time, done_jars, faults, paced
from assistant.understanding.complaints import TROUBLE, complains, of_cooker
from assistant.understanding.safety_subjects import VINEGAR, is_patterned, settle_jam
from assistant.understanding.wondering import (
    OR,
    SURELY,
    TRUE,
    Wonder,
    gives_figure,
    is_doubtful,
    is_general,
    is_meant,
    is_of_kitchen,
    is_of_methods,
    is_passed_on,
    is_read_off,
    is_taught,
    is_timed,
    wonder,
)
from rules.catalogue import marked
from rules.topics.why import GENERAL, WATER

STAGES = {
    "thread": ("thread", "thread stage", "one string", "1 string", "single string", "one thread", "ek taar"),
    "soft_ball": ("soft ball", "softball", "soft ball stage"),
    "firm_ball": ("firm ball", "firmball"),
    "hard_ball": ("hard ball", "hardball"),
    "soft_crack": ("soft crack",),
    "hard_crack": ("hard crack", "hardcrack"),
    "caramel": ("caramel stage", "dark caramel", "light caramel", "caramelize", "caramelise"),
}
# What of a bake is asked about where no ingredient is named; the ids are those of rules.topics.bake_adjust.
ADJUSTED = {
    "oven": ("oven",),
    "liquid": ("liquid", "liquids", "moisture", "hydration"),
    "leavening": ("leavening", "leavener", "leaveners", "raising agent"),
    "foam": ("whites", "whip", "peaks"),
    "pan": ("pan", "pans", "tin", "how full", "fill", "filled", "fill cases"),
    "proof": ("proof", "proofing", "prove", "rise", "rises", "rising", "double", "doubles", "doubled", "doubling"),
    "time": ("baking time", "bake time"),
}
WHY = "why"
# how many tokens a question has at most that says nothing of a dish but where
LONGEST_BARE = 7
# forms in which a reason may be asked for although the question sounds like another
OF_REASONS = frozenset(("why", "is_true", "differ", "what_is", "changes", "can_it", "is_ok", "worth", "which"))
# what a dough told by its two times is taken for; a fault with yeast in it is of its amount as well
PACED = ("bake_adjust", "convert_recipe", "why", "time", TROUBLE)
BULK = "bulk"
# forms that want a figure, which a reason gives only where it is told whatever the topic
OF_FIGURES = frozenset(("how_hot", "how_much"))
BOIL = "boiling_point"
OUTSIDE, TIME, COMPARING = "out_of_scope", "time", frozenset(("which", "differ"))

Doc.set_extension("subject", default=None, force=True)
Doc.set_extension("wonder", default=Wonder(), force=True)


@Language.component(
    "kitchen_subject",
    requires=["doc._.topic", "doc._.safety", "doc._.found", "doc._.elevations", "doc._.forms"],
    assigns=["doc._.subject", "doc._.wonder", "doc._.topic"],
)
def kitchen_subject(doc: Doc) -> Doc:
    """Hear what is wondered at, and the subject that belongs to the topic. A reason that is meant is a why."""
    told = is_patterned(doc._.safety) or doc._.safety == VINEGAR or done_jars.told(doc)
    forms = {form.id for form in doc._.forms}
    of_reasons = doc._.topic.id in marked("of_readings") | {WHY} or not OF_REASONS.isdisjoint(forms)
    of_reasons = of_reasons or OR in norms(doc) or is_passed_on(doc) or is_taught(doc)
    if not told and (of_reasons or not OF_FIGURES.isdisjoint(forms)):
        heard = wonder(doc)
        doc._.wonder = found = heard if of_reasons or gives_figure(heard) else Wonder()
        mended = doc._.topic.id == TROUBLE and of_cooker(doc)
        meant = is_meant(doc, found) and not mended
        if (meant or doc._.topic.id == WHY) and holds_methods_apart(doc, found):
            doc._.topic = replace(doc._.topic, id=TIME, fitting=frozenset())
        elif meant and not cooker_time.checks_time(doc):
            doc._.topic, doc._.safety = replace(doc._.topic, id=WHY, fitting=frozenset()), None
        elif doc._.topic.id == WHY and found.row and found.belief:
            doc._.topic = replace(doc._.topic, fitting=frozenset())
        elif doc._.topic.id == WHY:
            turned = instead(doc, found)
            sure = turned is None and found.row is not None and found.share >= SURELY
            doc._.topic = replace(doc._.topic, id=turned or WHY, fitting=frozenset() if sure else doc._.topic.fitting)
            settle_jam(doc)
    if is_stated_time(doc):
        doc._.topic, doc._.wonder = replace(doc._.topic, id=TIME, fitting=frozenset()), Wonder()
    if is_stated_boil(doc):
        doc._.topic = replace(doc._.topic, id=BOIL, fitting=frozenset())
    if doc._.topic.id in PACED and not doc._.safety and paced.times(doc):
        doc._.topic = replace(doc._.topic, id="bake_adjust", fitting=frozenset())
    if is_bare_dish(doc):
        doc._.topic = replace(doc._.topic, id="bake_adjust" if "baking" in doc._.signs else "time")
    if doc._.topic.id == "bake_adjust" and BULK in norms(doc) and bake_subject.special(doc) == bake_subject.PROOF:
        doc._.topic = replace(doc._.topic, fitting=frozenset())
    doc._.subject = str(doc._.safety) if doc._.safety else subject(doc, doc._.topic.id)
    return doc


def is_stated_boil(doc: Doc) -> bool:
    """Whether it is put to the test at what temperature water boils somewhere, and none was read off."""
    topic, found = doc._.topic.id, doc._.wonder
    of_the_boil = topic in marked("of_readings_told") or (topic == WHY and found.row == WATER and not found.belief)
    tested = is_passed_on(doc) or any(form.id == TRUE for form in doc._.forms)
    return of_the_boil and tested and bool(doc._.elevations) and is_timed(doc) and not is_read_off(doc)


def is_stated_time(doc: Doc) -> bool:
    """Whether it is put to the test how long a dish takes somewhere, and no reason is asked for."""
    forms, found = {form.id for form in doc._.forms}, doc._.wonder
    tested = is_passed_on(doc) or TRUE in forms
    timed = any(measure.kind == "time" for measure in doc._.measures)
    plain = doc._.topic.id == WHY and WHY not in forms and not found.tested and not found.terms
    return plain and tested and timed and not doc._.safety and any(found.kind == "dish" for found in doc._.found)


def holds_methods_apart(doc: Doc, found: Wonder) -> bool:
    """Whether it asks which of two ways of cooking a dish changes more in a place: each has its figures."""
    forms = {form.id for form in doc._.forms}
    asked = not forms.isdisjoint(COMPARING) and WHY not in forms
    return asked and bool(doc._.elevations) and not found.belief and is_of_methods(doc)


def is_bare_dish(doc: Doc) -> bool:
    """Whether a dish and a place are all that is said, so that nothing has gone wrong: pasta at the Stelvio."""
    if doc._.topic.id != TROUBLE or doc._.forms or len(doc) > LONGEST_BARE or doc._.safety:
        return False
    return any(found.kind == "dish" for found in doc._.found) and not faults.told(doc) and not complains(doc)


def subject(doc: Doc, topic: str) -> str | None:
    """The id of what is asked about, in the catalogue of a topic; None where the text names nothing of it."""
    words, found = norms(doc), doc._.found
    match topic:
        case "why":
            return explanation(doc)
        case "sugar_stage":
            return stage(" ".join(words))
        case "troubleshoot":
            return next(iter(faults.told(doc)), None)
        case "bake_adjust" if paced.times(doc) and (raised := paced.yeast(doc)):
            return raised.id
        case "bake_adjust":
            return bake_subject.special(doc) or bake_subject.ingredient(doc) or named(ADJUSTED, " ".join(words))
        case "preserve":
            return None
        case "order" | "liquid":
            return _first(found, "ingredient") or _first(found, "place")
        case _:
            return _first(found, "place")


def _first(found: Sequence[Found], kind: str) -> str | None:
    return next((f.id for f in found if f.kind == kind), None)


def stage(text: str) -> str | None:
    """The sugar stage that is named.

    >>> stage("what temperature is soft ball here")
    'soft_ball'
    """
    return named(STAGES, text)


def stages_named(doc: Doc) -> tuple[str, ...]:
    """Every sugar stage that is named, in the order said; none where it is but one."""
    padded = f" {' '.join(norms(doc))} "
    at = {
        id: min(found)
        for id, names in STAGES.items()
        if (found := [i for n in names if (i := padded.find(f" {n} ")) >= 0])
    }
    return tuple(sorted(at, key=lambda id: at[id])) if len(at) > 1 else ()


def named(catalogue: Mapping[str, Sequence[str]], text: str) -> str | None:
    """The first id of a catalogue one of whose names stands in the text, word by word."""
    padded = f" {text} "
    return next((id for id, names in catalogue.items() if any(f" {n} " in padded for n in names)), None)


def explanation(doc: Doc) -> str | None:
    """The explanation that is asked for: the one that is meant, else the general reason where none is near.

    None where nothing is said but a dish and a method, which tell the explanation themselves.
    """
    found: Wonder = doc._.wonder
    if found.row or found.rivals or found.terms or found.idle or not is_general(doc):
        return found.row
    return GENERAL


def instead(doc: Doc, found: Wonder) -> str | None:
    """The topic of what only sounds like a why: something that went wrong and nothing explains, or the next likely."""
    nothing = not (found.row or found.rivals or found.terms)
    if nothing and complains(doc):
        return TROUBLE
    if nothing and not found.idle and not is_of_kitchen(doc):
        return OUTSIDE
    return doc._.topic.scores[1][0] if is_doubtful(doc, found) else None
