"""What a cook said: a recording heard, mended, and what of it is to be read back before it is answered."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass
from itertools import combinations
from typing import TYPE_CHECKING, Any

from assistant.dialogue.memory import Memory
from assistant.understanding.pipeline import read
from assistant.understanding.utterance import listen
from assistant.voice import wav, words
from assistant.voice.errors import BadSpeech
from assistant.voice.guesses import Guess
from assistant.voice.mending import Reading, readings
from assistant.voice.numbers import Unsure, unsure_numbers
from assistant.voice.preserving import speaks_of_jars
from assistant.voice.recognisers import DEFAULT, recogniser
from assistant.voice.takes import takes as heard_again
from rules.foods.dishes import usual_method
from rules.said import Words, listed, sentences

if TYPE_CHECKING:
    from rules.model import Request

say = sentences("voice/hearing")
MOST_ALTERNATIVES = 3
# another reading is as likely as the best within this worth
NEARLY_AS_LIKELY = 0.15
# takes less alike than this have no more than a few words in common
AGREED = 0.68
# and how alike they have to be where no dish and no method is among the words
AGREED_ON_LITTLE = 0.85


@dataclass(frozen=True, slots=True)
class Heard:
    """What was heard, and what may be asked of it.

    takes: what was recognised each time, as it came; text: what it was mended to; mends: what was changed
    alternatives: other things it may have been, the likeliest first
    unsure: numbers and places to be read back; of_jars: whether it may be about putting food up in jars
    garbled: whether each time something else was heard
    """

    takes: tuple[str, ...]
    text: str
    mends: tuple[Guess, ...] = ()
    alternatives: tuple[str, ...] = ()
    unsure: tuple[Unsure, ...] = ()
    of_jars: bool = False
    garbled: bool = False

    @property
    def to_ask(self) -> str | None:
        """What may be answered right away; None where the cook has to say first that it was heard right."""
        return None if self.unsure or self.of_jars or self.garbled else self.text

    @property
    def read_back(self) -> Words:
        """The sentence that asks whether it was heard right; empty where nothing needs it."""
        if self.of_jars:
            return say("read-back-jars", text=self.text)
        if self.unsure:
            return say("read-back", text=self.text, numbers=listed(map(_doubt, self.unsure), "and"))
        return say("read-back-all", text=self.text) if self.garbled else ""

    def as_json(self) -> dict[str, Any]:
        """All of it for a page or a script; `read_back` in words."""
        from assistant.replies.sentences import worded

        fields = {name: value for name, value in asdict(self).items() if name != "mends"}
        mends = [{"heard": mend.heard, "meant": mend.meant, "kind": mend.kind} for mend in self.mends]
        return {**fields, "mends": mends, "to_ask": self.to_ask, "read_back": worded(self.read_back, "us")}


def _doubt(number: Unsure) -> Words:
    if not number.others:
        return number.said
    return say("doubt", said=number.said, others=listed(number.others, "or"))


def hear(content: bytes, memory: Memory | None = None, recogniser_name: str = DEFAULT) -> Heard:
    """Hear the bytes of a WAV file.

    content: 16 kHz, one channel, 16 bit, up to 30 s; memory: of the conversation so far, with its kitchen
    raises: BadSpeech where the recording cannot be taken or holds no word, VoiceMissing where a part is not installed
    """
    speech = wav.read(content)
    takes = [take for take in heard_again(speech, recogniser(recogniser_name)) if any(map(str.isalnum, take))]
    if not takes:
        raise BadSpeech("no word was heard; hold the microphone nearer and say it again")
    return from_takes(takes, memory or Memory())


def from_takes(takes: Sequence[str], memory: Memory) -> Heard:
    """What words mean that were recognised, however often; at least once."""

    def parse(text: str) -> Request:
        return listen(text, memory.kitchen, memory.asked).hearing.request

    best, *others = readings(takes, parse)
    return Heard(
        takes=tuple(takes),
        text=best.text,
        mends=best.mends,
        alternatives=tuple(other.text for other in others[:MOST_ALTERNATIVES]),
        unsure=(*unsure_numbers(best.text, takes), *_unsure_places(best, takes)),
        garbled=agreement(takes) < (AGREED if _says_what(best.request) else AGREED_ON_LITTLE),
        of_jars=_may_be_of_jars(takes, best, others, memory),
    )


def _says_what(request: Request) -> bool:
    return bool(request.dish or request.method)


def agreement(takes: Sequence[str]) -> float:
    """How alike what was heard is from time to time, 0 to 1, on the average of all pairs.

    >>> agreement(["boil rice", "boil rice."]), agreement(["boil rice", "oil is nice", "why not"]) < 0.6
    (1.0, True)
    """
    from rapidfuzz.distance import Indel

    bare = ["".join(char for char in take.casefold() if char.isalnum() or char == " ") for take in takes]
    alike = [Indel.normalized_similarity(one, other) for one, other in combinations(bare, 2)]
    return sum(alike) / len(alike) if alike else 1.0


def _unsure_places(best: Reading, takes: Sequence[str]) -> Iterator[Unsure]:
    """The places that were made of something else, or heard in some takes only: the height hangs on them."""
    mended = {mend.id: (mend.heard,) for mend in best.mends if mend.kind == "place"}
    heard = [_places(take) for take in takes]
    for place in sorted(_places(best.text)):
        if not all(place in places for places in heard):
            yield Unsure(place, None, mended.get(place, ()))


def _places(text: str) -> set[str]:
    return {found.id for found in read(text)._.found if found.kind == "place"}


def _is_put_up(dish: str | None) -> bool:
    """Whether a dish is of those that are put up in jars by themselves: jam, pickles."""
    return usual_method(dish, "") == words.PRESERVE


def _may_be_of_jars(takes: Sequence[str], best: Reading, others: Sequence[Reading], memory: Memory) -> bool:
    """Whether it, or what it may have been, or what it goes on with, is about putting food up in jars."""
    if memory.request is not None and memory.request.topic == words.PRESERVE:
        return True
    likely = (best, *(other for other in others if other.worth >= best.worth - NEARLY_AS_LIKELY))
    asked = any(
        request.topic == words.PRESERVE or request.jars or _is_put_up(request.dish)
        for request in (reading.request for reading in likely)
    )
    return asked or any(speaks_of_jars(read(take)) for take in (*takes, best.text))
