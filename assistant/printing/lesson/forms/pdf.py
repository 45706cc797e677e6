"""A PDF to be copied and handed out: reportlab, loaded when one is written.

Type is set as large as a sheet of three pages allows; a key may be longer. The text stays text, the same sheet is the
same file.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any
from xml.sax.saxutils import escape

from assistant.errors import AssistantError
from assistant.printing.drawing import NothingDraws
from assistant.printing.lesson.air_column import HEIGHT_MM, WIDTH_MM, as_png
from assistant.printing.lesson.blocks import (
    Answers,
    Asked,
    Block,
    Care,
    Grid,
    Heading,
    Lead,
    Picture,
    Questions,
    Sheet,
    Steps,
    Sum,
    Text,
    Together,
)
from assistant.printing.lesson.forms import PAPERS_MM, Form

if TYPE_CHECKING:
    from reportlab.lib.styles import ParagraphStyle
    from reportlab.platypus import Flowable

PT_PER_MM = 72 / 25.4
MARGIN_MM, FOOT_MM, GUTTER_MM = 16.0, 8.0, 8.0
# Sizes of body type that are tried, largest first [pt], until a sheet fits.
SIZES_PT = (9.5, 9.0, 8.5, 8.0, 7.5)
MOST_PAGES = 3
LEADING, HEADING, TITLE, SMALL = 1.34, 1.35, 1.9, 0.82
FAMILY = "DejaVuSans"
FACES = {FAMILY: "DejaVuSans", f"{FAMILY}-B": "DejaVuSans-Bold", f"{FAMILY}-I": "DejaVuSans-Oblique"}
# The least that the first column of a table takes, as a share of its width.
FIRST_COLUMN = 0.3
GREY = "#555555"
# The drawing leaves room for the text; more than so much of a page's width it does not need.
PICTURE_SHARE = 0.92


class NothingPrints(AssistantError, RuntimeError):
    """The library that sets PDF pages is not installed."""

    def __str__(self) -> str:
        return 'a PDF needs reportlab, which is not installed here: pip install "simmerline[print]", or name it .html'


def write(sheet: Sheet, path: Path, paper: str) -> dict[Path, bytes]:
    """The sheet as pages of this paper.

    raises: NothingPrints where reportlab is not installed, NothingDraws where matplotlib is not
    """
    _with_fonts()
    pictures = {block: as_png(block.column) for block in sheet.blocks if isinstance(block, Picture)}
    for size_pt in SIZES_PT:
        press = _Press(sheet, paper, size_pt, pictures)
        made, count = press.run(0)
        if count <= MOST_PAGES or not sheet.to_fill_in:
            break
    made, _ = press.run(count)
    return {path: made}


def _with_fonts() -> None:
    """The typefaces, which come with matplotlib, known to reportlab."""
    try:
        from reportlab.pdfbase import pdfmetrics
        from reportlab.pdfbase.ttfonts import TTFont
    except ImportError:
        raise NothingPrints from None
    try:
        import matplotlib
    except ImportError:
        raise NothingDraws from None
    if FAMILY in pdfmetrics.getRegisteredFontNames():
        return
    folder = Path(matplotlib.get_data_path()) / "fonts" / "ttf"
    for name, face in FACES.items():
        pdfmetrics.registerFont(TTFont(name, folder / f"{face}.ttf"))
    pdfmetrics.registerFontFamily(
        FAMILY, normal=FAMILY, bold=f"{FAMILY}-B", italic=f"{FAMILY}-I", boldItalic=f"{FAMILY}-B"
    )


class _Press:
    """Sets a sheet in type of one size."""

    def __init__(self, sheet: Sheet, paper: str, size_pt: float, pictures: dict[Picture, bytes]) -> None:
        self.sheet, self.size, self.pictures = sheet, size_pt, pictures
        self.width, self.height = (side * PT_PER_MM for side in PAPERS_MM[paper])
        self.margin = MARGIN_MM * PT_PER_MM
        self.measure = self.width - 2 * self.margin

    def run(self, count: int) -> tuple[bytes, int]:
        """The file and how many pages it has. count: what is printed as the number of pages"""
        from reportlab.platypus import BaseDocTemplate, Frame, PageTemplate

        out = BytesIO()
        document = BaseDocTemplate(
            out, pagesize=(self.width, self.height), title=self.sheet.title, author="simmerline", invariant=1,
            lang=self.sheet.language,
        )  # fmt: skip
        foot = FOOT_MM * PT_PER_MM
        frame = Frame(
            self.margin, self.margin, self.measure, self.height - 2 * self.margin + foot / 2,
            leftPadding=0, rightPadding=0, topPadding=0, bottomPadding=0, id="page",
        )  # fmt: skip

        def page(canvas: Any, _: Any) -> None:
            canvas.setFont(FAMILY, self.size * SMALL)
            canvas.drawString(self.margin, foot, self.sheet.foot)
            canvas.drawRightString(self.width - self.margin, foot, f"{canvas.getPageNumber()} / {count}")

        document.addPageTemplates([PageTemplate(frames=[frame], onPage=page)])
        document.build([*self._head(), *self._body(self.sheet.blocks)])
        return out.getvalue(), document.page

    def _style(self, name: str, *, size: float = 1.0, **options: Any) -> ParagraphStyle:
        from reportlab.lib.styles import ParagraphStyle

        set_in = {"fontName": FAMILY, "fontSize": self.size * size, "leading": self.size * size * LEADING}
        return ParagraphStyle(name, **set_in, spaceShrinkage=0, **options)

    def _paragraph(self, text: str, name: str = "text", *, size: float = 1.0, **options: Any) -> Flowable:
        """A paragraph of marked-up text."""
        from reportlab.platypus import Paragraph

        spaces = {"spaceBefore": self.size * 0.25, "spaceAfter": self.size * 0.25} | options
        return Paragraph(text, self._style(name, size=size, **spaces))

    def _head(self) -> Iterator[Flowable]:
        from reportlab.platypus import Spacer, Table

        title = self._paragraph(f"<b>{escape(self.sheet.title)}</b>", size=TITLE)
        place = self._paragraph(marked_up(self.sheet.place), size=HEADING, alignment=2)
        rule = [("LINEBELOW", (0, 0), (-1, 0), 2, "black"), ("VALIGN", (0, 0), (-1, -1), "BOTTOM"), *BARE]
        yield Table([[title, place]], colWidths=[self.measure * 0.72, self.measure * 0.28], style=rule)
        yield Spacer(1, self.size * 0.8)
        if self.sheet.to_fill_in:
            blanks = [self._paragraph(escape(blank)) for blank in self.sheet.to_fill_in]
            first = self.measure * 0.62
            lines = [("LINEBELOW", (0, 0), (0, 0), 0.6, "black"), ("LINEBELOW", (2, 0), (2, 0), 0.6, "black"), *BARE]
            widths = [first, self.measure * 0.05, self.measure * 0.33]
            yield Table([[blanks[0], "", blanks[1]]], colWidths=widths, style=lines)

    def _body(self, blocks: Iterable[Block]) -> Iterator[Flowable]:
        """The blocks; what opens something stays on the page of what it opens."""
        from reportlab.platypus import KeepTogether

        opening: list[Flowable] = []
        for block in blocks:
            set_ = list(SETS[type(block)](self, block))
            if isinstance(block, Heading | Lead):
                opening += set_
                continue
            held = HELD.get(type(block), 1) if opening else 0
            if opening:
                yield KeepTogether([*opening, *set_[:held]])
            yield from set_[held:]
            opening = []
        yield from opening

    def together(self, block: Together) -> Iterator[Flowable]:
        from reportlab.platypus import KeepTogether

        # one within the other would each begin a page
        yield KeepTogether([part for inner in block.blocks for part in SETS[type(inner)](self, inner)])

    def heading(self, block: Heading) -> Iterator[Flowable]:
        from reportlab.platypus import HRFlowable

        yield self._paragraph(
            f"<b>{escape(block.text)}</b>", "heading", size=HEADING, spaceBefore=self.size * 0.9, spaceAfter=0
        )
        yield HRFlowable(width="100%", thickness=0.8, color="black", spaceBefore=1, spaceAfter=self.size * 0.3)

    def lead(self, block: Lead) -> Iterator[Flowable]:
        yield self._paragraph(f"{self._label(block.label)}<b>{escape(block.text)}</b>", spaceBefore=self.size * 0.7)

    def text(self, block: Text) -> Iterator[Flowable]:
        size = SMALL if block.small else 1.0
        text = f"<b>{spaced(block.text)}</b>" if block.strong else spaced(block.text)
        yield self._paragraph(f"{self._label(block.label)}{text}", size=size)

    def _label(self, label: str) -> str:
        return f"<i>{escape(label)}.</i> " if label else ""

    def sum(self, block: Sum) -> Iterator[Flowable]:
        from reportlab.platypus import Table

        style = [("LINEBEFORE", (0, 0), (0, 0), 1.6, GREY), *BARE, ("LEFTPADDING", (0, 0), (0, 0), self.size * 0.8)]
        indent = self.size * 1.2
        yield Table(
            [[self._paragraph(f"{self._label(block.label)}{escape(block.text)}")]],
            colWidths=[self.measure - indent],
            style=style,
            spaceBefore=self.size * 0.3,
            spaceAfter=self.size * 0.3,
            hAlign="RIGHT",
        )

    def steps(self, block: Steps) -> Iterator[Flowable]:
        for n, item in enumerate(block.items, start=1):
            yield self._item(escape(item), f"{n}.")

    def _item(self, text: str, mark: str, **options: Any) -> Flowable:
        from reportlab.platypus import Paragraph

        indent = self.size * 2.2
        spaces = {"spaceBefore": self.size * 0.12, "spaceAfter": self.size * 0.12} | options
        style = self._style("item", leftIndent=indent, bulletIndent=0, bulletFontName=FAMILY,
                            bulletFontSize=self.size, **spaces)  # fmt: skip
        return Paragraph(text, style, bulletText=mark)

    def care(self, block: Care) -> Iterator[Flowable]:
        from reportlab.platypus import Table

        inside = [self._paragraph(f"<b>{escape(block.title)}</b>"), *(self._item(escape(i), "•") for i in block.items)]
        pad = self.size * 0.7
        style = [("BOX", (0, 0), (-1, -1), 1.4, "black"), *BARE, ("LEFTPADDING", (0, 0), (-1, -1), pad),
                 ("RIGHTPADDING", (0, 0), (-1, -1), pad), ("TOPPADDING", (0, 0), (-1, -1), pad * 0.5),
                 ("BOTTOMPADDING", (0, 0), (-1, -1), pad * 0.7)]  # fmt: skip
        yield Table(
            [[inside]], colWidths=[self.measure], style=style, spaceBefore=self.size * 0.4, spaceAfter=self.size * 0.4
        )

    def grid(self, block: Grid) -> Iterator[Flowable]:
        from reportlab.platypus import Table

        columns = len(block.head) - 1
        first = max(FIRST_COLUMN, 0.48 - 0.06 * columns) * self.measure
        rest = (self.measure - first) / columns
        pad = self.size * 0.22
        below = any(self._wide(text) > rest - 2 * pad for row in block.rows for text in row[1:])
        head = [self._cell(f"<b>{marked_up(text, below=below)}</b>", n) for n, text in enumerate(block.head)]
        rows = [
            [self._cell(marked_up(text, below=below and n > 0), n) for n, text in enumerate(row)] for row in block.rows
        ]
        style = [*BARE, ("LINEBELOW", (0, 0), (-1, 0), 1.2, "black"), ("LINEBELOW", (0, 1), (-1, -1), 0.3, GREY),
                 ("VALIGN", (0, 0), (-1, -1), "MIDDLE"), ("TOPPADDING", (0, 0), (-1, -1), pad),
                 ("BOTTOMPADDING", (0, 0), (-1, -1), pad), ("LEFTPADDING", (1, 0), (-1, -1), pad * 2)]  # fmt: skip
        yield Table([head, *rows], colWidths=[first, *[rest] * columns], style=style, hAlign="LEFT", repeatRows=1)

    def _wide(self, text: str) -> float:
        """How wide a cell is set in one line [pt]."""
        from reportlab.pdfbase.pdfmetrics import stringWidth

        return float(stringWidth(text, FAMILY, self.size))

    def _cell(self, text: str, column: int) -> Flowable:
        return self._paragraph(text, spaceBefore=0, spaceAfter=0, alignment=2 if column else 0)

    def picture(self, block: Picture) -> Iterator[Flowable]:
        from reportlab.platypus import Image

        width = self.measure * PICTURE_SHARE
        yield Image(BytesIO(self.pictures[block]), width=width, height=width * HEIGHT_MM / WIDTH_MM)
        yield self._paragraph(escape(block.caption), size=0.94)

    def questions(self, block: Questions) -> Iterator[Flowable]:
        """Two beside each other, a page ends between rows."""
        yield self._paragraph(escape(block.intro))
        asked = [list(self._asked(n, asked)) for n, asked in enumerate(block.items, start=1)]
        rows = [[asked[n], asked[n + 1] if n + 1 < len(asked) else ""] for n in range(0, len(asked), 2)]
        yield self._pairs(rows[:1])
        if rows[1:]:
            yield self._pairs(rows[1:])

    def _pairs(self, rows: list[list[Any]]) -> Flowable:
        from reportlab.platypus import Table

        gutter = GUTTER_MM * PT_PER_MM / 2
        style = [*BARE, ("VALIGN", (0, 0), (-1, -1), "TOP"), ("RIGHTPADDING", (0, 0), (0, -1), gutter),
                 ("BOTTOMPADDING", (0, 0), (-1, -1), self.size), ("LEFTPADDING", (1, 0), (1, -1), gutter)]  # fmt: skip
        return Table(rows, colWidths=[self.measure / 2] * 2, style=style)

    def _asked(self, number: int, asked: Asked) -> Iterator[Flowable]:
        yield self._item(escape(asked.text), f"{number}.", spaceBefore=self.size * 0.6)
        indent = self.size * 2.2
        for option in asked.options:
            yield self._paragraph(escape(option), leftIndent=indent, spaceBefore=0, spaceAfter=0)
        yield self._paragraph(spaced(asked.blank), leftIndent=indent, spaceBefore=self.size * 0.5)

    def answers(self, block: Answers) -> Iterator[Flowable]:
        for n, answered in enumerate(block.items, start=1):
            yield self._item(f"<b>{escape(answered.shown)}</b>", f"{n}.", spaceBefore=self.size * 0.6, keepWithNext=1)
            rest = " ".join(escape(text) for text in (answered.counts, answered.why) if text)
            yield self._paragraph(rest, leftIndent=self.size * 2.2, spaceBefore=0)


def spaced(text: str) -> str:
    """Marked-up text in which blanks to write on keep their distance.

    >>> spaced("Yes __   No __")
    'Yes\\xa0__ \\xa0\\xa0No\\xa0__'
    """
    return escape(text).replace("   ", " \xa0\xa0").replace("  ", " \xa0").replace(" _", "\xa0_")


def marked_up(text: str, *, below: bool = False) -> str:
    """A cell that is broken between its figures only, not between a figure and its unit.

    below: whether what stands in brackets stands on a line of its own

    >>> marked_up("199 °F (93 °C)"), marked_up("199 °F (93 °C)", below=True)
    ('199\xa0°F (93\xa0°C)', '199\xa0°F<br/>(93\xa0°C)')
    """
    value, bracket, aside = text.partition(" (")
    if not any(character.isdigit() for character in value):
        return escape(text)
    between = "<br/>(" if below and bracket else bracket
    return escape(value).replace(" ", "\xa0") + between + escape(aside).replace(" ", "\xa0")


# a table without the room that reportlab leaves in each cell
BARE = [
    ("LEFTPADDING", (0, 0), (-1, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), 0),
    ("TOPPADDING", (0, 0), (-1, -1), 0),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 2),
]
# how many pieces of a block stay with the heading over it, where it is more than the first
HELD = {Questions: 2, Answers: 2}
SETS: dict[type, Callable[[_Press, Any], Iterator[Flowable]]] = {
    Heading: _Press.heading,
    Lead: _Press.lead,
    Text: _Press.text,
    Sum: _Press.sum,
    Steps: _Press.steps,
    Care: _Press.care,
    Grid: _Press.grid,
    Picture: _Press.picture,
    Questions: _Press.questions,
    Answers: _Press.answers,
    Together: _Press.together,
}
FORM = Form(write)
