"""What is said of a danger: the verdict is a stop, further dangers are stops too, and nobody is given a figure."""

import pytest

from assistant.replies.worded import answer
from rules import tables
from rules.model import Request
from rules.safety import danger
from rules.safety.danger import Reply, replies


def warn(id, *more, **fields):
    return answer(Request(topic="doneness", danger=id, dangers_too=more, **fields))


@pytest.mark.parametrize("id", ["odd_canner", "oven_canning", "headspace", "spoiled_jar", "general_kitchen"])
def test_the_verdict_comes_first_and_is_a_stop(id):
    given = warn(id)
    assert given.cautions[0].level == "stop"
    assert given.cautions[0].text == given.headline
    assert set(given.cautions[0].sources) == set(replies()[id].sources)
    assert not given.figures
    assert len(given.steps) == replies()[id].steps + replies()[id].asks
    assert given.because[0].text
    assert set(replies()[id].sources) <= set(given.because[0].sources)


def test_whom_to_ask_is_the_last_step():
    assert warn("oven_canning").steps[-1].startswith("Ask: ") is replies()["oven_canning"].asks
    for id, reply in replies().items():
        assert bool(reply.whom()) is reply.asks, id


def test_a_further_danger_is_a_stop_of_its_own():
    given = warn("oven_canning", "headspace", "general_canning")
    by_level = {c.text: c.level for c in given.cautions}
    assert by_level[warn("headspace").headline] == "stop"
    assert list(by_level.values()).count("warn") == 1


@pytest.mark.parametrize("id", [None, "", "none_such"])
def test_what_is_no_danger_stops_nobody(id):
    assert danger.warning.work(type("Case", (), {"request": Request(danger=id)})) is None


def test_a_row_with_a_field_too_many_or_too_few_is_a_fault(monkeypatch):
    for row in ({"sources": ["nchfp"], "colour": "red"}, {"steps": 2}):
        monkeypatch.setattr(tables, "read_toml", lambda _file, row=row: {"kitchen": {"oil_fire": row}})
        replies.cache_clear()
        with pytest.raises(tables.BadTable, match="oil_fire"):
            replies()
    monkeypatch.undo()
    replies.cache_clear()
    assert replies()


def test_the_sentences_of_a_reply():
    plain = Reply(id="fire", file="dangers/kitchen", sources=())
    assert plain.pieces == ("verdict", "instead", "why", "ask")
    more = Reply(id="fire", file="dangers/kitchen", sources=(), steps=3, asks=False, rule=True)
    assert more.pieces == ("verdict", "instead", "instead-2", "instead-3", "why", "rule")
    assert more.whom() == ()
