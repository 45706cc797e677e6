"""One recording heard several times: as it came, slower, quicker.

A model of this size hears each of them a little differently. What all agree on is sure; where they differ, the
words that make sense in a kitchen win, and a number is read back.
"""

from __future__ import annotations

from collections.abc import Sequence

from assistant.voice.recognisers import Recogniser
from assistant.voice.wav import Speech

# how fast each is played, to the speed at which it was said
WAYS = (1.0, 0.9, 1.1)
AGREE = 2


def takes(speech: Speech, recogniser: Recogniser) -> list[str]:
    """What is heard each time, the recording as it came first; no further than where two agree word for word."""
    heard: list[str] = []
    for tempo in WAYS:
        heard.append(recogniser.words_of(at_tempo(speech.samples, tempo)))
        if len(heard) >= AGREE and len({_bare(take) for take in heard}) == 1:
            break
    return heard


def _bare(take: str) -> str:
    return "".join(filter(str.isalnum, take.casefold()))


def at_tempo(samples: Sequence[float], tempo: float) -> Sequence[float]:
    """Samples played faster or slower, with their pitch; between two samples on a straight line."""
    if tempo == 1.0:
        return samples
    played = []
    for i in range(int((len(samples) - 1) / tempo)):
        at, part = divmod(i * tempo, 1.0)
        before = samples[int(at)]
        played.append(before + (samples[int(at) + 1] - before) * part)
    return played
