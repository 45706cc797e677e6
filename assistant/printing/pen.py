"""Writing and ruling on a figure in millimetres, and how wide a text is set."""

from __future__ import annotations

from functools import cache, lru_cache
from typing import TYPE_CHECKING

from assistant.printing.drawing import MM_PER_INCH

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure
    from matplotlib.ft2font import FT2Font

POINTS_PER_INCH, SUBPIXELS = 72, 64
# Widths of words come again and again, and are kept.
MOST_WIDTHS = 10_000


class Pen:
    """Writes and rules on a figure in millimetres from its lower left corner, all of it to one scale."""

    def __init__(self, figure: Figure, width_mm: float, height_mm: float, scale: float) -> None:
        self.figure, self.width, self.height, self.scale = figure, width_mm / scale, height_mm / scale, scale

    def write(
        self, x: float, y: float, text: str, size: float, bold: bool = False, ha: str = "left", wrap_mm: float = 0
    ) -> None:
        """Text whose baseline starts, or with ha "right" ends, at a place; broken into lines where it is wrapped."""
        weight = "bold" if bold else "normal"
        lines = wrapped(text, size, wrap_mm, bold) if wrap_mm else [text]
        for n, line in enumerate(lines):
            at = (y - n * size * 0.45) / self.height
            self.figure.text(x / self.width, at, line, size=size * self.scale, weight=weight, ha=ha, va="baseline",
                             parse_math=False)  # fmt: skip

    def rule(self, x: float, y: float, to_x: float, width_pt: float) -> None:
        """A level line."""
        from matplotlib.lines import Line2D

        ends = (x / self.width, to_x / self.width), (y / self.height, y / self.height)
        self.figure.add_artist(Line2D(*ends, color="black", linewidth=width_pt * self.scale))

    def axes(self, x: float, y: float, width: float, height: float) -> Axes:
        """Axes in a box."""
        return self.figure.add_axes((x / self.width, y / self.height, width / self.width, height / self.height))


@lru_cache(MOST_WIDTHS)
def width_mm(text: str, size_pt: float, bold: bool = False) -> float:
    """How wide a text is set [mm]."""
    font = _font(bold)
    font.set_size(size_pt, SUBPIXELS * POINTS_PER_INCH)
    font.set_text(text)
    pixels = font.get_width_height()[0] / SUBPIXELS / SUBPIXELS
    return float(pixels * MM_PER_INCH / POINTS_PER_INCH)


@cache
def _font(bold: bool) -> FT2Font:
    """The typeface, found once."""
    from matplotlib.font_manager import FontProperties, findfont, get_font

    return get_font(findfont(FontProperties(family="DejaVu Sans", weight="bold" if bold else "normal")))


def wrapped(text: str, size_pt: float, most_mm: float, bold: bool = False) -> list[str]:
    """A text in lines that are no wider than this [mm], broken between words, and within one that is wider alone."""
    pieces = (piece for long in text.split() for piece in _pieces(long, size_pt, most_mm, bold))
    space = width_mm("n n", size_pt, bold) - width_mm("nn", size_pt, bold)
    lines, wide = [""], 0.0
    for word in pieces:
        adds = width_mm(word, size_pt, bold)
        if lines[-1] and wide + space + adds > most_mm:
            lines.append(word)
            wide = adds
        else:
            wide += adds + (space if lines[-1] else 0.0)
            lines[-1] = f"{lines[-1]} {word}".strip()
    return lines


def _pieces(word: str, size_pt: float, most_mm: float, bold: bool) -> list[str]:
    """A word in pieces none of which is wider than this [mm]."""
    if width_mm(word, size_pt, bold) <= most_mm:
        return [word]
    pieces, wide = [""], 0.0
    for letter in word:
        adds = width_mm(letter, size_pt, bold)
        if pieces[-1] and wide + adds > most_mm:
            pieces.append("")
            wide = 0.0
        pieces[-1] += letter
        wide += adds
    return pieces
