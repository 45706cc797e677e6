"""Speech from the microphone of this machine, through sounddevice where it is installed."""

from __future__ import annotations

from array import array
from collections.abc import Callable
from typing import Any

from assistant.voice.errors import VoiceError, VoiceMissing
from assistant.voice.recognisers import HOW
from assistant.voice.wav import LONGEST_S, RATE_HZ, SAMPLE_BYTES, written

NO_LIBRARY = f"the microphone needs sounddevice, which is not installed: {HOW}"
NO_PORTAUDIO = "the microphone needs PortAudio, which is not installed; on Debian and Ubuntu: apt install libportaudio2"
BLOCK_S = 0.1


def record(until: Callable[[], object], longest_s: float = LONGEST_S) -> bytes:
    """The bytes of a WAV file of what is said until a function returns, or as long as a recording may be.

    raises: VoiceMissing where a part is not installed, VoiceError where there is no microphone
    """
    sound = library()
    heard = bytearray()
    most = int(longest_s * RATE_HZ) * SAMPLE_BYTES

    def keep(block: Any, frames: int, time: Any, status: Any) -> None:
        heard.extend(bytes(block)[: max(0, most - len(heard))])

    try:
        with sound.RawInputStream(
            samplerate=RATE_HZ, channels=1, dtype="int16", blocksize=int(BLOCK_S * RATE_HZ), callback=keep
        ):
            until()
    except sound.PortAudioError as fault:
        raise VoiceError(f"no microphone can be heard ({fault}); give a WAV file instead") from None
    return written(array("h", bytes(heard)))


def library() -> Any:
    """sounddevice. raises: VoiceMissing where it, or what it stands on, is not installed"""
    try:
        import sounddevice
    except ImportError:
        raise VoiceMissing(NO_LIBRARY) from None
    except OSError:
        raise VoiceMissing(NO_PORTAUDIO) from None
    return sounddevice
