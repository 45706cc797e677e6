"""What is wondered at: the one reason that is meant, two that are equally near, the belief that was stated, or a word.

A reason is told only where all that it is about was said and little of the question is left over. Where two are near
the reply offers both; where none is, it falls back on the general reason.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding import lexicon, senses, trade_words
from assistant.understanding.asked_ways import EITHER, asked_way
from assistant.understanding.complaints import TROUBLE, complains
from assistant.understanding.concepts import CANNING
from assistant.understanding.explanations import Match, index, nearest, ranked
from assistant.understanding.forms import clause_starts
from assistant.understanding.senses import Slot
from rules.catalogue import marked
from rules.topics.why import YES_OR_NO, asked_claim, rows

# how much of a question a reason has to explain, by the weight of its words; so much that it is offered all the same
ENOUGH, NEARLY = 0.44, 0.58
# how far the best reason has to be ahead of the next, as a share of its score
AHEAD = 0.07
# how far the next has to be behind one that explains less
FAR = 0.9
# how near the next has to be to be offered beside it
HALF = 0.6
# the weight of a word that tells what the talk is of, such as no word has that many reasons share
TELLING = 2.6
WHY, TRUE, DIFFER, WHICH = "why", "is_true", "differ", "which"
# what is put up in jars has its own judge
PUT_UP = senses.SENSE + CANNING
ITS_FAULT, WHAT_IF, HOT = "broken", "what_if", "how_hot"
# behind these a no only asks for the one or the other: true or not, why not
NO_DENIAL = ("or", "why", "if")
# the word by which even of a fault the reason is asked for
EXPLAIN = "explain"
# forms in which a choice is put, and how much of the question it then has to explain; a fault is mended first
ENDS = frozenset((".", "?", "!", ";"))
# how far ahead a topic is that no reason takes a question from where no two things are set apart
FAR_AHEAD = 3.0
OR, CHOICES, CHOSEN, WRONG = "or", frozenset((WHICH, DIFFER)), 0.28, "wrong"
WANT_A_FIGURE = frozenset(("how_long", "how_hot", "how_much", "more", "start", "remaining", "convert", "how_to"))
# a topic that is taken for a why only where a why opens the question
OF_KITCHEN = frozenset(("dish", "method", "equipment", "ingredient"))
RECIPE = "convert_recipe"
PRESSURE = "pressure"
# how much of a question a reason explains that takes it from a topic that is far ahead
SURELY = 0.75
# how much where two things are told apart, and a topic of the clock is heard for no more than a word such as lunch
LEAST = 0.4
# how little a topic is ahead of the next where it is in doubt
DOUBT = 1.2
# the same where the topic is why, and nothing in the form of the question says so
CLOSE = 1.0


@dataclass(frozen=True, slots=True)
class Wonder:
    """What is wondered at.

    row: the explanation; belief: the one about it that was stated, and denied: whether it was said not to hold
    rivals: the one or two explanations that may be meant, where none is told; terms: words of the trade asked about
    share: how much of the question the row explains; idle: whether nothing was said but where, what dish and how
    plainly: whether the meaning of a word is all that can be meant
    also: a second explanation that is as near, and told behind the first
    tested: whether the belief is judged whatever the topic
    """

    row: str | None = None
    belief: str | None = None
    denied: bool = False
    rivals: tuple[str, ...] = ()
    terms: tuple[str, ...] = ()
    share: float = 0.0
    idle: bool = False
    plainly: bool = False
    also: str | None = None
    tested: bool = False


def wonder(doc: Doc) -> Wonder:
    """What an utterance wonders at, whatever its topic."""
    said = senses.slots(doc)
    asks, stated = trade_words.asked(doc, said), is_stated(doc)
    if asks.plainly and not holds_apart(doc):
        return Wonder(terms=asks.terms, share=1.0, plainly=True)
    matches = ranked(said, senses.heard_in(doc), beliefs=stated)
    if stated and (tested := put_to_the_test(doc, said, matches)):
        return tested
    if taught := next((m for m in matches if m.framed and rows()[m.of.row].for_a_class), None):
        return Wonder(taught.of.row, share=taught.share)
    found = chosen(said, matches, denied=stated and is_negated(doc, said), claim=claim(doc, said) if stated else None)
    apart = found.row is not None and rows()[found.row].tells_apart
    found = found if apart else choice_of_sentence(doc) or found
    told = found.row and (len(asks.terms) < 2 or rows()[found.row].tells_apart)
    return found if told or not asks.terms else Wonder(terms=asks.terms, share=1.0)


def put_to_the_test(doc: Doc, said: Sequence[Slot], matches: Sequence[Match]) -> Wonder | None:
    """The belief judged whatever the topic: all that it is about was said, and no figure is wanted beside it."""
    forms = {form.id for form in doc._.forms}
    if any(PUT_UP in slot.features for slot in said):
        return None
    if not WANT_A_FIGURE.isdisjoint(forms - {HOT}) and TRUE not in forms and not is_passed_on(doc):
        return None
    framed = (m for m in matches if m.framed and m.of.belief and rows()[m.of.row].beliefs[m.of.belief].tested)
    first = next(framed, None)
    if first is None:
        return None
    denied, way = is_negated(doc, said), claim(doc, said)
    turned = is_turned(first, denied=denied, claim=way)
    return Wonder(first.of.row, first.of.belief, turned, share=first.share, tested=True)


def choice_of_sentence(doc: Doc) -> Wonder | None:
    """What the one sentence with an or sets apart, where a tray, an oven and a move are told before it."""
    words = norms(doc)
    at = next((i for i in range(len(words) - 1, -1, -1) if words[i] == OR), None)
    if at is None:
        return None
    start = next((i + 1 for i in range(at, -1, -1) if words[i] in ENDS), 0)
    end = next((i for i in range(at, len(words)) if words[i] in ENDS), len(words))
    if start == 0 and end >= len(words) - 1:
        return None
    said = (
        *senses.slots(doc, range(start, end)),
        *(
            replace(slot, counts=False)
            for slot in senses.slots(doc, range(start)) + senses.slots(doc, range(end, len(doc)))
        ),
    )
    matches = ranked(said, senses.heard_in(doc), beliefs=False)
    apart = next((m for m in matches if rows()[m.of.row].tells_apart and m.framed and m.share >= CHOSEN), None)
    if apart is None or apart.score < FAR * matches[0].score:
        return None
    return Wonder(apart.of.row, share=apart.share)


def claim(doc: Doc, said: Sequence[Slot]) -> str | None:
    """What is put to the test: that something changes up high, or that it stays the same; None where nothing tells."""
    way = asked_way(doc)
    if way == EITHER:
        return "same" if is_negated(doc, said) else None
    of = asked_claim(way)
    return of if of is None or not is_negated(doc, said) else "same" if of == "change" else "change"


def chosen(said: Sequence[Slot], matches: Sequence[Match], *, denied: bool, claim: str | None = None) -> Wonder:
    """The reason among the nearest, or those that are too near to choose between."""
    first, second = _two(matches)
    if first is None or (first.telling < TELLING and not first.framed):
        return Wonder(idle=all(is_known(slot) for slot in said if slot.counts))
    if is_told(first, second) or is_stated_rather(first, second):
        of = belief_of(first.of.row, matches)
        turned = of is not None and is_turned(of, denied=denied, claim=claim)
        return Wonder(first.of.row, of.of.belief if of else None, turned, share=first.share)
    if all(_of_lexicon_alone(slot) for slot in said if slot.counts):
        return Wonder(idle=True)
    if second and min(first.share, second.share) >= NEARLY and first.framed and second.framed:
        return Wonder(first.of.row, also=second.of.row, share=first.share)
    if second and ((first.share >= NEARLY and second.share >= ENOUGH) or _both(first, second)):
        return Wonder(rivals=(first.of.row, second.of.row))
    return Wonder(rivals=(first.of.row,)) if first.share >= NEARLY else Wonder()


def is_turned(match: Match, *, denied: bool, claim: str | None) -> bool:
    """Whether the contrary of a belief was stated: by a no, or by asking for change where it says the same."""
    belief = rows()[match.of.row].beliefs[str(match.of.belief)]
    if belief.claims is not None:
        return claim is not None and claim != belief.claims
    return belief.polarity != "either" and denied != (belief.polarity == "negative")


def is_told(first: Match, second: Match | None) -> bool:
    """Whether the nearest is meant beyond doubt: it explains enough, and no other is nearly as near."""
    if not first.near:
        return False
    near = second is not None and second.share >= ENOUGH and (second.near or not first.framed)
    if near and second and first.score - second.score < AHEAD * first.score:
        return False
    behind = second is None or second.score < (FAR if second.framed else 1.0) * first.score
    return first.share >= ENOUGH or behind


def is_stated_rather(first: Match, second: Match | None) -> bool:
    """Whether the belief itself was stated, beside which a reason that is as near but no belief is but its why."""
    told = first.of.belief is not None and first.near and first.share >= ENOUGH
    return told and second is not None and second.of.belief is None


def holds_apart(doc: Doc) -> bool:
    """Whether more than two ways of cooking are held against each other, so that no one word is asked for."""
    methods = {found.id for found in doc._.found if found.kind == "method"}
    return len(methods) > 2 and any(form.id == DIFFER for form in doc._.forms)


def _both(first: Match, second: Match) -> bool:
    """Whether two are near enough to be offered although much of the question is left over."""
    return first.near and second.framed and second.score >= HALF * first.score


def _two(matches: Iterable[Match]) -> tuple[Match | None, Match | None]:
    """The nearest of two explanations; a belief stands for the one that it is about."""
    best: dict[str, Match] = {}
    for match in matches:
        best.setdefault(match.of.row, match)
    first, second, *_ = (*best.values(), None, None)
    return first, second


def belief_of(row: str, matches: Iterable[Match]) -> Match | None:
    """The nearest belief about an explanation of which all was said."""
    return next((m for m in matches if m.of.row == row and m.of.belief and m.framed), None)


def is_known(slot: Slot) -> bool:
    """Whether some reason has the word, or the lexicon."""
    return _of_lexicon_alone(slot) or not slot.features.isdisjoint(index().weights)


def _of_lexicon_alone(slot: Slot) -> bool:
    return any(feature[0] == "<" for feature in slot.features)


def is_stated(doc: Doc) -> bool:
    """Whether a belief is stated or put to the test: is it true, does it, he says so, right?"""
    forms = {form.id for form in doc._.forms}
    starts = clause_starts(doc)
    auxiliary = (at for at, word in enumerate(norms(doc)) if word in senses.words("auxiliaries"))
    if TRUE in forms or not starts.isdisjoint(auxiliary):
        return True
    return WHY not in forms and is_passed_on(doc)


def is_negated(doc: Doc, said: Sequence[Slot]) -> bool:
    """Whether what is stated is turned round by a no; a question's own `isn't it` is none, and two noes make a yes."""
    told = {word for slot in said for word in slot.features}
    words = norms(doc)
    noes = [at for at, word in enumerate(words) if word in senses.words("negations") and word not in told]
    noes = [at for at in noes if at not in clause_starts(doc) and words[at - 1] not in NO_DENIAL]
    tags = sum(words[at + 1] in ("it", "that", "they") for at in noes if at + 1 < len(words))
    return (len(noes) - tags) % 2 == 1


def is_meant(doc: Doc, found: Wonder) -> bool:
    """Whether an utterance that sounds like another topic wonders at something all the same.

    A reason, a truth or a word is asked for outright; or a belief was stated, and the topic is in doubt.
    """
    topic, forms = doc._.topic, tuple(form.id for form in doc._.forms)
    if found.tested or is_for_a_class(found):
        return not doc._.safety
    if topic.id == "sugar_stage" and "how_hot" in forms and not (found.row and is_between(found.row, doc, forms)):
        return False
    if is_choice(found, topic.id, forms) and not is_of_methods(doc):
        return True
    if found.row and rows()[found.row].outright:
        between = is_between(found.row, doc, forms)
        open_to_it = topic.id not in marked("no_why") and topic.margin < FAR_AHEAD
        if found.share >= (CHOSEN if between else ENOUGH) and (between or open_to_it):
            return True
    if is_outright(found) and found.share >= SURELY and topic.id != "sugar_stage":
        return True
    if topic.id in marked("no_why"):
        return False
    if is_outright(found) or is_held_apart(found, forms):
        return True
    if found.plainly:
        return True
    if doc._.safety or not (found.row or found.rivals) or not is_of_kitchen(doc):
        return False
    if wants_verdict_on_change(doc, found, forms):
        return True
    if WHAT_IF in forms and is_timed(doc) and topic.id in marked("by_method"):
        return False
    if found.row and found.share >= ENOUGH and is_left_open(doc, found, forms):
        return True
    if is_belief_alone(doc, found, forms):
        return True
    if found.belief and (TRUE in forms or (is_passed_on(doc) and found.share >= NEARLY)):
        return True
    if found.row and rows()[found.row].no_fault and found.share >= ENOUGH and is_stuck(doc):
        return True
    if topic.id == TROUBLE and found.belief and found.share >= ENOUGH and not complains(doc):
        return True
    if topic.id == TROUBLE and is_own_fault(doc):
        return False
    outright = opens_with_why(doc) or asks_reason(doc) or (forms[:1] == (WHY,) and topic.id != RECIPE)
    if outright or (TRUE in forms and found.row):
        return True
    if topic.id == PRESSURE and found.row and found.share >= NEARLY and is_beside_open_pot(doc):
        return True
    if not found.row or not WANT_A_FIGURE.isdisjoint(forms):
        return False
    if topic.id == RECIPE:
        asked = found.share >= SURELY and is_of_height(doc) and not doc._.found and not doc._.elevations
        return asked or (found.share >= LEAST and is_after_reason(doc))
    if found.belief and found.share >= NEARLY and topic.id in marked("of_service") and not is_dish_named(doc):
        return True
    if topic.id == PRESSURE and found.share >= SURELY and forms[:1] == (DIFFER,) and len(doc._.elevations) > 1:
        return True
    return found.share >= NEARLY and is_in_doubt(doc, found, forms)


def is_for_a_class(found: Wonder) -> bool:
    """Whether a thing is wanted that a class, a child or a board is told by."""
    return bool(found.row) and rows()[str(found.row)].for_a_class


def is_taught(doc: Doc) -> bool:
    """Whether words of teaching were said: a demonstration, a sum for the board, a child."""
    return not senses.words("teaching").isdisjoint(norms(doc))


def is_read_off(doc: Doc) -> bool:
    """Whether a figure was read off an instrument, or is a step, and not a boil that is said of a place."""
    words = norms(doc)
    return not senses.words("of_a_reading").isdisjoint(words) or not senses.words("of_a_step").isdisjoint(words)


def is_between(row: str, doc: Doc, forms: Sequence[str]) -> bool:
    """Whether it asks which of the two things that a reason tells apart: much else may be told with it."""
    asked = OR in norms(doc) or not CHOICES.isdisjoint(forms)
    return rows()[row].tells_apart and asked and WRONG not in forms[:1]


def is_left_open(doc: Doc, found: Wonder, forms: Sequence[str]) -> bool:
    """Whether the topic is no matter beside the reason: the cook wonders whose fault it is, or what comes of it.

    Nor is it where a reason may be meant as well, and a belief was stated or what becomes of a thing was asked.
    """
    topic = doc._.topic
    in_forms = rows()[found.row].in_forms if found.row else frozenset()
    if not in_forms.isdisjoint(forms) and {"is_ok"} <= set(forms) and topic.id in marked("in_form"):
        return WANT_A_FIGURE.isdisjoint(forms) and "what_is" not in forms and not is_timed(doc)
    if ITS_FAULT in forms and topic.id in marked("in_form") and not is_timed(doc):
        return True
    if WHAT_IF in forms and topic.id in marked("of_a_formula") and not is_timed(doc):
        return True
    return bool(topic.choices) and ((WHY in topic.choices and bool(found.belief)) or is_after_reason(doc))


def wants_verdict_on_change(doc: Doc, found: Wonder, forms: Sequence[str]) -> bool:
    """Whether it asks, without a dish or a figure, if a thing changes up high, and a reason says whether it does."""
    if found.row is None or found.share < SURELY or is_timed(doc) or doc._.topic.id not in marked("gives_verdict"):
        return False
    row = rows()[found.row]
    claims = row.beliefs[found.belief].claims if found.belief else row.claims
    asked = asked_claim(asked_way(doc)) is not None or (
        claims is not None and is_stated(doc) and found.belief is not None
    )
    wants = not YES_OR_NO.isdisjoint(forms) and {"what_is", "which", *WANT_A_FIGURE}.isdisjoint(forms)
    return claims is not None and asked and wants and (doc._.topic.id == RECIPE or not is_dish_named(doc))


def is_belief_alone(doc: Doc, found: Wonder, forms: Sequence[str]) -> bool:
    """Whether nearly all that was said is a belief put to the test, without a dish or a figure of the cook's own."""
    if found.row is None or found.belief is None or rows()[found.row].beliefs[found.belief].claims is not None:
        return False
    tested = found.share >= SURELY and is_stated(doc)
    wants = not {"is_ok", TRUE}.isdisjoint(forms) and WANT_A_FIGURE.isdisjoint(forms)
    return tested and wants and not is_timed(doc) and not is_dish_named(doc) and not complains(doc)


def is_timed(doc: Doc) -> bool:
    """Whether a figure beside the elevation was said, which wants an answer of its own."""
    high = {i for height in doc._.elevations for i in range(height.start, height.end)}
    return any(span.start not in high for span in (*doc._.measures, *doc._.numbers))


def is_outright(found: Wonder) -> bool:
    """Whether a reason was heard that is told whatever the topic, and not only where two things are set apart."""
    row = rows()[found.row] if found.row else None
    return row is not None and row.outright and not row.tells_apart and found.share >= ENOUGH


def gives_figure(found: Wonder) -> bool:
    """Whether a reason was heard that has the figure asked for: told whatever the topic, and asked about in full."""
    return is_outright(found) and found.row is not None and rows()[found.row].in_full


def is_held_apart(found: Wonder, forms: Sequence[str]) -> bool:
    """Whether it asks which of two things suffers more, and all that the reason is about was said."""
    asked = found.row is not None and rows()[found.row].tells_apart and rows()[found.row].in_full
    return asked and not {WHICH, DIFFER}.isdisjoint(forms) and found.share >= ENOUGH


def is_choice(found: Wonder, topic: str, forms: Sequence[str]) -> bool:
    """Whether it asks which of two things is better, though a word such as lunch sounds of the clock."""
    if not found.row or WHICH not in forms or topic not in marked("of_service") or not WANT_A_FIGURE.isdisjoint(forms):
        return False
    return rows()[found.row].tells_apart and found.share >= LEAST


def is_of_methods(doc: Doc) -> bool:
    """Whether it is asked by which of two ways of cooking a dish is made: each has its time."""
    words = norms(doc)
    heads = {lexicon.method_inside(words, found) for found in doc._.found if found.kind == "dish"}
    methods = {found.id for found in doc._.found if found.kind == "method"} | (heads - {None})
    return is_dish_named(doc) and len(methods) > 1


def is_beside_open_pot(doc: Doc) -> bool:
    """Whether something is held against a pot: hotter than an open pot."""
    words = norms(doc)
    return "than" in words and "pot" in words


def is_dish_named(doc: Doc) -> bool:
    """Whether a dish is named."""
    return any(found.kind == "dish" for found in doc._.found)


def is_doubtful(doc: Doc, found: Wonder) -> bool:
    """Whether nothing but the learned table takes an utterance for a why, and another topic is nearly as likely."""
    topic, forms = doc._.topic, {form.id for form in doc._.forms}
    if found.row and ITS_FAULT in forms:
        return False
    if topic.id != WHY or topic.margin >= CLOSE or len(topic.scores) < 2 or found.belief or found.terms:
        return False
    return forms.isdisjoint((WHY, TRUE, DIFFER)) and topic.scores[1][0] not in marked("passing")


def is_in_doubt(doc: Doc, found: Wonder, forms: Sequence[str]) -> bool:
    """Whether a topic that is not far ahead of the next gives way to a reason that nobody asked for outright."""
    topic = doc._.topic
    if forms[:1] == (DIFFER,):
        high = {i for height in doc._.elevations for i in range(height.start, height.end)}
        return len(doc._.elevations) < 2 and all(measure.start in high for measure in doc._.measures)
    if found.share >= SURELY and is_after_reason(doc):
        return True
    if found.belief is not None:
        return topic.margin < DOUBT or topic.id in marked("passing")
    return bool(forms) and is_of_height(doc) and topic.id in marked("passing")


def asks_reason(doc: Doc) -> bool:
    """Whether it asks for the reason by that name."""
    text = f" {' '.join(norms(doc))} "
    return any(f" {cue} " in text for cue in senses.words("by_name"))


def is_after_reason(doc: Doc) -> bool:
    """Whether it asks how a thing can be, or what becomes of it."""
    text = f" {' '.join(norms(doc))} "
    return any(f" {cue} " in text for cue in senses.words("after_reason"))


def is_stuck(doc: Doc) -> bool:
    """Whether it tells of a reading that does not come, or not go on."""
    return not senses.words("stuck").isdisjoint(norms(doc))


def is_own_fault(doc: Doc) -> bool:
    """Whether a cook complains of a dish of their own, which is mended and not explained unless they ask for that."""
    words = norms(doc)
    own = not senses.words("own").isdisjoint(words) and any(found.kind == "dish" for found in doc._.found)
    return own and EXPLAIN not in words and complains(doc)


def opens_with_why(doc: Doc) -> bool:
    """Whether the first word asks after a reason."""
    return any(form.id == WHY and form.start == 0 for form in doc._.forms)


def is_of_kitchen(doc: Doc) -> bool:
    """Whether it speaks of food, of cooking or of elevation at all."""
    named = any(found.kind in OF_KITCHEN for found in doc._.found)
    return named or is_of_height(doc) or not senses.words("of_kitchen").isdisjoint(norms(doc))


def is_general(doc: Doc) -> bool:
    """Whether it speaks of elevation and names no food or way of cooking, whose own reason would be nearer."""
    return is_of_height(doc) and not is_of_a_dish(doc)


def is_of_a_dish(doc: Doc) -> bool:
    """Whether it names a food or a way of cooking."""
    return any(found.kind in ("dish", "method") for found in doc._.found)


def is_of_height(doc: Doc) -> bool:
    """Whether it speaks of elevation."""
    return bool(doc._.elevations) or not senses.words("of_height").isdisjoint(norms(doc))


def is_passed_on(doc: Doc) -> bool:
    """Whether somebody's belief is passed on: he says so, it is a myth, right?"""
    words = [word for word in norms(doc) if word.isalnum()]
    text, said = f" {' '.join(words)} ", senses.words("saying").intersection(words)
    tagged = any(text.endswith(f" {tag} ") for tag in senses.words("tags"))
    told = bool(said) and not senses.words("people").isdisjoint(words)
    return tagged or told or any(f" {phrase} " in text for phrase in senses.words("passed_on"))


def claimant(doc: Doc) -> str | None:
    """Who is said to hold the belief, where it is asked who is right; None where two are named, or nobody.

    The id is of data/lexicon/senses.toml; its words stand in data/wording.
    """
    words = norms(doc)
    text = f" {' '.join(word for word in words if word.isalnum())} "
    if not any(f" {phrase} " in text for phrase in senses.words("who_is_right")):
        return None
    held = {id for id, names in senses.claimants().items() if not names.isdisjoint(words)}
    return held.pop() if len(held) == 1 else None


def offered(names: Sequence[str], doc: Doc) -> str | None:
    """The one of some explanations whose words a reply shares; None where it shares none, or those of all alike."""
    said = senses.slots(doc)
    among = np.array([i for i, of in enumerate(index().candidates) if of.row in names], dtype=np.intp)
    first, second = _two(nearest(said, frozenset(), among))
    return first.of.row if first and (second is None or second.score < first.score) else None
