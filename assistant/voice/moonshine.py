"""The recogniser that comes with the extra `voice`: moonshine-voice, whose English model lies in its wheel."""

from __future__ import annotations

import re
from collections.abc import Sequence
from pathlib import Path

from assistant.voice.errors import VoiceMissing
from assistant.voice.wav import RATE_HZ

MODEL = "tiny-en"
# the button says when speech begins and ends, and the model's own detector would cut the first word
NO_DETECTOR = {"vad_threshold": "0", "return_audio_data": "false"}
# a word or a group of words said three times over is the model running round in a circle
CIRCLE = re.compile(r"(\b.{2,40}?\b\W*)(?:\1){2,}", re.IGNORECASE)


class Moonshine:
    """Speech to words by the model of the wheel; it needs no network."""

    def __init__(self) -> None:
        import moonshine_voice as library

        folder = Path(library.__file__).parent / "assets" / MODEL
        if not folder.is_dir():
            raise VoiceMissing(
                "this moonshine-voice has no model in it; pip install 'simmerline[voice]' takes the version that has"
            )
        self._model = library.Transcriber(folder, library.ModelArch.TINY, options=NO_DETECTOR)

    def words_of(self, samples: Sequence[float]) -> str:
        """The words of speech, in the order said; nothing where the model only goes round in circles."""
        heard = self._model.transcribe_without_streaming(list(samples), RATE_HZ)
        text = " ".join(line.text.strip() for line in heard.lines)
        return CIRCLE.sub(r"\1", text).strip()
