"""A message is found in its file with what it refers to, and nothing else of the file is parsed."""

from __future__ import annotations

import pytest

from assistant.contributing.validate_wording import files, messages_of
from assistant.replies import message_files
from assistant.replies.sentences import BadWording, sentence


@pytest.mark.parametrize("file", sorted(files("en")))
def test_every_message_of_a_file_is_found(file: str) -> None:
    assert {name.partition(".")[0] for name in messages_of("en", file)} <= set(message_files.messages(file, "en"))


def test_a_message_brings_what_it_refers_to(monkeypatch: pytest.MonkeyPatch) -> None:
    texts = {"a": "a = { b.short } { $d }\n", "b": "b = B\n    .short = { -c }\n", "-c": "-c = C\n", "d": "d = D\n"}
    monkeypatch.setattr(message_files, "messages", lambda file, language: texts)
    assert len(message_files.parsed("of-its-own", "a", "en").body) == 3


def test_a_message_that_is_not_there_is_named() -> None:
    with pytest.raises(BadWording, match="nowhere"):
        sentence("common", "nowhere", {}, "us")
    with pytest.raises(BadWording, match=r"wax_seal\.size"):
        sentence("dangers/canning", "wax_seal.size", {}, "us")


@pytest.mark.parametrize(("units", "first"), [("us", "40 °F (4.5 °C)"), ("metric", "4.5 °C (40 °F)")])
def test_a_temperature_of_a_sentence_is_in_the_units_of_the_asker(units: str, first: str) -> None:
    assert f"at {first} or colder" in sentence("dangers/canning", "confit.instead", {}, units)
