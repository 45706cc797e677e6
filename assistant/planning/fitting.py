"""Fit the work of several dishes into a kitchen: how much earlier than counted back each one has to be.

Time is counted in steps before service. The stages of a dish follow each other, so all that is to be found is one
figure a dish: how many steps before service it is ready. Where everything can be ready at service nothing is searched.
Else the dishes are placed one after the other, and `fitting_solved` looks for a better plan than that.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from random import Random

STEP_MIN = 5
# which single one of a thing each block of each job has
Units = tuple[tuple[int, ...], ...]
# what waiting past what a dish keeps weighs, to waiting within it
PAST_WEIGHS = 10.0
# so many orders are tried, fewer of many jobs, each of which looks at all that were put before it
MOST_TRIES, MOST_LOOKS = 1500, 400_000


@dataclass(frozen=True, slots=True)
class Block:
    """A stretch in which a dish has a thing, from so many steps before service to so many before it (first > last).

    heat: the heats that will do, low and high [degC], with how far they may lie apart [K]; None where nothing shares it
    room: how much of the thing it fills where others share it, from `filled` on: an oven heats up empty
    """

    thing: str
    first: int
    last: int
    heat: tuple[float, float, float] | None = None
    room: int = 0
    filled: int = 0

    def shares(self, other: Block) -> bool:
        """Whether there is a heat that does for both."""
        if self.heat is None or other.heat is None:
            return False
        return max(self.heat[0], other.heat[0]) - min(self.heat[1], other.heat[1]) <= self.heat[2]


@dataclass(frozen=True, slots=True)
class Job:
    """A dish to be fitted in. keeps: so many steps it may be ready before service"""

    name: str
    blocks: tuple[Block, ...]
    keeps: int

    def cost(self, early: int) -> float:
        """What it costs to be ready so many steps early, in shares of what the dish keeps."""
        most = max(self.keeps, 1)
        return (early + (PAST_WEIGHS - 1) * max(0, early - self.keeps)) / most


@dataclass(frozen=True, slots=True)
class Fit:
    """A plan: how many steps early each job is ready.

    units: which single one of each thing it has; how: counted, placed or solved
    kept_from: by job, what stood in the way of those that wait longer than they keep
    """

    early: tuple[int, ...]
    units: Units
    how: str
    kept_from: dict[int, tuple[str, ...]] = field(default_factory=dict)


Solver = Callable[[Sequence[Job], dict[str, int], Sequence[int], dict[str, int]], tuple[tuple[int, ...], Units] | None]


def steps(minutes: float) -> int:
    """Steps that hold so many minutes.

    >>> steps(11), steps(10)
    (3, 2)
    """
    return math.ceil(minutes / STEP_MIN - 1e-9)


@dataclass
class Kitchen:
    """What is taken when. count: how many there are of each thing; units: the blocks each single one of them has

    room: how much a single one holds of what shares it, where that is limited
    levels: of each single one the steps at which at least so much of its room is filled, as bits
    """

    count: dict[str, int]
    room: dict[str, int] = field(default_factory=dict)
    units: dict[str, list[list[Block]]] = field(default_factory=dict)
    taken: dict[str, list[int]] = field(default_factory=dict)
    levels: dict[str, list[list[int]]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.units = {thing: [[] for _ in range(count)] for thing, count in self.count.items()}
        self.taken = {thing: [0] * count for thing, count in self.count.items()}
        self.levels = {
            thing: [[0] * (room + 1) for _ in range(self.count.get(thing, 0))] for thing, room in self.room.items()
        }

    def barred(self, block: Block) -> int:
        """The shifts at which a block finds no unit free, as bits."""
        found = -1
        for n in range(self.count[block.thing]):
            full = _filled(block) if self._is_limited(block) else None
            barred = _widened(self._closed(block, n), block)
            found &= barred | _widened(self._full(block, n), full) if full else barred
            if not found:
                break
        return found

    def _is_limited(self, block: Block) -> bool:
        return bool(block.room) and block.thing in self.levels

    def _full(self, block: Block, unit: int) -> int:
        """The steps at which a unit has no room for a block, as bits."""
        most = self.room[block.thing]
        return self.levels[block.thing][unit][max(1, most - min(block.room, most) + 1)]

    def _closed(self, block: Block, unit: int) -> int:
        """The steps at which a unit is not to be had for a block, as bits."""
        if block.heat is None:
            return self.taken[block.thing][unit]
        return _bits(other for other in self.units[block.thing][unit] if not block.shares(other))

    def least(self, job: Job) -> int:
        """The least number of steps that a job has to be early."""
        barred = 0
        for block in job.blocks:
            barred |= self.barred(block)
        return (~barred & (barred + 1)).bit_length() - 1

    def put(self, job: Job, early: int) -> tuple[int, ...]:
        """Take what a job needs; the unit of each of its blocks."""
        return tuple(self.take(moved_by(block, early)) for block in job.blocks)

    def free(self, block: Block) -> list[int]:
        """The units that are free for a block."""
        own = _bits((block,))
        free = [n for n in range(self.count[block.thing]) if not self._closed(block, n) & own]
        if not self._is_limited(block):
            return free
        full = _bits((_filled(block),))
        return [n for n in free if not self._full(block, n) & full]

    def take(self, block: Block) -> int:
        """Take a unit that is free for a block, which there has to be."""
        own, free = _bits((block,)), self.free(block)
        # with what it shares first, so that another heat finds a unit that is empty
        shared = [n for n in free if self.taken[block.thing][n] & own]
        self.take_unit(block, (shared or free)[0])
        return (shared or free)[0]

    def take_unit(self, block: Block, unit: int) -> None:
        """Take a unit that is settled."""
        self.units[block.thing][unit].append(block)
        self.taken[block.thing][unit] |= _bits((block,))
        if self._is_limited(block):
            levels, own = self.levels[block.thing][unit], _bits((_filled(block),))
            for _ in range(min(block.room, self.room[block.thing])):
                for level in range(len(levels) - 1, 1, -1):
                    levels[level] |= levels[level - 1] & own
                levels[1] |= own


def moved_by(block: Block, early: int) -> Block:
    """A block of a job that is ready so many steps early."""
    return replace(block, first=block.first + early, last=block.last + early)


def _filled(block: Block) -> Block:
    """The part of a block in which its thing is filled."""
    return replace(block, first=max(block.last + 1, block.first - block.filled))


def overlap(one: Block, other: Block) -> bool:
    """Whether two blocks are at the same time."""
    return min(one.first, other.first) > max(one.last, other.last)


def _bits(blocks: Iterable[Block]) -> int:
    """The steps that blocks take, as bits."""
    taken = 0
    for block in blocks:
        taken |= ((1 << (block.first - block.last)) - 1) << block.last
    return taken


def _widened(taken: int, block: Block) -> int:
    """The shifts of a block, as bits, at which it meets a step that is taken."""
    met, wide, left = taken >> block.last, 1, block.first - block.last
    while wide < left:
        more = min(wide, left - wide)
        met |= met >> more
        wide += more
    return met


def assigned(
    jobs: Sequence[Job],
    early: Sequence[int],
    count: dict[str, int],
    heated: Sequence[int] | None = None,
    room: dict[str, int] | None = None,
) -> Units | None:
    """Which unit each block of each job has, from zero; None where they do not all find one.

    heated: the unit by job of what is shared by heat, where it is settled. All else is taken in the order in which it
    begins, which finds units wherever there are any.
    """
    blocks = [(moved_by(b, shift), i, j) for i, shift in enumerate(early) for j, b in enumerate(jobs[i].blocks)]
    found = [[0] * len(job.blocks) for job in jobs]
    kitchen = Kitchen(count, room or {})
    for block, i, j in sorted(blocks, key=lambda told: (-told[0].first, told[0].last, told[1])):
        if heated is not None and block.heat is not None:
            found[i][j] = heated[i]
            if heated[i] not in kitchen.free(block):
                return None
            kitchen.take_unit(block, heated[i])
        elif not kitchen.free(block):
            return None
        else:
            found[i][j] = kitchen.take(block)
    return tuple(map(tuple, found))


def cost(jobs: Sequence[Job], early: Sequence[int]) -> float:
    """What a plan costs."""
    return sum(job.cost(shift) for job, shift in zip(jobs, early, strict=True))


def placed(
    jobs: Sequence[Job], count: dict[str, int], room: dict[str, int] | None = None
) -> tuple[tuple[int, ...], Units]:
    """The jobs one after the other, each as late as what is taken lets it: the best of a few orders, and of those that
    come of moving one job in it."""

    def tried(order: list[int]) -> tuple[float, list[int], tuple[tuple[int, ...], Units]]:
        plan = _in_order(jobs, order, count, room or {})
        return cost(jobs, plan[0]), order, plan

    best = min((tried(order) for order in _orders(jobs)), key=lambda told: told[:2])
    # the same for the same jobs
    draw = Random(len(jobs))
    for _ in range(min(MOST_TRIES, MOST_LOOKS // max(len(jobs), 1) ** 2)):
        if not best[0]:
            break
        order = list(best[1])
        waiting = [i for i in order if best[2][0][i]]
        moved = draw.choice(waiting if draw.random() < 0.8 else order)
        order.remove(moved)
        order.insert(draw.randrange(len(order) + 1), moved)
        found = tried(order)
        # an order that is as good is gone on from, which leads out of places where no single move helps
        if found[0] <= best[0]:
            best = found
    return best[2]


def _orders(jobs: Sequence[Job]) -> Iterator[list[int]]:
    every = list(range(len(jobs)))
    yield sorted(every, key=lambda i: jobs[i].keeps)
    yield sorted(every, key=lambda i: (jobs[i].keeps, -_taken(jobs[i])))
    yield sorted(every, key=lambda i: (jobs[i].keeps > 0, _taken(jobs[i]), jobs[i].keeps))


def _taken(job: Job) -> int:
    return sum(block.first - block.last for block in job.blocks)


def _in_order(
    jobs: Sequence[Job], order: Iterable[int], count: dict[str, int], room: dict[str, int]
) -> tuple[tuple[int, ...], Units]:
    kitchen, early = Kitchen(count, room), [0] * len(jobs)
    units: list[tuple[int, ...]] = [()] * len(jobs)
    for i in order:
        early[i] = kitchen.least(jobs[i])
        units[i] = kitchen.put(jobs[i], early[i])
    return tuple(early), tuple(units)


def hinders(
    jobs: Sequence[Job], early: Sequence[int], units: Units, count: dict[str, int], at: int, room: dict[str, int]
) -> tuple[str, ...]:
    """What keeps a job from being ready within what it keeps, while the others stay as they are."""
    kitchen = Kitchen(count, room)
    for i, job in enumerate(jobs):
        for block, unit in zip(job.blocks, units[i], strict=True):
            if i != at:
                kitchen.take_unit(moved_by(block, early[i]), unit)
    within = (1 << (jobs[at].keeps + 1)) - 1
    barred = {block.thing: 0 for block in jobs[at].blocks}
    for block in jobs[at].blocks:
        barred[block.thing] |= kitchen.barred(block) & within
    whole = tuple(thing for thing, bits in barred.items() if bits == within)
    return whole or tuple(thing for thing, bits in barred.items() if bits)


def fitted(
    jobs: Sequence[Job], count: dict[str, int], better: Solver | None = None, room: dict[str, int] | None = None
) -> Fit:
    """The best plan found for jobs in a kitchen with so many of each thing, at least one of what is needed.

    room: how much a single one holds of what shares it; a thing that is not there holds all of it

    better: looks for a better plan than that of placing, as `fitting_solved.solved` does; it is asked for only where
    the jobs do not fit as counted back
    """
    at_once, room = (0,) * len(jobs), room or {}
    free = assigned(jobs, at_once, count, room=room)
    if free is not None:
        return Fit(at_once, free, "counted")
    early, units = placed(jobs, count, room)
    how = "placed" if any(early) else "counted"
    solved = better(jobs, count, early, room) if better and any(early) else None
    if solved:
        (early, units), how = solved, "solved"
    late = [i for i, shift in enumerate(early) if shift > jobs[i].keeps]
    return Fit(early, units, how, {i: hinders(jobs, early, units, count, i, room) for i in late})
