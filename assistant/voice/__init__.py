"""Voice, offline: speech to words, words mended by sound, numbers read back, and answers said aloud.

`hear` takes the bytes of a WAV file and gives what was heard; `spoken` takes a text and gives the bytes of one. Both
are imported when they are first used, and say kindly what is to be installed.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from assistant.dialogue.memory import Memory
    from assistant.voice.hearing import Heard


def hear(content: bytes, memory: Memory | None = None) -> Heard:
    """What a cook said. content: a WAV file of 16 kHz, one channel, 16 bit, up to 30 s; memory: of the conversation

    raises: assistant.voice.errors.BadSpeech, assistant.voice.errors.VoiceMissing
    """
    from assistant.voice.hearing import hear as heard

    return heard(content, memory)


def spoken(text: str) -> bytes:
    """A text said aloud, as a WAV file. raises: assistant.voice.errors.VoiceMissing where espeak-ng is not installed"""
    from assistant.voice.saying import said

    return said(text)
