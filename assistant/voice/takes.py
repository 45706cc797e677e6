"""One recording heard several times: as it came, slower, quicker, with a pause before it.

A model of this size hears each of them a little differently. What all agree on is sure; where they differ, the
words that make sense in a kitchen win, and a number is read back.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from assistant.voice.recognisers import Recogniser
from assistant.voice.wav import RATE_HZ, Speech

# how fast each is played, to the speed at which it was said, and the pause before it [s]
WAYS = ((1.0, 0.0), (0.9, 0.0), (1.1, 0.0))


def takes(speech: Speech, recogniser: Recogniser) -> Iterator[str]:
    """What is heard each time, the recording as it came first."""
    for tempo, pause_s in WAYS:
        yield recogniser.words_of([*[0.0] * int(pause_s * RATE_HZ), *at_tempo(speech.samples, tempo)])


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
