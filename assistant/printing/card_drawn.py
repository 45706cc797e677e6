"""The card as a page: large figures in two columns, the curve of the boil with the kitchen on it; black on white."""

from __future__ import annotations

from typing import TYPE_CHECKING

from assistant.printing.card import Card, Row, Section
from assistant.printing.drawing import new_figure
from assistant.printing.pen import Pen, width_mm
from assistant.printing.sheet import hot, up
from assistant.replies.quantities import Say
from assistant.replies.sentences import worded
from rules.physics.water import boiling_point_c
from rules.said import sentences

if TYPE_CHECKING:
    from matplotlib.figure import Figure

PAPERS_MM = {"letter": (215.9, 279.4), "a4": (210.0, 297.0), "tabloid": (279.4, 431.8), "a3": (297.0, 420.0)}
# The layout is drawn for this page; on another everything grows with it.
DRAWN_FOR_MM = (210.0, 285.0)
MARGIN_MM, GUTTER_MM, HEAD_MM, FOOT_MM = 12.0, 7.0, 34.0, 12.0
ROW_MM, TITLE_MM, GAP_MM = 7.0, 9.0, 3.8
# Sizes of type [pt]; a capital of 15 pt is 3.8 mm high, which good eyes read at two metres and more.
NAME_PT, PLACE_PT, BOIL_PT, TITLE_PT, LABEL_PT, VALUE_PT, ASIDE_PT, FOOT_PT = 24, 15, 24, 13, 11, 15, 8.5, 6.5
LEFT = ("water", "times", "pressure")
CURVE_TO_M = 4500.0
say = sentences("printing/card")


def page(card: Card, paper: str = "letter") -> Figure:
    """The card on a page of this paper, one of PAPERS_MM."""
    width, height = PAPERS_MM[paper]
    scale = min(width / DRAWN_FOR_MM[0], height / DRAWN_FOR_MM[1])
    figure = new_figure(width, height)
    pen = Pen(figure, width, height, scale)
    _head(pen, card)
    body = height / scale - MARGIN_MM - HEAD_MM
    left = tuple(section for section in card.sections if section.id in LEFT)
    right = tuple(section for section in card.sections if section.id not in LEFT)
    column = (width / scale - 2 * MARGIN_MM - GUTTER_MM) / 2
    under = _column(pen, left, MARGIN_MM, body, column)
    _curve(pen, card, MARGIN_MM, under, column)
    _column(pen, right, MARGIN_MM + column + GUTTER_MM, body, column)
    pen.write(MARGIN_MM, MARGIN_MM - 4, card.foot, FOOT_PT, wrap_mm=width / scale - 2 * MARGIN_MM)
    return figure


def _head(pen: Pen, card: Card) -> None:
    top, right = pen.height - MARGIN_MM, pen.width - MARGIN_MM
    pen.write(MARGIN_MM, top - 9, card.name, NAME_PT, bold=True)
    if card.place != card.name:
        pen.write(right, top - 9, card.place, PLACE_PT, ha="right")
    pen.rule(MARGIN_MM, top - 13, right, 3)
    pen.write(MARGIN_MM, top - 24, card.boils, BOIL_PT, bold=True)


def _column(pen: Pen, sections: tuple[Section, ...], x: float, y: float, width: float) -> float:
    """Sections below each other; the height at which the column ends."""
    for section in sections:
        y -= TITLE_MM * 0.6
        pen.write(x, y, section.title, TITLE_PT, bold=True)
        pen.rule(x, y - 1.8, x + width, 1.4)
        y -= TITLE_MM * 0.4
        for row in section.rows:
            y -= ROW_MM
            _row(pen, row, x, y, width)
        y -= GAP_MM
    return y


def _row(pen: Pen, row: Row, x: float, y: float, width: float) -> None:
    base = y + ROW_MM * 0.3
    pen.write(x, base, row.label, LABEL_PT)
    right = x + width
    if row.aside:
        pen.write(right, base, row.aside, ASIDE_PT, ha="right")
        right -= width_mm(row.aside, ASIDE_PT) + 2
    pen.write(right, base, row.value, VALUE_PT, bold=True, ha="right")
    pen.rule(x, y, x + width, 0.3)


def room_mm(row: Row, width: float) -> float:
    """What is left between a row's label and its figure [mm]; below nothing they would run into each other."""
    aside = width_mm(row.aside, ASIDE_PT) + 2 if row.aside else 0.0
    return width - aside - width_mm(row.value, VALUE_PT, bold=True) - width_mm(row.label, LABEL_PT)


def _curve(pen: Pen, card: Card, x: float, under: float, width: float) -> None:
    """The curve of the boil against elevation in what is left of the column, the kitchen marked on it."""
    from matplotlib.ticker import MultipleLocator

    bottom = MARGIN_MM + FOOT_MM
    pen.write(x, under - TITLE_MM * 0.6, worded(say("curve"), card.units), TITLE_PT, bold=True)
    axes = pen.axes(x + 9, bottom, width - 10, max(under - TITLE_MM - bottom, 20.0))
    heights = [CURVE_TO_M * n / 60 for n in range(61)]
    us = card.units == "us"
    boils = [hot(boiling_point_c(h), card.units) for h in heights]
    axes.plot([up(h, card.units) for h in heights], boils, color="black", linewidth=2 * pen.scale)
    here = (up(card.elevation_m, card.units), hot(card.boils_c, card.units))
    axes.plot(*here, marker="o", color="black", markersize=9 * pen.scale)
    axes.annotate(Say(card.units).temp(card.boils_c).partition(" (")[0], here, textcoords="offset points",
                  xytext=(8 * pen.scale, 6 * pen.scale), size=LABEL_PT * pen.scale, weight="bold")  # fmt: skip
    axes.tick_params(labelsize=8 * pen.scale)
    axes.xaxis.set_major_locator(MultipleLocator(4000 if us else 1000))
    axes.xaxis.set_major_formatter(lambda value, _: f"{value:,.0f}")
    axes.set_xlabel("ft" if us else "m", size=8 * pen.scale)
    axes.set_ylabel("°F" if us else "°C", size=8 * pen.scale, rotation=0, labelpad=8)
    axes.grid(linewidth=0.3, color="0.6")
    axes.spines[["top", "right"]].set_visible(False)
