"""A drawing in other colours: black and white as ink and paper, every other colour so light or dark that it is seen."""

from __future__ import annotations

import re
from colorsys import hls_to_rgb, rgb_to_hls
from dataclasses import dataclass

_COLOUR = re.compile(r"#[0-9a-f]{6}\b")
# less colour than this is a grey
GREY = 0.05
# so far apart text and its ground have to be; source: WCAG 2.1, success criterion 1.4.3 (published)
CONTRAST, STEP = 4.5, 0.01
Rgb = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Palette:
    """Two colours as #rrggbb."""

    paper: str
    ink: str

    @property
    def is_dark(self) -> bool:
        """Whether the paper is darker than the ink."""
        return sum(_rgb(self.paper)) < sum(_rgb(self.ink))


def recoloured(svg: bytes, palette: Palette) -> bytes:
    """An SVG that was drawn in black on white, on other paper.

    >>> recoloured(b'<svg a="1"><path style="stroke: #000000"/></svg>', Palette("#101010", "#f0f0f0"))
    b'<svg fill="#f0f0f0" a="1"><path style="stroke: #f0f0f0"/></svg>'
    """
    text = _COLOUR.sub(lambda found: _moved(found[0], palette), svg.decode())
    # what names no colour of its own is black otherwise
    return text.replace("<svg ", f'<svg fill="{palette.ink}" ', 1).encode()


def _moved(colour: str, palette: Palette) -> str:
    hue, light, strong = rgb_to_hls(*_rgb(colour))
    paper, ink = _rgb(palette.paper), _rgb(palette.ink)
    if strong < GREY:
        red, green, blue = (i + (p - i) * light for p, i in zip(paper, ink, strict=True))
        return _hex((red, green, blue))
    step = STEP if palette.is_dark else -STEP
    while contrast(found := hls_to_rgb(hue, light, strong), paper) < CONTRAST and 0 < light < 1:
        light += step
    return _hex(found)


def contrast(one: Rgb, other: Rgb) -> float:
    """The contrast of two colours, 1 to 21. source: WCAG 2.1 (published)

    >>> contrast((0.0, 0.0, 0.0), (1.0, 1.0, 1.0))
    21.0
    """
    darker, lighter = sorted((_luminance(one), _luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(colour: Rgb) -> float:
    red, green, blue = (part / 12.92 if part <= 0.03928 else ((part + 0.055) / 1.055) ** 2.4 for part in colour)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def _rgb(colour: str) -> Rgb:
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    return red, green, blue


def _hex(rgb: Rgb) -> str:
    return "#" + "".join(f"{round(part * 255):02x}" for part in rgb)
