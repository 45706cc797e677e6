"""A plan as text: what every form shows, in order, in the units of the reader."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import lru_cache

from assistant.planning.clock import clock, stretch
from assistant.planning.fitting import STEP_MIN
from assistant.planning.plan import Course, Plan, Work
from assistant.replies.sentences import worded
from rules.model import Caution, Request, Units
from rules.physics.units import FT_PER_M
from rules.safety.holding_limits import limit_c, limit_min
from rules.said import Said, duration, listed, sentences, temp, yes
from rules.topics.schedule.stages import cooking_answer, method_of

say = sentences("planning/plan")
order_say = sentences("planning/order")
schedule_say = sentences("topics/schedule")
# less than this before service is at service [min]
NOTICED_MIN = 1.0


@dataclass(frozen=True, slots=True)
class Row:
    """A stage as text."""

    begin: str
    till: str
    dish: str
    what: str
    where: str


@dataclass(frozen=True, slots=True, kw_only=True)
class View:
    """The plan as text. days: the rows of each day under its name"""

    title: str
    summary: tuple[str, ...]
    verdict: str
    heads: tuple[str, ...]
    days: tuple[tuple[str, tuple[Row, ...]], ...]
    blocks: tuple[tuple[str, tuple[str, ...]], ...]
    left_out: tuple[str, ...]
    left_out_head: str
    foot: str


def view(plan: Plan, units: Units) -> View:
    """The plan in the reader's units."""
    return _Writer(plan, units).view()


def place_name(unit: tuple[str, int], plan: Plan) -> str:
    """A single one of a thing: oven 2, or just oven where there is one."""
    thing, n = unit
    return f"{thing} {n}" if plan.has.count()[thing] > 1 else thing


@dataclass(frozen=True, slots=True)
class _Writer:
    """Words for one plan and one reader."""

    plan: Plan
    units: Units

    def words(self, said: Said) -> str:
        return worded(said, self.units)

    def view(self) -> View:
        plan = self.plan
        return View(
            title=self.words(say("title", named=yes(plan.title), title=plan.title)),
            summary=tuple(self.summary()),
            verdict=self.verdict(),
            heads=tuple(map(self.words, _heads())),
            days=tuple(self.days()),
            blocks=tuple((head, lines) for head, lines in self.blocks() if lines),
            left_out=tuple(map(self.words, plan.faults)),
            left_out_head=self.words(say("left-out-heading")),
            foot=self.words(say("foot")),
        )

    def summary(self) -> Iterator[str]:
        plan, has = self.plan, self.plan.has
        feet = self.units == "us"
        place = f"{round(plan.elevation_m * FT_PER_M):,} ft" if feet else f"{round(plan.elevation_m):,} m"
        counted = yes(plan.covers)
        yield self.words(order_say("for-covers", counted=counted, covers=f"{plan.covers or 0:,}", place=place))
        zone = getattr(plan.service.tzinfo, "key", "") or plan.service.tzname() or ""
        time = self.clock(plan.service)
        yield self.words(say("served-at", day=self.day(plan.service), time=time, zone=zone))
        counts = {name: getattr(has, name) for name in ("ovens", "shelves", "burners", "cooks")}
        yield self.words(say("kitchen", **counts))

    def verdict(self) -> str:
        if not self.plan.work:
            return self.words(say("empty"))
        if self.plan.fits:
            return self.words(say("fits", how=self.plan.how))
        return self.words(say("fits-not", how=self.plan.how, count=len(self.plan.late)))

    def clock(self, moment: datetime) -> str:
        return clock(moment, self.units)

    def day(self, moment: datetime) -> str:
        return self.words(say("day", weekday=moment.weekday(), month=moment.month, day=moment.day))

    def days(self) -> Iterator[tuple[str, tuple[Row, ...]]]:
        by_day: dict[str, list[Row]] = {}
        for work in self.plan.work:
            if work.from_min > work.to_min:
                by_day.setdefault(self.day(self.plan.at(work.from_min)), []).append(self.row(work))
        if by_day:
            served = Row(self.clock(self.plan.service), "", "", self.words(say("serve")), "")
            by_day.setdefault(self.day(self.plan.service), []).append(served)
        yield from ((day, tuple(rows)) for day, rows in by_day.items())

    def row(self, work: Work) -> Row:
        begin, till = self.plan.at(work.from_min), self.plan.at(work.to_min)
        where = ", ".join(place_name(unit, self.plan) for unit in work.units)
        what = worded(work.stage.step, self.units)
        return Row(self.clock(begin), self.clock(till), work.course.name, what, where)

    def blocks(self) -> Iterator[tuple[str, tuple[str, ...]]]:
        plan = self.plan
        late = [self.late(at, things) for at, things in plan.late.items()]
        yield self.words(say("late-heading")), (*late, self.ways()) if late else ()
        past = (self.words(say("past-line", dish=course.name, ready=self.moment(ready))) for course, ready in plan.past)
        yield self.words(say("past-heading")), tuple(past)
        yield self.words(say("waits-heading")), tuple(self.waiting())
        yield self.words(say("care-heading")), tuple(dict.fromkeys(self.cautions()))
        yield self.words(say("notes-heading")), tuple(self.notes())

    def cautions(self) -> Iterator[str]:
        """What the cooking of each dish warns of, as where it is asked about."""
        for course in self.plan.courses:
            for caution in _warnings(course.request) if course.request.dish else ():
                yield self.words(schedule_say("of-caution", food=course.dish, caution=caution.text))

    def notes(self) -> Iterator[str]:
        yield from map(self.words, self.plan.notes)
        moments = [self.plan.at(work.from_min) for work in self.plan.work]
        if moments and moments[0].utcoffset() != self.plan.service.utcoffset():
            yield self.words(say("clocks"))

    def moment(self, moment: datetime) -> str:
        """A time of day, with its day where that is not the day of service."""
        time = self.clock(moment)
        return time if moment.date() == self.plan.service.date() else f"{time}, {self.day(moment)}"

    def late(self, at: int, things: tuple[str, ...]) -> str:
        plan, course = self.plan, self.plan.courses[at]
        return self.words(
            say(
                "late-line",
                dish=course.name,
                ready=self.moment(plan.at(plan.early_min[at])),
                early=stretch(timedelta(minutes=plan.early_min[at])),
                keeps=stretch(timedelta(minutes=course.keeps.most_min)),
                things=listed(say("thing", thing=thing) for thing in things),
            )
        )

    def ways(self) -> str:
        """The ways out for what does not fit."""
        return self.words(
            say(
                "late-ways",
                cool=temp(limit_c("cool_first")),
                first=duration(limit_min("cool_first")),
                cold=temp(limit_c("cool_last")),
                chill=duration(limit_min("cool_last")),
                reheat=temp(limit_c("reheat")),
            )
        )

    def waiting(self) -> Iterator[str]:
        """How each dish waits; loads that are ready together in one line."""
        together: dict[tuple[str, int], list[Course]] = {}
        for course, early in zip(self.plan.courses, self.plan.early_min, strict=True):
            together.setdefault((course.dish, early), []).append(course)
        for (_, early), courses in together.items():
            whole = len(courses) == courses[0].loads
            yield self.waits(courses[0], early, courses[0].dish if whole else ", ".join(c.name for c in courses))

    def waits(self, course: Course, early_min: int, names: str) -> str:
        return self.words(
            say(
                "waits-line",
                dish=names,
                ready=self.moment(self.plan.at(early_min)),
                end="middle" if course.later_min else "long",
                quick=yes(course.sooner_min >= NOTICED_MIN),
                sooner=stretch(timedelta(minutes=round(course.sooner_min))),
                slow=yes(course.later_min >= NOTICED_MIN),
                later=stretch(timedelta(minutes=round(course.later_min))),
                way=course.keeps.way,
                keeps=yes(course.keeps.most_min >= STEP_MIN),
                hot=temp(limit_c("hot_hold")),
                cold=temp(limit_c("cold_hold")),
                most=duration(course.keeps.most_min),
            )
        )


@lru_cache(maxsize=1024)
def _warnings(request: Request) -> tuple[Caution, ...]:
    """The warnings of the cooking of a dish."""
    return tuple(c for c in cooking_answer(request, method_of(request)).cautions if c.level != "note")


def _heads() -> tuple[Said, ...]:
    return (
        say("column-begin"), say("column-till"), say("column-dish"), say("column-what"), say("column-where"),
    )  # fmt: skip
