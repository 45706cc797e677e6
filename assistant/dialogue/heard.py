"""An utterance as it is heard in its conversation: read once, with all that a turn goes by."""

from __future__ import annotations

from dataclasses import dataclass, replace

from spacy.tokens import Doc

from assistant import drill
from assistant.dialogue import moves, talk, whereabouts
from assistant.dialogue.memory import Memory
from assistant.dialogue.moves import Move
from assistant.dialogue.thread import in_context
from assistant.drill import Wanted
from assistant.reading.tokens import norms
from assistant.understanding import danger, leaning, place_roles, short_turns, sugar_figures, unclaimed
from assistant.understanding.awaited import given
from assistant.understanding.conversation import told_in_metres
from assistant.understanding.corrected import after_taking_back
from assistant.understanding.danger import Listened
from assistant.understanding.in_full import in_full
from assistant.understanding.request import Hearing
from assistant.understanding.scene import Scene
from assistant.understanding.utterance import Utterance, listen
from rules.catalogue import marked
from rules.engine import known
from rules.model import Kitchen, Request

# the piece that is chosen among what was offered, in any words
WHICH = "explanation"
# what is said after an answer where a guest has an allergy
ALLERGY = "allergy_named"


@dataclass(frozen=True, slots=True)
class Heard:
    """An utterance in its conversation.

    hearing: what it says, as a reply where one is awaited; listened: the danger in it
    move: what it does to the conversation, and nothing else
    drill: the drill it asks for; answers_drill: whether it replies to the question of one
    back_to_recipe: whether it speaks of a recipe as of one that is known; depth: of the answer, whatever it says
    """

    text: str
    doc: Doc
    hearing: Hearing
    listened: Listened
    move: Move | None
    drill: Wanted | None
    answers_drill: bool
    back_to_recipe: bool
    depth: int | None

    @property
    def is_refused(self) -> bool:
        """Whether a danger was heard that forbids what is asked."""
        hazard = self.listened.hazard
        return hazard is not None and not hazard.beside

    @property
    def warned_beside(self) -> tuple[str, ...]:
        """The danger that is warned of after the answer."""
        hazard, guests = self.listened.hazard, self.listened.scene.allergens
        if hazard and hazard.beside:
            return (hazard.id,)
        return (ALLERGY,) if guests and hazard is None and self.feeds_guests else ()

    @property
    def feeds_guests(self) -> bool:
        """Whether dishes are talked of, or a plan, so that a guest's allergy bears on it."""
        named = any(found.kind == "dish" for found in self.doc._.found)
        return named or self.hearing.request.topic in marked("feeding")

    def in_context(self, memory: Memory) -> Hearing:
        """What it says, as the question before makes it plain."""
        return in_context(self.hearing, memory.request, memory.before)


def hear(text: str, memory: Memory, depth: int | None = None) -> Heard:
    """Hear an utterance, and nothing of it twice. A recipe that was pasted is not listened to for danger."""
    utterance = whole = listen(text, spoken_in(memory), memory.asked)
    meant = talk.without_acknowledgement(text)
    left = after_taking_back(meant)
    if left != text and not whole.hearing.request.recipe:
        # what is taken back is no question any more; danger is heard in all that was said
        utterance = listen(left, spoken_in(memory), memory.asked)
    said = moves.words(meant)
    plain = plainly(utterance, memory)
    taken = taken_up(plain, memory)
    return Heard(
        text=text,
        doc=plain.doc,
        hearing=replace(taken, request=replace(taken.request, text=whole.hearing.request.text)),
        listened=danger.listen(whole.doc, scene_in(memory)),
        move=moves.heard(said),
        drill=drill.wanted(meant),
        answers_drill=answers_drill(text, memory),
        back_to_recipe=moves.back_to_recipe(said),
        depth=depth,
    )


def spoken_in(memory: Memory) -> Kitchen:
    """The kitchen by which bare figures are read: metric where the elevation before was told in round metres.

    So it is where temperatures were told in Celsius, or the place is one whose people measure so.
    """
    last, kitchen = memory.request, memory.kitchen
    in_metres = last and last.units == "metric" and (told_in_metres(last) or last.elevation_from == "place")
    return replace(kitchen, units="metric") if in_metres or memory.scene.celsius else kitchen


def scene_in(memory: Memory) -> Scene:
    """What bears on safety, with the elevation of the kitchen where none was said."""
    scene, elevation_m = memory.scene, memory.kitchen.elevation_m
    return scene if scene.elevation_m is not None else replace(scene, elevation_m=elevation_m)


def taken_up(utterance: Utterance, memory: Memory) -> Hearing:
    """What an utterance says as a reply, or as it goes on with the question before."""
    known = memory.places or whereabouts.of_kitchen(memory.kitchen)
    reply = in_its_part(utterance, as_reply(utterance, memory), memory)
    placed = whereabouts.recalled(reply, norms(utterance.doc), known, memory.request)
    short = short_turns.taken(utterance.doc, placed, memory.request) if memory.asked is None else None
    leant = short or leaning.taken_up(utterance.doc, placed, memory.request, memory.earlier)
    taken = sugar_figures.taken(utterance.doc, leant, memory.request)
    if memory.asked:
        return taken
    full = in_full(utterance, taken, memory.request, spoken_in(memory))
    return full if full is taken else in_its_part(utterance, full, memory)


def in_its_part(utterance: Utterance, heard: Hearing, memory: Memory) -> Hearing:
    """What an utterance says, with its figures of sugar and its places in the part that they play."""
    sweet = sugar_figures.taken(utterance.doc, heard, memory.request)
    return place_roles.played(utterance.doc, sweet, memory.request, memory.earlier)


def plainly(utterance: Utterance, memory: Memory) -> Utterance:
    """An utterance that goes on with the question before, without thanks at its head or a why at its end.

    The why is answered by the reasons of the answer.
    """
    if memory.request is None:
        return utterance
    if is_place_alone(utterance, memory):
        return listen(f"in {utterance.text}", spoken_in(memory), memory.asked)
    thanked = leaning.without_thanks(utterance.text)
    for cut in (leaning.without_why(utterance.text), thanked):
        if cut != utterance.text:
            plain = listen(cut, spoken_in(memory), memory.asked)
            asks = cut == thanked and plain.hearing.request.topic not in marked("of_nothing")
            if asks or taken_up(plain, memory).elliptical:
                return plain
    return utterance


def is_place_alone(utterance: Utterance, memory: Memory) -> bool:
    """Whether a name that nobody has heard of is said alone, where a place was asked for or told last."""
    of_places = memory.request is not None and memory.request.elevation_from == "place"
    return (memory.asked == "elevation" or (of_places and not memory.asked)) and unclaimed.is_name_alone(utterance.doc)


def answers_drill(text: str, memory: Memory) -> bool:
    """Whether an utterance is a reply to the question of a drill, whose answers speak of danger all the time."""
    sitting = memory.drill
    return bool(sitting and not sitting.over and memory.asked is None and drill.understood(sitting, text))


def as_reply(utterance: Utterance, memory: Memory) -> Hearing:
    """What an utterance says; a reply to what was asked goes on with the question, and fills the piece."""
    heard, word = utterance.hearing, memory.asked
    if word is None or memory.request is None:
        return heard
    bare = (
        heard.elliptical or not any(sign.isalpha() for sign in utterance.text) or is_unknown_place(heard.request, word)
    )
    said = known(heard.request, word)
    if said and not bare and heard.request.topic not in marked("giving"):
        return replace(heard, elliptical=False)
    open_to = bare or heard.passing or (word == WHICH and not heard.request.terms)
    slots = given(word, utterance, memory.kitchen, memory.request) if open_to and not said else {}
    if not said and not slots:
        return replace(heard, elliptical=bare)
    reply = replace(heard.about(memory.request.topic, **slots), elliptical=True)
    return reply if reply.request.timer_action else going_on(reply, memory.request)


def is_unknown_place(said: Request, word: str) -> bool:
    """Whether nothing but a place that nobody has heard of is the reply to where the kitchen is."""
    unknown = any(u.kind == "elevation" and u.text for u in said.unused)
    return word == "elevation" and unknown and said.dish is None and said.method is None


def going_on(reply: Hearing, asked: Request) -> Hearing:
    """A reply to how long, with what was to be done about the timer."""
    return replace(reply, request=replace(reply.request, timer_action=asked.timer_action))
