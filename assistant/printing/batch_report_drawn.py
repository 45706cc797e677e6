"""A report of batches as pages: the ratings as a plot, under it the table; black on white."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from io import BytesIO
from typing import TYPE_CHECKING

from assistant.printing.batch_report import Report, Row, cells, heads, title
from assistant.printing.drawing import NO_DATE, new_figure
from assistant.printing.pen import Pen, wrapped
from assistant.replies.sentences import worded
from rules.said import sentences

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

WIDTH_MM, HEIGHT_MM = 279.4, 215.9
MARGIN_MM, HEAD_MM, PLOT_MM, AXIS_MM = 14.0, 14.0, 64.0, 19.0
TITLE_PT, HEAD_PT, CELL_PT, SMALL_PT = 18, 9, 8.5, 7.5
LINE_MM, PAD_MM, GAP_MM, LEAST_MM = 3.9, 1.8, 3.0, 20.0
# How wide the columns are, in the order of COLUMNS [mm].
COLUMNS_MM = (11.0, 22.0, 38.0, 54.0, 50.0, 17.0, 59.4)
# So many batches stand on one plot, that what was changed in each finds room over it, in so many lines.
MOST_ON_A_PLOT, CHANGED_LINES = 8, 3
TITLE_LINES = 2
LOWEST, HIGHEST, UNRATED, TOP = 1, 5, 0.35, 7.4
MARKS = {"helped": "▲", "hurt": "▼", "same": "", None: ""}
say = sentences("printing/batches")


@dataclass(frozen=True, slots=True)
class Look:
    """How a plot is set: its margin and what is over it [mm], its letters [pt], for how many batches it has room."""

    margin_mm: float = MARGIN_MM
    head_mm: float = HEAD_MM
    text_pt: float = SMALL_PT
    places: int = 4


IN_PRINT = Look()


def pages(reports: Iterable[Report]) -> list[Figure]:
    """The pages of all reports, each recipe on pages of its own."""
    return [_page(report, part) for report in reports for part in parts(report)]


def plot(report: Report, width_mm: float = WIDTH_MM, look: Look = IN_PRINT) -> bytes:
    """The plot of a report alone, as an SVG of that width [mm]."""
    height_mm = PLOT_MM + AXIS_MM + look.head_mm
    figure = new_figure(width_mm, height_mm)
    pen = Pen(figure, width_mm, height_mm, 1.0)
    _plot(pen, report.rows, AXIS_MM + 2, look)
    out = BytesIO()
    figure.savefig(out, format="svg", metadata=NO_DATE["svg"])
    return out.getvalue()


def parts(report: Report) -> Iterator[tuple[Row, ...]]:
    """The rows of a report, as many as a page holds at a time; a batch whose note is longer than a page has its own."""
    room = HEIGHT_MM - 2 * MARGIN_MM - HEAD_MM * TITLE_LINES - PLOT_MM - AXIS_MM - LINE_MM * 3
    held: list[Row] = []
    left = room
    for row in report.rows:
        needs = _height(row, report)
        if held and (needs > left or len(held) == MOST_ON_A_PLOT):
            yield tuple(held)
            held, left = [], room
        held.append(row)
        left -= needs
    yield tuple(held)


def _height(row: Row, report: Report) -> float:
    return max(map(len, _lines(row, report))) * LINE_MM + PAD_MM


def _lines(row: Row, report: Report) -> list[list[str]]:
    """The cells of a row in lines; what no page would hold is cut, and shows it."""
    most = int((HEIGHT_MM - 2 * MARGIN_MM - HEAD_MM * TITLE_LINES - PLOT_MM - AXIS_MM) / LINE_MM) - 4
    found = []
    for text, width in zip(cells(row, report.units), COLUMNS_MM, strict=True):
        lines = wrapped(text, CELL_PT, width - GAP_MM)
        found.append(lines if len(lines) <= most else [*lines[: most - 1], f"{lines[most - 1][:-1]}…"])
    return found


def _page(report: Report, rows: tuple[Row, ...]) -> Figure:
    figure = new_figure(WIDTH_MM, HEIGHT_MM)
    pen = Pen(figure, WIDTH_MM, HEIGHT_MM, 1.0)
    y = HEIGHT_MM - MARGIN_MM - 6
    lines = wrapped(title(report), TITLE_PT, WIDTH_MM - 2 * MARGIN_MM, bold=True)
    for line in lines[:TITLE_LINES]:
        pen.write(MARGIN_MM, y, line, TITLE_PT, bold=True)
        y -= 8
    pen.rule(MARGIN_MM, y + 4.5, WIDTH_MM - MARGIN_MM, 2)
    y -= PLOT_MM
    _plot(pen, rows, y)
    y -= AXIS_MM
    _row(pen, [[head] for head in heads(report.units)], y, HEAD_PT, bold=True)
    pen.rule(MARGIN_MM, y - 1.6, WIDTH_MM - MARGIN_MM, 1.2)
    y -= LINE_MM + PAD_MM
    for row in rows:
        _row(pen, _lines(row, report), y, CELL_PT)
        y -= _height(row, report)
        pen.rule(MARGIN_MM, y + LINE_MM - 1.0, WIDTH_MM - MARGIN_MM, 0.3)
    return figure


def _row(pen: Pen, lines: list[list[str]], y: float, size: float, bold: bool = False) -> None:
    x = MARGIN_MM
    for column, width in zip(lines, COLUMNS_MM, strict=True):
        for n, line in enumerate(column):
            pen.write(x, y - n * LINE_MM, line, size, bold)
        x += width


def _plot(pen: Pen, rows: tuple[Row, ...], y: float, look: Look = IN_PRINT) -> None:
    """The ratings one after the other; a filled mark where nothing went wrong, an open one where something did."""
    width = pen.width - 2 * look.margin_mm - 16
    axes = pen.axes(look.margin_mm + 12, y, width, PLOT_MM - 6)
    places = max(len(rows), look.places)
    rated = [(at, row.batch.rating) for at, row in enumerate(rows) if row.batch.rating is not None]
    axes.plot([at for at, _ in rated], [rating for _, rating in rated], color="0.5", linewidth=1, zorder=1)
    for at, row in enumerate(rows):
        _mark(axes, at, row, look.text_pt)
        _changed(axes, at, row, width / places - GAP_MM, look.text_pt)
    axes.set_xlim(-0.5, places - 0.5)
    axes.set_ylim(0, TOP)
    axes.set_yticks(range(LOWEST, HIGHEST + 1))
    axes.set_xticks(range(len(rows)), [f"{row.batch.id}\n{row.batch.made_on:%m-%d}" for row in rows])
    axes.tick_params(labelsize=look.text_pt)
    axes.set_ylabel(worded(say("rating-axis"), "us"), size=look.text_pt)
    axes.grid(axis="y", linewidth=0.3, color="0.7")
    axes.spines[["top", "right"]].set_visible(False)
    pen.write(look.margin_mm + 12, y - 3 - 1.2 * look.text_pt, worded(say("legend"), "us"), look.text_pt, wrap_mm=width)


def _changed(axes: Axes, at: int, row: Row, width: float, text_pt: float) -> None:
    """What was changed, over the mark of its batch, where there is room for words."""
    if width < LEAST_MM:
        return
    lines = wrapped(row.changed, text_pt, width)
    shown = lines if len(lines) <= CHANGED_LINES else [*lines[: CHANGED_LINES - 1], f"{lines[CHANGED_LINES - 1]} …"]
    axes.text(at, TOP, "\n".join(shown), size=text_pt, ha="center", va="top", parse_math=False)


def _mark(axes: Axes, at: int, row: Row, text_pt: float) -> None:
    rating = row.batch.rating
    high = UNRATED if rating is None else rating
    face = "white" if row.wrong else "black"
    axes.plot(
        at, high, marker="x" if rating is None else "o", color="black", markerfacecolor=face, markersize=8, zorder=2
    )
    if MARKS[row.outcome]:
        axes.annotate(MARKS[row.outcome], (at, high), xytext=(0, 8), textcoords="offset points", ha="center",
                      size=text_pt + 1)  # fmt: skip
