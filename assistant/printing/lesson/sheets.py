"""The sheet for the class and the key for its teacher, put together."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from assistant.printing.lesson.air_column import air_column, weight
from assistant.printing.lesson.asking import answer_at
from assistant.printing.lesson.blocks import Block, Heading, Picture, Sheet, Text, Together
from assistant.printing.lesson.drilled import answers, drawn, questions
from assistant.printing.lesson.experiment import experiment, finding
from assistant.printing.lesson.table import table
from assistant.printing.lesson.themes import Theme, theme
from assistant.printing.lesson.why import why
from assistant.printing.lesson.worked import worked
from assistant.replies.sentences import worded
from assistant.replies.wording import cited
from rules import explanations
from rules.book import Case
from rules.model import Request, Units
from rules.physics.ambient import ambient
from rules.said import Said, elevation, sentences, temp

WORDING = "printing/lesson"
say = sentences("printing/lesson")


@dataclass(frozen=True, slots=True, kw_only=True)
class Lesson:
    """A lesson as it was asked for.

    elevations_m: of the kitchens [m], the class's own first; count: of questions; class_size: how many are taught
    """

    theme: str
    elevations_m: tuple[float, ...]
    class_size: int
    count: int
    seed: int
    units: Units = "us"
    command: str = ""

    @property
    def here_m(self) -> float:
        """The elevation of the class [m]."""
        return self.elevations_m[0]


def handout(lesson: Lesson) -> Sheet:
    """The sheet for the class: no answer stands on it.

    raises: UnknownWord for a theme that is none
    """
    units, of = lesson.units, theme(lesson.theme)
    place = worded(say("place", elevation=elevation(lesson.here_m)), units)
    return Sheet(
        title=_title(lesson),
        place=place[:1].upper() + place[1:],
        to_fill_in=(worded(say("name-line"), units), worded(say("date-line"), units)),
        blocks=tuple(_blocks(lesson, of)),
        foot=_foot(lesson, _title(lesson)),
    )


def key(lesson: Lesson) -> Sheet:
    """The key: the answers with what else counts, and what the experiment shows."""
    units, of = lesson.units, theme(lesson.theme)
    title = worded(say("key-title", title=_title(lesson)), units)
    place = worded(say("place", elevation=elevation(lesson.here_m)), units)
    made = drawn(of.drill, lesson.seed, lesson.count, units)
    blocks: tuple[Block, ...] = (
        Text(worded(say("key-line", command=lesson.command), units)),
        Heading(worded(say("answers-head"), units)),
        answers(made),
        *finding(of.experiment, lesson.here_m, units),
    )
    return Sheet(title, place[:1].upper() + place[1:], (), blocks, _foot(lesson, title))


def _blocks(lesson: Lesson, of: Theme) -> Iterator[Block]:
    here_m, units = lesson.here_m, lesson.units
    yield Heading(worded(say("why-head"), units))
    yield from why(of.why, here_m, units)
    yield Heading(worded(say("air-head"), units))
    yield _picture(lesson)
    yield Heading(worded(say("table-head"), units))
    yield table(of, lesson.elevations_m, units)
    yield Heading(worded(say("worked-head"), units))
    yield from worked(of.examples, here_m, units)
    yield Together(tuple(experiment(of.experiment, here_m, lesson.class_size, units)))
    yield Heading(worded(say("drill-head"), units))
    yield questions(drawn(of.drill, lesson.seed, lesson.count, units), lesson.seed, units)
    yield Text(worded(say("sources", sources="; ".join(_sources(lesson, of))), units), small=True)


def _picture(lesson: Lesson) -> Picture:
    """The drawing, told of in words for whoever does not see it."""
    column, units = air_column(lesson.here_m, lesson.units), lesson.units
    here, sea = ambient(column.elevation_m), ambient(0.0)
    at = explanations.value("at")(Case(Request(elevation_m=column.elevation_m)))
    caption = say("air-caption", at=at, sea=weight(sea.pressure_pa, units), here=weight(here.pressure_pa, units))
    shows = say("air-shows", at=at, boil=temp(here.boiling_c), boil_at_sea=temp(sea.boiling_c))
    return Picture(column, worded(caption, units), worded(shows, units))


def _title(lesson: Lesson) -> str:
    return worded(Said(WORDING, f"title-{lesson.theme}"), lesson.units)


def _foot(lesson: Lesson, title: str) -> str:
    return worded(
        say("sheet-foot", title=title, elevation=elevation(lesson.here_m), seed=str(lesson.seed)), lesson.units
    )


def _sources(lesson: Lesson, of: Theme) -> tuple[str, ...]:
    """The publications behind the explanations and the examples, in the order in which they are used."""
    asks = [{"topic": "why", "subject": subject} for subject in of.why] + [example.ask for example in of.examples]
    found = (because.sources for ask in asks for because in answer_at(ask, lesson.here_m, lesson.units).because)
    return cited(dict.fromkeys(source for sources in found for source in sources))
