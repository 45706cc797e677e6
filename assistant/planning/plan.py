"""A menu worked back from service: when each stage of each dish begins, within what the kitchen has.

The stages and their ranges are those of the rules that answer questions. What bakes at a like heat shares an oven, a
pot has a burner, a pair of hands does one thing at a time; nothing is ready after service.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from functools import lru_cache

from assistant.errors import AssistantError
from assistant.planning.fitting import STEP_MIN, Block, Fit, Job, fitted, steps
from assistant.planning.fitting_solved import solved
from assistant.planning.menu import Menu, MenuLine
from assistant.planning.order_sheet import has_mains, request_of, takers
from assistant.planning.serving import before
from assistant.reading.words import cut
from assistant.understanding import lexicon
from rules.amounts.oven_room import SHELVES, filled
from rules.errors import RulesError
from rules.foods.dishes import dishes
from rules.model import Request
from rules.said import Said, sentences
from rules.topics.order.taken import raw_g as raw_of
from rules.topics.schedule.clashes import SHARED, Use
from rules.topics.schedule.keeping import Keeps, hands_min, keeps, late_safe
from rules.topics.schedule.stages import Stage, method_of

OVEN, BURNER, HANDS = "oven", "burner", "hands"
# methods whose pot stands on a burner
ON_A_BURNER = ("boil", "simmer", "poach", "braise", "stew", "steam", "reduce", "pressure_cook")
# the stage of a roast or a fry that is done in a pot; the stages in which a thing stays taken
COOK = "cook"
HEATED = "heat_up"
IN_A_POT, TAKEN = "parboil", (HEATED, COOK)
# a cooker stays shut till its pressure has fallen
RELEASE = "release"
# a dish that makes more is cooked for so many in other kitchens
MOST_LOADS = 24
say = sentences("planning/plan")
order_say = sentences("planning/order")


@dataclass(frozen=True, slots=True)
class Has:
    """What a kitchen has: ovens that stand at one heat each at a time, burners, pairs of hands; of all else one.

    shelves: of an oven, a full-size sheet on each
    """

    ovens: int = 1
    burners: int = 6
    cooks: int = 1
    shelves: int = SHELVES

    def count(self) -> dict[str, int]:
        """How many there are of each thing."""
        others = {thing: 1 for thing, _ in SHARED.values()}
        return {**others, OVEN: self.ovens, BURNER: self.burners, HANDS: self.cooks}


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """A dish as it is asked for and its stages. line: of the menu, where it stands

    load, loads: which one of so many that an oven takes one after the other; shelves: that the load fills
    """

    line: MenuLine
    request: Request
    stages: tuple[Stage, ...]
    keeps: Keeps
    load: int = 1
    loads: int = 1
    shelves: int = 0

    @property
    def dish(self) -> str:
        """What the dish is called."""
        return self.request.dish or self.request.timer_name or self.line.text

    @property
    def name(self) -> str:
        """What it is called, with its load where there are several."""
        return f"{self.dish} {self.load}/{self.loads}" if self.loads > 1 else self.dish

    @property
    def offsets(self) -> tuple[int, ...]:
        """When each stage begins, and the last one ends, in steps before the dish is ready."""
        ends = [sum(stage.plan_min for stage in self.stages[i:]) for i in range(len(self.stages))]
        return (*map(steps, ends), 0)

    @property
    def sooner_min(self) -> float:
        """How much sooner it may be ready than planned, by the short end of each range [min]."""
        return sum(stage.plan_min - stage.low_min for stage in self._moved)

    @property
    def later_min(self) -> float:
        """How much later, by the long end [min]; 0 for what is planned by it."""
        return sum(stage.high_min - stage.plan_min for stage in self._moved)

    @property
    def _moved(self) -> list[Stage]:
        return [stage for stage in self.stages if stage.high_min > stage.low_min and stage.id in TAKEN]


@dataclass(frozen=True, slots=True, kw_only=True)
class Work:
    """A stage of a dish in the plan: from so many minutes before service to so many.

    hands_min: how long it takes hands, from its beginning; units: which single one of each thing it has, by name
    """

    course: Course
    stage: Stage
    from_min: int
    to_min: int
    hands_min: int
    units: tuple[tuple[str, int], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """A menu in time. work: the earliest first; early_min: by dish, how long before service it is ready

    made_at: when it was made, for which nothing can begin before
    faults: what was left out; late: by dish, what kept it from being ready within what it keeps
    """

    title: str
    elevation_m: float
    covers: int | None
    service: datetime
    made_at: datetime
    has: Has
    courses: tuple[Course, ...]
    early_min: tuple[int, ...]
    work: tuple[Work, ...]
    how: str
    late: dict[int, tuple[str, ...]]
    faults: tuple[Said, ...]
    notes: tuple[Said, ...]

    @property
    def fits(self) -> bool:
        """Whether every dish is ready within what it keeps."""
        return not self.late

    @property
    def begins(self) -> datetime:
        """When the first stage begins."""
        return self.at(max((work.from_min for work in self.work), default=0))

    @property
    def past(self) -> tuple[tuple[Course, datetime], ...]:
        """The dishes that should be on already, with when they are ready if they are begun at once."""
        ready = (
            (c, e, self.made_at - self.at(e + c.offsets[0] * STEP_MIN))
            for c, e in zip(self.courses, self.early_min, strict=True)
        )
        return tuple((c, self.at(e) + behind) for c, e, behind in ready if behind > timedelta())

    def at(self, minutes: float) -> datetime:
        """The moment so many minutes before service."""
        return before(self.service, minutes)


def plan(
    menu: Menu,
    service: datetime,
    *,
    elevation_m: float,
    covers: int | None = None,
    has: Has = Has(),
    made_at: datetime | None = None,
    solve: bool = True,
    watched: Callable[[Sequence[MenuLine]], Iterable[MenuLine]] = iter,
) -> Plan:
    """The plan of a menu. covers: of all of it, where the menu does not say

    made_at: the time it is now, from which on dishes can be begun; without one every plan is in time
    solve: whether a plan of least waiting is looked for where the dishes do not fit as counted back, which needs scipy
    watched: goes through the lines, for a bar that shows how far it is
    raises: NothingSolves where it is needed and not installed
    """
    guests, faults, found = covers or menu.covers, list(menu.faults), []
    count, mains = has.count(), has_mains(menu)
    for line in watched(menu.lines):
        try:
            course = _course(line, takers(line, guests), elevation_m)
        except (AssistantError, RulesError) as fault:
            faults.append(order_say("bad-recipe", fault=str(fault)))
            continue
        except OSError:
            faults.append(order_say("unread-recipe", file=line.text))
            continue
        lacks = next((block.thing for block in _blocks(course) if not count[block.thing]), None)
        if not course.stages:
            faults.append(_untimed(line))
        elif lacks:
            faults.append(say("lacks", dish=course.name, thing=lacks))
        elif (loads := _in_loads(course, has.shelves, mains)) and loads[0].loads > MOST_LOADS:
            faults.append(say("too-many-loads", dish=course.name, loads=loads[0].loads, shelves=has.shelves))
        else:
            found += loads or [course]
    jobs = [Job(course.name, _blocks(course), int(course.keeps.most_min // STEP_MIN)) for course in found]
    fit = fitted(jobs, count, solved if solve else None, {OVEN: has.shelves})
    works = list(_work(found, jobs, fit))
    return Plan(
        title=menu.title,
        elevation_m=elevation_m,
        covers=guests,
        service=service,
        made_at=made_at or datetime.min.replace(tzinfo=UTC),
        has=has,
        courses=tuple(found),
        early_min=tuple(early * STEP_MIN for early in fit.early),
        work=tuple(sorted(_without_reheating(works), key=lambda w: (-w.from_min, -w.to_min, w.course.line.line))),
        how=fit.how,
        late=fit.kept_from,
        faults=tuple(faults),
        notes=menu.notes,
    )


def _untimed(line: MenuLine) -> Said:
    if line.recipe:
        return say("a-recipe", line=line.line, text=line.text)
    return say("no-time", line=line.line, text=line.text)


def _course(line: MenuLine, covers: int | None, elevation_m: float) -> Course:
    if line.recipe:
        from assistant.planning.recipe_work import recipe_work

        asked, work = recipe_work(line.recipe, covers, elevation_m)
        return Course(line=line, request=asked, stages=work, keeps=keeps(asked))
    known = dishes()[line.dish]
    heard = [one.id for one in lexicon.hear(list(cut(line.text).norms)) if one.kind == "method"]
    request = Request(
        topic="schedule",
        dish=line.dish,
        dish_class=known.dish_class,
        method=next((method for method in heard if method in known.methods), None),
        portions=covers,
        elevation_m=elevation_m,
    )
    return Course(line=line, request=request, stages=_stages(request), keeps=keeps(request))


@lru_cache(maxsize=1024)
def _stages(request: Request) -> tuple[Stage, ...]:
    """The stages, worked out once for dishes that come again."""
    return late_safe(request)


def _without_reheating(works: Sequence[Work]) -> Iterator[Work]:
    """The work without the heating of what is hot from the load before."""
    cooked = [one for one in works if one.stage.id == COOK and one.course.loads > 1]
    for one in works:
        hot = one.stage.id == HEATED and any(
            other.course.dish == one.course.dish and other.units == one.units
            and other.from_min > one.to_min >= other.to_min - STEP_MIN for other in cooked
        )  # fmt: skip
        if not hot:
            yield one


def _in_loads(course: Course, shelves: int, mains: bool) -> list[Course]:
    """A dish of the oven as the loads that it makes, each with the shelves it fills; none for any other.

    A recipe of the cook's own does not tell how much room it takes.
    """
    covers, line = course.request.portions, course.line
    in_oven = SHARED.get(method_of(course.request) or "", ("", None))[0] == OVEN
    if not in_oven or not covers or not line.dish:
        return []
    raw_g = raw_of(request_of(line, covers, course.request.elevation_m or 0.0, mains))
    room = filled(raw_g, line.dish, course.request.dish_class or "general", shelves)
    if room.loads > MOST_LOADS:
        return [replace(course, loads=room.loads)]
    each, over = divmod(room.shelves, room.loads)
    return [replace(course, load=n, loads=room.loads, shelves=each + (n <= over)) for n in range(1, room.loads + 1)]


def _blocks(course: Course) -> tuple[Block, ...]:
    """What a dish takes in a kitchen, and when."""
    return tuple(block for _, block in _blocks_of(course))


def _blocks_of(course: Course) -> Iterator[tuple[int, Block]]:
    """Each block with the stage that it belongs to; what a thing is taken for through several belongs to the first."""
    at, method = course.offsets, method_of(course.request) or ""
    thing, within_k = SHARED.get(method, (None, None))
    for n, stage in enumerate(course.stages):
        hands = min(steps(hands_min(stage, course.request)), at[n] - at[n + 1])
        if hands:
            yield n, Block(HANDS, at[n], at[n] - hands)
        if stage.id == IN_A_POT and at[n] > at[n + 1]:
            yield n, Block(BURNER, at[n], at[n + 1])
    hot = [n for n, stage in enumerate(course.stages) if stage.id in TAKEN]
    if not hot or at[hot[0]] == at[hot[-1] + 1]:
        return
    first, last = at[hot[0]], at[hot[-1] + 1]
    if method in ON_A_BURNER:
        yield hot[0], Block(BURNER, first, last)
    if thing:
        released = next((at[n + 1] for n, stage in enumerate(course.stages) if stage.id == RELEASE), last)
        heat = Use(course.name, course.request, method, 0, 0).heat if within_k is not None else None
        spans = (heat.low_c, heat.high_c, within_k) if heat and within_k is not None else None
        cook = next(n for n in hot if course.stages[n].id == COOK)
        # an oven that another load stands in is hot already
        yield hot[0], Block(thing, first, released, spans, course.shelves, first - at[cook])


def _work(courses: Sequence[Course], jobs: Sequence[Job], fit: Fit) -> Iterator[Work]:
    for course, job, early, units in zip(courses, jobs, fit.early, fit.units, strict=True):
        at = course.offsets
        taken = list(zip([n for n, _ in _blocks_of(course)], job.blocks, units, strict=True))
        for n, stage in enumerate(course.stages):
            hands = sum(b.first - b.last for m, b, _ in taken if m == n and b.thing == HANDS)
            has = tuple(
                (b.thing, unit + 1) for _, b, unit in taken
                if b.thing != HANDS and min(b.first, at[n]) > max(b.last, at[n + 1])
            )  # fmt: skip
            yield Work(
                course=course, stage=stage, from_min=(at[n] + early) * STEP_MIN, to_min=(at[n + 1] + early) * STEP_MIN,
                hands_min=hands * STEP_MIN, units=has,
            )  # fmt: skip
