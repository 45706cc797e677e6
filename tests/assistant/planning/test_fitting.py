"""Fitting dishes into a kitchen: what holds of every plan, and small cases worked by hand."""

from __future__ import annotations

import builtins

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.planning.fitting import Block, Fit, Job, cost, fitted, moved_by, overlap, placed
from assistant.planning.fitting_solved import NothingSolves, solved

COUNT = {"oven": 2, "burner": 2, "hands": 1}
HEATS = (None, (150.0, 160.0, 15.0), (175.0, 190.0, 15.0), (220.0, 230.0, 15.0))


@st.composite
def jobs(draw: st.DrawFn) -> Job:
    long = draw(st.integers(1, 30))
    thing = draw(st.sampled_from(("oven", "burner")))
    heat = draw(st.sampled_from(HEATS[1:])) if thing == "oven" else None
    hands = draw(st.integers(0, min(3, long)))
    blocks = [Block(thing, long, 0, heat), *([Block("hands", long, long - hands)] if hands else [])]
    return Job("dish", tuple(blocks), draw(st.sampled_from((0, 2, 12, 288))))


def over_the_limit(made: list[Job], fit: Fit, count: dict[str, int]) -> list[tuple[Block, Block]]:
    """Blocks that have the same unit at the same time and cannot share it, or a unit that there is not."""
    taken: dict[tuple[str, int], list[Block]] = {}
    found = []
    for job, early, units in zip(made, fit.early, fit.units, strict=True):
        for block, unit in zip(job.blocks, units, strict=True):
            moved = moved_by(block, early)
            assert 0 <= unit < count[block.thing]
            found += [
                (moved, o) for o in taken.get((block.thing, unit), []) if overlap(moved, o) and not moved.shares(o)
            ]
            taken.setdefault((block.thing, unit), []).append(moved)
    return found


@given(st.lists(jobs(), max_size=9))
@settings(max_examples=40, deadline=None)
def test_nothing_is_over_its_limit_or_after_service(made: list[Job]) -> None:
    for better in (solved, None):
        fit = fitted(made, COUNT, better)
        assert not over_the_limit(made, fit, COUNT)
        assert all(early >= 0 for early in fit.early)
        assert set(fit.kept_from) == {i for i, early in enumerate(fit.early) if early > made[i].keeps}
        assert all(fit.kept_from.values())


@given(st.lists(jobs(), max_size=7))
@settings(max_examples=25, deadline=None)
def test_the_solver_is_never_worse_than_placing(made: list[Job]) -> None:
    assert cost(made, fitted(made, COUNT, solved).early) <= cost(made, placed(made, COUNT)[0]) + 1e-6


def test_without_a_conflict_everything_is_ready_at_service_and_nothing_is_solved(monkeypatch) -> None:
    monkeypatch.setattr(builtins, "__import__", _without_scipy(builtins.__import__))
    warm = (175.0, 190.0, 15.0)
    two = [Job("pie", (Block("oven", 9, 0, warm),), 12), Job("ham", (Block("oven", 20, 3, warm),), 12)]
    assert fitted(two, {"oven": 1}, solved) == Fit((0, 0), ((0,), (0,)), "counted")


def test_two_heats_in_one_oven_wait_by_what_they_keep() -> None:
    cake = Job("cake", (Block("oven", 8, 0, (175.0, 175.0, 15.0)),), 96)
    fish = Job("fish", (Block("oven", 4, 0, (220.0, 230.0, 15.0)),), 2)
    fit = fitted([cake, fish], {"oven": 1}, solved)
    assert (fit.early, fit.how, fit.kept_from) == ((4, 0), "solved", {})
    assert fitted([cake, fish], {"oven": 2}).early == (0, 0)


def test_what_stands_in_the_way_is_told() -> None:
    fries, rings = (Job(name, (Block("fryer", 6, 0),), 1) for name in ("fries", "rings"))
    fit = fitted([fries, rings], {"fryer": 1}, solved)
    assert sorted(fit.early) == [0, 6]
    assert list(fit.kept_from.values()) == [("fryer",)]


def _without_scipy(known):
    def found(name, *args, **kwargs):
        if name.startswith("scipy"):
            raise ImportError(name)
        return known(name, *args, **kwargs)

    return found


def test_without_the_solver_it_is_said_how_to_get_it(monkeypatch) -> None:
    two = [Job("fries", (Block("fryer", 6, 0),), 1)] * 2
    monkeypatch.setattr(builtins, "__import__", _without_scipy(builtins.__import__))
    with pytest.raises(NothingSolves, match=r"simmerline\[plan\]"):
        fitted(two, {"fryer": 1}, solved)
    assert sorted(fitted(two, {"fryer": 1}).early) == [0, 6]


ROOM = {"oven": 5}


@st.composite
def loads(draw: st.DrawFn) -> Job:
    long, heating = draw(st.integers(2, 20)), draw(st.integers(0, 1))
    block = Block("oven", long, 0, draw(st.sampled_from(HEATS[1:])), draw(st.integers(1, 5)), heating)
    return Job("load", (block,), draw(st.sampled_from((0, 6, 48))))


@given(st.lists(loads(), max_size=8))
@settings(max_examples=40, deadline=None)
def test_no_oven_is_fuller_than_its_shelves(made: list[Job]) -> None:
    for better in (solved, None):
        fit = fitted(made, COUNT, better, ROOM)
        taken: dict[tuple[int, int], int] = {}
        for job, early, units in zip(made, fit.early, fit.units, strict=True):
            for block, unit in zip(job.blocks, units, strict=True):
                for step in range(block.last + early, block.first - block.filled + early):
                    taken[unit, step] = taken.get((unit, step), 0) + block.room
        assert all(filled <= ROOM["oven"] for filled in taken.values())


def test_a_load_heats_up_beside_the_one_before() -> None:
    """20 min heating and 20 in the oven, twice: the first is ready as the second goes in."""
    load = Job("trout", (Block("oven", 8, 0, (220.0, 230.0, 15.0), 5, 4),), 2)
    assert sorted(fitted([load, load], {"oven": 1}, solved, ROOM).early) == [0, 4]
    half = Job("trout", (Block("oven", 8, 0, (220.0, 230.0, 15.0), 2, 4),), 2)
    assert fitted([half, half], {"oven": 1}, solved, ROOM).early == (0, 0)
