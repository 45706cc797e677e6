"""Answers said aloud by espeak-ng, where it is installed."""

from __future__ import annotations

import re
import shutil
import subprocess
from array import array

from assistant.voice.errors import VoiceError, VoiceMissing
from assistant.voice.wav import written

PROGRAM = "espeak-ng"
MISSING = "espeak-ng is not installed; on Debian and Ubuntu: apt install espeak-ng, on a Mac: brew install espeak-ng"
VOICE, WORDS_A_MINUTE = "en-us", 155
LONGEST, PATIENCE_S = 5_000, 60
# espeak-ng writes to a pipe before it knows how long the speech is, and leaves the lengths of its header open
RATE_AT, HEADER_BYTES = slice(24, 28), 44
UNSPOKEN = re.compile(r"[\x00-\x09\x0b-\x1f\x7f]|[*_#>`]+")


def said(text: str, voice: str = VOICE) -> bytes:
    """A text as the bytes of a WAV file: one channel, 16 bit, at the rate of the voice.

    text: what is beyond 5,000 letters is left out; voice: a name that espeak-ng knows
    raises: VoiceMissing where espeak-ng is not installed, VoiceError where it fails
    """
    program = shutil.which(PROGRAM)
    if program is None:
        raise VoiceMissing(MISSING)
    asked = [program, "-v", voice, "-s", str(WORDS_A_MINUTE), "--stdin", "--stdout"]
    try:
        run = subprocess.run(asked, input=plain(text).encode(), capture_output=True, timeout=PATIENCE_S, check=False)
    except subprocess.TimeoutExpired:
        raise VoiceError(f"espeak-ng took longer than {PATIENCE_S} seconds") from None
    if run.returncode or len(run.stdout) <= HEADER_BYTES:
        why = run.stderr.decode(errors="replace").strip().partition("\n")[0]
        raise VoiceError(f"espeak-ng could not say it: {why or 'it gave no sound'}")
    return with_lengths(run.stdout)


def plain(text: str) -> str:
    """What is spoken of a text: no marks of lists and headings, and no more than a few minutes take.

    >>> plain("* Boil 12 min\\x07 at *200* F")
    ' Boil 12 min at 200 F'
    """
    return UNSPOKEN.sub("", text)[:LONGEST]


def with_lengths(content: bytes) -> bytes:
    """A WAV as espeak-ng pipes it, with the lengths in its header."""
    rate_hz = int.from_bytes(content[RATE_AT], "little")
    body = content[HEADER_BYTES:]
    return written(array("h", body[: len(body) // 2 * 2]), rate_hz)
