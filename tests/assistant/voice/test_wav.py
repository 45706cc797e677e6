"""A recording is checked before anything is made of it."""

from __future__ import annotations

import io
import wave

import pytest

from assistant.voice import wav
from assistant.voice.errors import BadSpeech


def recording(seconds: float = 1.0, channels: int = 1, width: int = 2, rate: int = 16_000) -> bytes:
    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        out.setnchannels(channels)
        out.setsampwidth(width)
        out.setframerate(rate)
        out.writeframes(b"\x00\x40" * int(seconds * rate * channels * width / 2))
    return file.getvalue()


def test_samples_lie_between_minus_one_and_one() -> None:
    speech = wav.read(recording())
    assert len(speech.samples) == 16_000
    assert speech.samples[0] == 0.5


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "no WAV file"),
        (b"RIFF" + b"\xff" * 60, "no WAV file"),
        (recording()[:30], "no WAV file"),
        (recording(channels=2), "2 channels"),
        (recording(width=1), "8-bit"),
        (recording(rate=44_100), "44,100 samples a second"),
        (recording(seconds=0.1), "too short"),
        (recording(seconds=31), "31 seconds long"),
        (recording(seconds=40), "more than"),
    ],
)
def test_what_cannot_be_taken_is_said(content: bytes, said: str) -> None:
    with pytest.raises(BadSpeech, match=said):
        wav.read(content)


def test_a_header_that_promises_more_than_there_is_gives_what_is_there() -> None:
    content = bytearray(recording())
    content[40:44] = (2**31 - 1).to_bytes(4, "little")
    assert len(wav.read(bytes(content)).samples) == 16_000
