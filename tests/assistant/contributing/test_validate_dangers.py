"""A language whose verdicts are worded wrongly is told so, sentence by sentence."""

from __future__ import annotations

import shutil
from importlib.resources.abc import Traversable
from pathlib import Path

import pytest

from assistant.contributing.validate_dangers import calls, worded_wrongly
from assistant.contributing.validate_wording import in_language
from rules import tables

# a file that was read is kept, so every test has a language of its own
OTHERS = iter(("eo", "fr", "it", "nl", "sv", "fi", "da"))


@pytest.fixture
def language(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A second language, for the time being in the words of the first; each test spoils another file of it."""
    found = tables.data_path
    folder = Path(shutil.copytree(str(found("wording/en")), tmp_path / "wording" / next(OTHERS)))

    def data_path(relative: str) -> Traversable:
        return tmp_path / relative if relative.startswith(f"wording/{folder.name}/") else found(relative)

    monkeypatch.setattr(tables, "data_path", data_path)
    return folder


def spoil(file: Path, words: str, by: str) -> None:
    text = file.read_text(encoding="utf-8")
    assert words in text
    file.write_text(text.replace(words, by, 1), encoding="utf-8")


def test_a_language_with_every_sentence_is_sound(language: Path) -> None:
    assert list(worded_wrongly(language.name)) == []


@pytest.mark.parametrize(
    ("file", "words", "by", "id", "fault"),
    [
        ("dangers/canning.ftl", "No. Wax is", "Perhaps. Wax is", "wax_seal.verdict", "does not begin"),
        ("preserving/refusals.ftl", "No. { unknown.stop }", "Yes. Boil it.", "unknown.verdict", "does not begin"),
        ("preserving/refusals.ftl", ".why = A thick jar", ".why = In 90 min a jar", "thickened.why", "holds a figure"),
        ("dangers/canning.ftl", "TEMP(40)", "WARMTH(40)", "oil_storage.instead", "WARMTH"),
    ],
)
def test_a_sentence_that_is_wrong_is_named(language: Path, file: str, words: str, by: str, id: str, fault: str) -> None:
    spoil(language / file, words, by)
    told = list(worded_wrongly(language.name))
    assert [(where, row) for where, row, _ in told] == [(f"wording/{language.name}/{file}", id)]
    assert fault in told[0][2]


def test_a_hazard_without_one_of_its_sentences_is_named(language: Path) -> None:
    spoil(language / "dangers/canning.ftl", "    .why = Wax", "    .reason = Wax")
    told = {row: fault for where, row, fault in in_language(language.name, list(calls())) if "dangers" in where}
    assert set(told) == {"wax_seal.why", "wax_seal.reason"}
    assert told["wax_seal.why"].startswith("no such sentence")
