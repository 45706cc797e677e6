"""Topics: the catalogue, the learned table, and that the two go together."""

from __future__ import annotations

import pytest

from assistant.understanding import topics, train_topics
from assistant.understanding.pipeline import read
from rules import catalogue
from rules.catalogue import Topic


@pytest.mark.parametrize("row", tuple(catalogue.topics().values()), ids=lambda row: row.id)
def test_the_example_of_a_topic_is_heard_as_that_topic(row: Topic) -> None:
    assert read(row.example)._.topic.id == row.id


@pytest.mark.parametrize("row", tuple(catalogue.topics().values()), ids=lambda row: row.id)
def test_what_a_topic_needs_can_be_asked_for(row: Topic) -> None:
    assert set(row.needs) <= set(row.ask) | {"reading", "symptom"}


def test_the_learned_table_is_not_stale() -> None:
    """Run `python -m assistant.understanding.train_topics` after a change of examples, cues or concepts."""
    assert topics.weights().examples == train_topics.fingerprint(train_topics.examples())


def test_every_topic_has_examples_enough() -> None:
    counts = dict.fromkeys(catalogue.topics(), 0)
    for topic, _ in train_topics.examples():
        counts[topic] += 1
    assert min(counts.values()) >= 25


def test_no_example_stands_twice() -> None:
    sentences = [sentence.lower() for _, sentence in train_topics.examples()]
    assert sorted({s for s in sentences if sentences.count(s) > 1}) == []


def test_training_examples_are_learned() -> None:
    pairs = train_topics.examples()[::7]
    right = sum(read(sentence)._.topic.id == topic for topic, sentence in pairs)
    assert right / len(pairs) > 0.95


@pytest.mark.parametrize("text", ["", "   ", "???", "\x00\x01"])
def test_nothing_said_is_a_call_for_help(text: str) -> None:
    assert read(text)._.topic.id == "help"


@pytest.mark.parametrize("text", ["zxqv wvut", "Где вода", "水在哪里沸腾"])
def test_unknown_words_are_out_of_scope(text: str) -> None:
    assert read(text)._.topic.id == "out_of_scope"


def test_concepts_are_words_of_the_form_that_is_compared() -> None:
    assert all(word == word.lower() and "'" not in word for word in topics.concepts())


def test_words_of_a_measure_speak_for_no_concept() -> None:
    """20 quarts of stock is no canning, and pints of tomatoes is."""
    assert "has:concept:canning" not in topics.features(read("20 quarts of bones on the stove"))
    assert "has:concept:canning" in topics.features(read("pints of tomatoes"))
