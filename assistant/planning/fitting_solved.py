"""A plan of least waiting by mixed-integer programming: scipy's HiGHS, loaded where a menu does not fit counted back.

A variable says of a job that it is ready so many steps early (and of a thing shared by heat, in which unit it is); in
every step no more may be taken than there is.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from itertools import combinations

from assistant.errors import AssistantError
from assistant.planning.fitting import Job, Units, assigned, cost

# beyond these a plan takes longer to find than to cook by, and what was placed stands
MOST_VARIABLES, MOST_ROWS = 8_000, 12_000
SECONDS, NODES, GAP = 5.0, 2_000, 0.01


class NothingSolves(AssistantError, RuntimeError):
    """The library that solves is not installed."""

    def __str__(self) -> str:
        return 'a plan of least waiting needs scipy, which is not installed here: pip install "simmerline[plan]"'


def solved(
    jobs: Sequence[Job], count: dict[str, int], placed: Sequence[int], room: dict[str, int] | None = None
) -> tuple[tuple[int, ...], Units] | None:
    """A plan that costs no more than the one that was placed; None where none was found, or the menu is too large.

    raises: NothingSolves where scipy is not installed
    """
    try:
        import numpy
        from scipy.optimize import Bounds, LinearConstraint, milp
        from scipy.sparse import csr_array
    except ImportError:
        raise NothingSolves from None
    variables = _variables(jobs, count, cost(jobs, placed))
    if len(variables) > MOST_VARIABLES:
        return None
    rows = [*_rows(jobs, count, variables), *_room_rows(jobs, room or {}, variables)]
    if len(rows) > MOST_ROWS:
        return None
    at = [(r, v) for r, (held, _) in enumerate(rows) for v in held]
    weights = [held[v] for held, _ in rows for v in held]
    taken = csr_array((weights, tuple(zip(*at, strict=True))), shape=(len(rows), len(variables)))
    one_each = csr_array(
        ([1.0] * len(variables), ([i for i, _, _ in variables], range(len(variables)))),
        shape=(len(jobs), len(variables)),
    )
    # each variable a little dearer than the one before it, so that equals are settled the same way every time
    costs = numpy.array([jobs[i].cost(s) + 1e-7 * n for n, (i, s, _) in enumerate(variables)])
    found = milp(
        costs,
        integrality=numpy.ones(len(variables)),
        bounds=Bounds(0, 1),
        constraints=[
            LinearConstraint(taken, -numpy.inf, [float(most) for _, most in rows]),
            LinearConstraint(one_each, 1, 1),
        ],
        options={"time_limit": SECONDS, "node_limit": NODES, "mip_rel_gap": GAP},
    )
    if found.x is None:
        return None
    early, heated = [0] * len(jobs), [0] * len(jobs)
    for chosen, (i, s, unit) in zip(found.x, variables, strict=True):
        if chosen > 0.5:
            early[i], heated[i] = s, unit
    units = assigned(jobs, early, count, heated, room)
    return (tuple(early), units) if units is not None and cost(jobs, early) <= cost(jobs, placed) + 1e-9 else None


def _variables(jobs: Sequence[Job], count: dict[str, int], most: float) -> list[tuple[int, int, int]]:
    """Job, steps early, and unit of what is shared by heat (0 where nothing is), none dearer than the whole plan is."""
    found: list[tuple[int, int, int]] = []
    for i, job in enumerate(jobs):
        by_heat = next((block.thing for block in job.blocks if block.heat is not None), None)
        units = count[by_heat] if by_heat else 1
        early = 0
        while job.cost(early) <= most + 1e-9 and len(found) <= MOST_VARIABLES:
            found += [(i, early, unit) for unit in range(units)]
            early += 1
    return found


def _rows(
    jobs: Sequence[Job], count: dict[str, int], variables: Sequence[tuple[int, int, int]]
) -> list[tuple[dict[int, float], int]]:
    """What is taken in each step by which variables, and how much there is; and the pairs that heat keeps apart."""
    taken: dict[tuple[str, int], dict[int, float]] = defaultdict(dict)
    by_job: dict[tuple[int, int, int], dict[int, float]] = defaultdict(dict)
    for n, (i, early, unit) in enumerate(variables):
        for block in jobs[i].blocks:
            for step in range(block.last + early, block.first + early):
                if block.heat is None:
                    taken[block.thing, step][n] = taken[block.thing, step].get(n, 0.0) + 1.0
                else:
                    by_job[i, unit, step][n] = 1.0
    rows = [(held, count[thing]) for (thing, _), held in taken.items() if sum(held.values()) > count[thing]]
    heated = {i: block for i, job in enumerate(jobs) for block in job.blocks if block.heat is not None}
    apart = [
        (i, j)
        for i, j in combinations(heated, 2)
        if heated[i].thing == heated[j].thing and not heated[i].shares(heated[j])
    ]
    steps = sorted({(unit, step) for _, unit, step in by_job})
    for i, j in apart:
        for unit, step in steps:
            if (i, unit, step) in by_job and (j, unit, step) in by_job:
                rows.append(({**by_job[i, unit, step], **by_job[j, unit, step]}, 1))
        if len(rows) > MOST_ROWS:
            break
    return rows


def _room_rows(
    jobs: Sequence[Job], room: dict[str, int], variables: Sequence[tuple[int, int, int]]
) -> list[tuple[dict[int, float], int]]:
    """What fills the room of a single thing in each step by which variables, and how much there is."""
    filled: dict[tuple[str, int, int], dict[int, float]] = defaultdict(dict)
    for n, (i, early, unit) in enumerate(variables):
        for block in jobs[i].blocks:
            if block.room and block.thing in room:
                for step in range(block.last + early, max(block.last + 1, block.first - block.filled) + early):
                    held = filled[block.thing, unit, step]
                    held[n] = held.get(n, 0.0) + min(block.room, room[block.thing])
    return [(held, room[thing]) for (thing, _, _), held in filled.items() if sum(held.values()) > room[thing]]
