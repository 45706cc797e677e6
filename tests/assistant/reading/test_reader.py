"""The one reader: places in the text as given, work in proportion to its length, and no language loaded."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.reading import figures, quantities, times_of_day
from assistant.reading.reader import hear, value
from assistant.reading.text import clean
from assistant.reading.tokens import KitchenTokenizer
from assistant.reading.units import AMOUNTS, to_si
from assistant.reading.words import words_of
from assistant.understanding.pipeline import pipeline, read
from rules.physics import units

ROOT = Path(__file__).parents[3]
LONG = 40_000


class Counted(tuple[str, ...]):
    """Words that count how often one of them is looked at."""

    looks = 0

    def __getitem__(self, at: Any) -> Any:
        got = super().__getitem__(at)
        Counted.looks += len(got) if isinstance(at, slice) else 1
        return got

    def __iter__(self) -> Iterator[str]:
        Counted.looks += len(self)
        return super().__iter__()


def looks(text: str) -> int:
    """How many looks at a word it takes to read a text."""
    words = Counted(word.norm for word in words_of(text))
    Counted.looks = 0
    numbers = figures.hear(words)
    measures = quantities.hear(words, words, numbers)
    times_of_day.hear(words, numbers, measures)
    return Counted.looks


@pytest.mark.parametrize(
    "piece",
    [
        "7", "7 ", "7, ", "7/", "1 1/2 ", "7.5,", "one ", "hundred ", "five hundred ", "thousand ", "1 point ",
        "2 + 1/2 ", "half a ", "20 to ", "20 min ", "20 min to ", "2 h 30 and ", "350° to ", "barometer 24 ", "6:30 ",
        "half past six ", "ten to ", "1 lb. 2 oz plus ", "a ", "between 1 and ", "½", "1-½ ", "e3", "1e",
    ],
)  # fmt: skip
def test_twice_the_text_is_twice_the_work(piece: str) -> None:
    text = piece * (LONG // len(piece))
    once, twice = looks(text[: LONG // 2]), looks(text)
    assert twice <= 2.2 * max(once, 10)


@pytest.mark.parametrize("digits", ["7", "75 ", "7,", "7,500 ", "7.", "1/2 "])
def test_a_very_long_text_of_digits_is_read(digits: str) -> None:
    text = digits * (LONG // len(digits))
    heard = hear(text)
    assert heard.words[-1].end >= LONG - len(digits) - 1
    assert all(0 < number.value < 1e9 for number in heard.numbers)


@given(st.text(max_size=80))
def test_places_are_in_the_text_and_in_order(text: str) -> None:
    heard = hear(text)
    ends = [0, *(end for word in heard.words for end in (word.start, word.end))]
    assert ends[-1] <= len(text)
    assert all(word.start < word.end for word in heard.words)
    assert all(earlier.start <= later.start for earlier, later in zip(heard.words, heard.words[1:], strict=False))


@settings(deadline=None)
@given(st.text(alphabet="0123456789 ,./-½¼°FChmintopandsg'", max_size=60))
def test_the_pipeline_and_the_reader_hear_the_same(text: str) -> None:
    with pipeline().select_pipes(enable=["kitchen_numbers", "kitchen_measures", "kitchen_clock"]):
        doc, heard = pipeline()(clean(text).text), hear(text)
    assert doc._.numbers == heard.numbers
    assert doc._.measures == heard.measures
    assert doc._.clock == heard.clock


@pytest.mark.parametrize("text", ["7,500 ft", "at 1,200 g", "12,500 people", "1 200 g flour", "10,000′"])
def test_a_number_is_never_cut(text: str) -> None:
    assert len(hear(text).numbers) == 1
    assert len(hear(text, AMOUNTS).numbers) == 1


def test_spans_are_where_the_pipeline_keeps_them() -> None:
    doc = read("braise for 2 to 3 hours at 7,000 ft, dinner at 6:30 pm")
    assert [(span.text, span.label_, span._.measure.unit) for span in doc.spans["measures"]] == [
        ("2 to 3 hours", "time", "h"),
        ("7,000 ft", "length", "ft"),
    ]
    assert [span.text for span in doc.spans["clock"]] == ["6:30 pm"]
    assert [span._.elevation.said for span in doc.spans["elevations"]] == [7000]
    assert [span._.number.value for span in doc.spans["numbers"]] == [2, 3, 7000]


def test_there_is_one_tokenization() -> None:
    text = "2 cups what's left at 7,000 ft , 1/2 o'clock 6:30 7.5k 1e3 _"
    tokens = [(token.text, token.norm_) for token in KitchenTokenizer(pipeline())(text)]
    assert tokens == [(word.text, word.norm) for word in words_of(text)]


def test_reading_a_figure_loads_no_language() -> None:
    program = (
        "import sys; from assistant.reading.reader import hear; hear('7,000 ft for 2 h 30 at 6 pm'); "
        "from assistant.recipes.steps import read_step; read_step('Bake at 350 °F for 2 hours.'); "
        "from assistant.recipes.lines import read_line; read_line('2 cups flour'); "
        "from assistant.understanding.elevation_told import plain_elevation; plain_elevation('seven thousand feet'); "
        "print('spacy' in sys.modules)"
    )
    shown = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True, cwd=ROOT)
    assert shown.stdout.strip() == "False"


def test_the_table_of_units_and_the_rules_have_the_same_constants() -> None:
    assert to_si(1, "tsp") == pytest.approx(units.ML_PER_TSP, rel=1e-12)
    assert to_si(1, "tbsp") == pytest.approx(units.ML_PER_TBSP, rel=1e-12)
    assert to_si(1, "cup") == pytest.approx(units.ML_PER_CUP, rel=1e-12)
    assert to_si(1, "lb") == pytest.approx(units.G_PER_LB, rel=1e-12)
    assert to_si(units.FT_PER_M, "ft") == pytest.approx(1.0, rel=1e-12)
    assert to_si(units.PSI_PER_PA, "psi") == pytest.approx(1.0, rel=1e-6)
    assert to_si(units.INHG_PER_PA, "inHg") == pytest.approx(1.0, rel=1e-6)


def test_short_units_go_by_the_words_beside_them() -> None:
    """ "5 C" after "below" is cold and not cups; "50 m" of elevation is no time."""
    said = ("below 5 C", "3 C flour", "elevation is 50 m", "simmer 50 m")
    assert [hear(text).measures[0].kind for text in said] == ["temperature", "volume", "length", "time"]


def test_a_value_is_a_number_and_nothing_else() -> None:
    assert value("two and a half") == 2.5
    assert value("two eggs") is None
    assert value("") is None
