"""Pictures on a page: what there is to be drawn of an answer, a place, a recipe or a log, and the address of each.

The address holds what is drawn, signed, so that any worker draws it, and a browser may keep what it got.
"""

from __future__ import annotations

import hmac
import zlib
from base64 import urlsafe_b64decode, urlsafe_b64encode
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TYPE_CHECKING
from urllib.parse import urlencode

from assistant.errors import AssistantError
from assistant.printing.plots import Asked, told
from assistant.printing.recoloured import Palette, recoloured
from assistant.web.bodies import adapter
from assistant.web.people import signed
from assistant.web.problems import Problem
from assistant.web.settings import Settings
from assistant.worked_out import work_out
from rules.errors import RulesError
from rules.model import Answer, Kitchen, Request, Units
from rules.recipes.convert import Converted

if TYPE_CHECKING:
    from assistant.dialogue.deeds import Draw
    from assistant.printing.batch_report import Report
    from assistant.recipes.batch import Batch

# the colours of a sheet of the page, as style.css has them
SCHEMES = {"light": Palette(paper="#fffdf8", ink="#17202a"), "dark": Palette(paper="#182129", ink="#f1ebdf")}
WIDE, NARROW = "wide", "narrow"
WIDTHS = (WIDE, NARROW)
DISH, RECIPE, BATCHES = "dish", "recipe", "batches"
# those that go by the elevation alone
OF_PLACE = ("boil", "time", "pressure")
# how large a picture is [CSS px], and how many batches stand on one that is so wide [mm]
SIZES = {WIDE: (756, 491), NARROW: (378, 416)}
BATCHES_SIZES = {WIDE: (756, 314), NARROW: (416, 314)}
BATCHES_ON = {WIDE: (6, 200.0), NARROW: (3, 110.0)}
# a recipe with more amounts than that has no room for their names
MOST_SHARES = 24
MOST_TOLD = 512
PURPOSE = "picture"


@dataclass(frozen=True, slots=True)
class Drawing:
    """What is to be drawn. kind: a plot, or `batches` of the recipe that the words name; version: of what it is of"""

    kind: str
    asked: Asked
    version: str = ""


@dataclass(frozen=True, slots=True)
class Pictured:
    """A picture as a page shows it. query: what tells the route what to draw; told: the same in words

    sizes: by width [CSS px]; title: what stands over it, where it has no head of its own
    """

    query: str
    told: str
    sizes: dict[str, tuple[int, int]]
    title: str = ""


def of_answer(question: Request, settings: Settings) -> Pictured | None:
    """The time of a dish against elevation; None where the answer to a question has none, or is a refusal."""
    bare = replace(question, text="", unused=())
    if bare.elevation_m is None or bare.danger or not _is_timed(bare):
        return None
    return _pictured(Drawing(DISH, Asked(bare.elevation_m, bare.units, question=bare)), settings)


def of_wish(wish: Draw, settings: Settings) -> Pictured | None:
    """What somebody asked to be shown; None where there is nothing to draw."""
    from assistant.dialogue.pictures import OF_DISH, OF_RECIPE
    from assistant.recipes.recipe_answer import convert

    question = wish.question
    if wish.kind == OF_DISH:
        return of_answer(question, settings)
    if wish.kind == OF_RECIPE:
        found = convert(question)
        return None if isinstance(found, Answer) else of_recipe(found, question.units, settings)
    if wish.kind not in OF_PLACE:
        return None
    return _pictured(Drawing(wish.kind, Asked(question.elevation_m or 0.0, question.units)), settings)


def of_place(kitchen: Kitchen, settings: Settings) -> tuple[Pictured, ...]:
    """The plots of a place; none where nobody knows how high it is."""
    if kitchen.elevation_m is None:
        return ()
    asked = Asked(kitchen.elevation_m, kitchen.units)
    return tuple(filter(None, (_pictured(Drawing(kind, asked), settings) for kind in OF_PLACE)))


def of_recipe(done: Converted, units: Units, settings: Settings) -> Pictured | None:
    """A recipe before and after; None where no amount of it changes."""
    from assistant.printing.plots.recipe import shares_of

    shares = shares_of(done)
    if not 0 < len(shares.moved) <= MOST_SHARES:
        return None
    return _pictured(Drawing(RECIPE, Asked(done.to_elevation_m, units, shares=shares)), settings)


def of_batches(batches: tuple[Batch, ...], kitchen: Kitchen, settings: Settings) -> tuple[Pictured, ...]:
    """A picture of each recipe in a log that was made more than once."""
    from assistant.printing import batch_report

    found = []
    for report in batch_report.reports(batches, kitchen.units):
        if len(report.rows) > 1:
            words = batch_report.told(_latest(report, BATCHES_ON[WIDE][0]))
            drawing = Drawing(BATCHES, Asked(0.0, kitchen.units, report.recipe), f"{zlib.crc32(words.encode()):08x}")
            title = batch_report.title(report)
            found.append(Pictured(_query(drawing, settings), words, BATCHES_SIZES, title))
    return tuple(found)


def read(of: str, mark: str, settings: Settings) -> Drawing:
    """What an address of ours asks for.

    raises: Problem for any other
    """
    if not hmac.compare_digest(mark.encode(), signed(settings.secret, PURPOSE, of).encode()):
        raise Problem(404, "There is no such picture.")
    found: Drawing = adapter(Drawing).validate_json(zlib.decompress(urlsafe_b64decode(of)))
    return found


def drawn(drawing: Drawing, scheme: str, width: str, batches: Callable[[], tuple[Batch, ...]]) -> bytes:
    """The picture as an SVG. batches: the log it is of, where it is of one

    raises: NothingDraws where matplotlib is not installed; Problem where there is no such recipe in the log
    """
    svg = _of_log(drawing.asked, width, batches()) if drawing.kind == BATCHES else _plot(drawing, width)
    return recoloured(svg, SCHEMES[scheme])


def _plot(drawing: Drawing, width: str) -> bytes:
    from pathlib import Path

    from assistant.printing.drawing import as_files
    from assistant.printing.plots import drawer

    figure = drawer(drawing.kind)(replace(drawing.asked, narrow=width == NARROW))
    (svg,) = as_files([figure], Path("plot.svg")).values()
    return svg


def _of_log(asked: Asked, width: str, batches: tuple[Batch, ...]) -> bytes:
    from assistant.printing.batch_report import reports
    from assistant.printing.batch_report_drawn import Look, plot

    most, wide_mm = BATCHES_ON[width]
    look = Look(margin_mm=5.0, head_mm=0.0, text_pt=9.0, places=min(most, 4))
    for report in reports(batches, asked.units):
        if report.recipe == asked.words:
            return plot(_latest(report, most), wide_mm, look)
    raise Problem(404, "There is no such recipe in your log.")


def _latest(report: Report, most: int) -> Report:
    return replace(report, rows=report.rows[-most:])


@lru_cache(MOST_TOLD)
def _is_timed(question: Request) -> bool:
    answer = work_out(question).answer
    refused = any(caution.level == "stop" for caution in answer.cautions)
    return question.topic == "time" and not refused and answer.figure("cook_time") is not None


def _pictured(drawing: Drawing, settings: Settings) -> Pictured | None:
    words = _told(drawing.kind, drawing.asked)
    return Pictured(_query(drawing, settings), words, SIZES) if words else None


@lru_cache(MOST_TOLD)
def _told(kind: str, asked: Asked) -> str:
    try:
        return told(kind, asked)
    except (AssistantError, RulesError):
        return ""


def _query(drawing: Drawing, settings: Settings) -> str:
    plain = adapter(Drawing).dump_json(drawing, exclude_defaults=True)
    of = urlsafe_b64encode(zlib.compress(plain, 9)).decode()
    return urlencode({"of": of, "mark": signed(settings.secret, PURPOSE, of)})
