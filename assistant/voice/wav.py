"""Speech as it comes in: a WAV file, checked before anything is made of it."""

from __future__ import annotations

import io
import wave
from array import array
from dataclasses import dataclass
from pathlib import Path

from assistant.files import content_of
from assistant.voice.errors import BadSpeech

RATE_HZ = 16_000
LONGEST_S, SHORTEST_S = 30.0, 0.2
# 16-bit samples of the longest speech, and room for what else a file carries
LARGEST_BYTES = int(LONGEST_S * RATE_HZ * 2) + 65_536
SAMPLE_BYTES, FULL_SCALE = 2, 32_768
WANTED = "a WAV file of 16-bit PCM, one channel, 16,000 samples a second, up to 30 seconds"


@dataclass(frozen=True, slots=True)
class Speech:
    """What was recorded. samples: -1 to 1, at RATE_HZ"""

    samples: tuple[float, ...]

    @property
    def length_s(self) -> float:
        """How long it is [s]."""
        return len(self.samples) / RATE_HZ


def read(content: bytes) -> Speech:
    """The speech in the bytes of a WAV file.

    content: 16-bit PCM, one channel, 16 kHz, between 0.2 and 30 s
    raises: BadSpeech that says what it is instead, and what is wanted
    """
    if len(content) > LARGEST_BYTES:
        raise BadSpeech(f"the recording has more than {LARGEST_BYTES:,} bytes; wanted is {WANTED}")
    try:
        with wave.open(io.BytesIO(content)) as file:
            _check(file)
            frames = file.readframes(file.getnframes())
    # a chunk that says it ends elsewhere is a RuntimeError to the reader
    except (wave.Error, EOFError, RuntimeError):
        raise BadSpeech(f"this is no WAV file that can be read; wanted is {WANTED}") from None
    return _speech(frames)


def of_file(path: Path) -> bytes:
    """The bytes of a file, and no more of them than a recording may have and one."""
    return content_of(path, LARGEST_BYTES)


def _check(file: wave.Wave_read) -> None:
    channels, width, rate = file.getnchannels(), file.getsampwidth(), file.getframerate()
    if channels != 1:
        raise BadSpeech(f"the recording has {channels} channels; wanted is {WANTED}")
    if width != SAMPLE_BYTES:
        raise BadSpeech(f"the recording has {width * 8}-bit samples; wanted is {WANTED}")
    if rate != RATE_HZ:
        raise BadSpeech(f"the recording has {rate:,} samples a second; wanted is {WANTED}")


def _speech(frames: bytes) -> Speech:
    samples = array("h", frames[: len(frames) // SAMPLE_BYTES * SAMPLE_BYTES])
    length_s = len(samples) / RATE_HZ
    if length_s > LONGEST_S:
        raise BadSpeech(f"the recording is {length_s:.0f} seconds long; wanted is {WANTED}")
    if length_s < SHORTEST_S:
        raise BadSpeech(
            f"the recording is {length_s:.2f} seconds long, too short to hold a word; hold on while you speak"
        )
    return Speech(tuple(sample / FULL_SCALE for sample in samples))


def written(samples: array[int], rate_hz: int = RATE_HZ) -> bytes:
    """Samples of 16 bits as the bytes of a WAV file of one channel."""
    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(SAMPLE_BYTES)
        out.setframerate(rate_hz)
        out.writeframes(samples.tobytes())
    return file.getvalue()
