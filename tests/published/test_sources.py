"""The bibliography itself."""

import pytest

from rules.tables import BASES, sources

LONGEST_SHORT = 72
COPY_MARKS = ("studylib", "docslib", "chestofbooks", "mtdemocrat", "pagosasun", "engineersedge", "webpal", "blogspot")


@pytest.mark.source("computed")
def test_every_check_names_its_source(uncited):
    assert uncited == []


@pytest.mark.parametrize("source", sorted(sources()))
def test_entry_is_complete(source):
    entry = sources()[source]
    assert entry.title
    assert 0 < len(entry.short) <= LONGEST_SHORT
    assert entry.basis in BASES
    assert not any(mark in field for field in (entry.title, entry.publisher, entry.where) for mark in COPY_MARKS)


@pytest.mark.source("computed")
def test_what_is_worked_out_here_is_not_called_published():
    ours = [entry for entry in sources().values() if entry.publisher == "simmerline"]
    assert ours
    assert all(entry.basis == "worked out" for entry in ours)


@pytest.mark.source("common-practice")
def test_a_publication_has_a_publisher_by_name():
    nameless = ("", "several", "the trade", "a state egg producers' group")
    printed = [entry for entry in sources().values() if entry.basis.startswith("published")]
    assert printed
    assert [entry.id for entry in printed if entry.publisher.partition(";")[0].partition(",")[0] in nameless] == []
