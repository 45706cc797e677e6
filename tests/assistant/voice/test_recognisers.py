"""Recognisers by entry point; the one of the extra `voice` where it is installed."""

from __future__ import annotations

import io
import shutil
import sys
import wave
from array import array
from importlib.metadata import EntryPoint

import pytest

from assistant.dialogue.memory import Memory
from assistant.voice import hearing, microphone, recognisers, saying, wav
from assistant.voice.errors import BadSpeech, VoiceMissing
from assistant.voice.takes import at_tempo, takes


class Parrot:
    """A recogniser that says what it was told to, one text a time."""

    def __init__(self, *texts: str) -> None:
        self.texts = list(texts)

    def words_of(self, samples: object) -> str:
        return self.texts.pop(0)


SPEECH = wav.Speech((0.0,) * 16_000)
SILENCE = array("h", [0] * 16_000)


def test_two_takes_that_agree_are_enough() -> None:
    assert takes(SPEECH, Parrot("At 7,000 feet.", "at 7000 feet", "never")) == ["At 7,000 feet.", "at 7000 feet"]
    assert len(takes(SPEECH, Parrot("at 7,000 feet", "at 700 feet", "at 7,000 feet"))) == 3


@pytest.mark.parametrize(("tempo", "length"), [(1.0, 1000), (0.9, 1110), (1.1, 908)])
def test_slower_speech_is_longer(tempo: float, length: int) -> None:
    assert len(at_tempo((0.5,) * 1000, tempo)) == length


def test_a_recogniser_joins_by_its_entry_point(monkeypatch: pytest.MonkeyPatch) -> None:
    entry = EntryPoint("parrot", f"{__name__}:Parrot", recognisers.GROUP)
    monkeypatch.setattr(recognisers, "entry_points", lambda group, name="parrot": [entry] if name == "parrot" else [])
    monkeypatch.setitem(sys.modules, __name__, sys.modules[__name__])
    recognisers.recogniser.cache_clear()
    assert type(recognisers.recogniser("parrot")).__name__ == "Parrot"
    with pytest.raises(VoiceMissing, match="no recogniser owl; installed: parrot"):
        recognisers.recogniser("owl")
    recognisers.recogniser.cache_clear()


def test_silence_is_said_to_be_silent(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(hearing, "recogniser", lambda name: Parrot("", "...", ""))
    with pytest.raises(BadSpeech, match="no word was heard"):
        hearing.hear(wav.written(SILENCE), Memory())


def test_what_is_missing_is_said_with_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(shutil, "which", lambda program: None)
    with pytest.raises(VoiceMissing, match="apt install espeak-ng"):
        saying.said("hello")
    monkeypatch.setitem(sys.modules, "sounddevice", None)
    with pytest.raises(VoiceMissing, match=r"simmerline\[voice\]"):
        microphone.record(lambda: None)
    monkeypatch.setitem(sys.modules, "moonshine_voice", None)
    recognisers.recogniser.cache_clear()
    with pytest.raises(VoiceMissing, match=r"simmerline\[voice\]"):
        recognisers.recogniser("moonshine")


@pytest.mark.skipif(shutil.which("espeak-ng") is None, reason="espeak-ng is not installed: apt install espeak-ng")
def test_a_text_becomes_a_wav_that_says_how_long_it_is() -> None:

    with wave.open(io.BytesIO(saying.said("About 19 minutes at 7,000 feet."))) as file:
        assert (file.getnchannels(), file.getsampwidth()) == (1, 2)
        assert 1.5 < file.getnframes() / file.getframerate() < 6


@pytest.mark.skipif(shutil.which("espeak-ng") is None, reason="espeak-ng is not installed: apt install espeak-ng")
def test_a_question_is_heard() -> None:
    pytest.importorskip("moonshine_voice", reason="moonshine-voice is not installed: pip install 'simmerline[voice]'")

    with wave.open(io.BytesIO(saying.said("How long do I boil rice at six thousand feet?"))) as file:
        rate, samples = file.getframerate(), array("h", file.readframes(file.getnframes()))
    slower = at_tempo([float(sample) for sample in samples], rate / wav.RATE_HZ)
    recognisers.recogniser.cache_clear()
    heard = hearing.hear(wav.written(array("h", map(int, slower))), Memory())
    assert "6,000" in heard.text or "six thousand" in heard.text
