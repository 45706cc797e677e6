"""Component: mentions of elevations, stated, by place name or as a bare number, and the part each one plays."""

from __future__ import annotations

from collections.abc import Sequence

from spacy.language import Language
from spacy.tokens import Doc

from assistant.reading import elevation_figures, elevation_names, elevation_parts
from assistant.reading.groups import keep, shown
from assistant.reading.spans import Elevation, Found, Measure, Number
from assistant.reading.tokens import norms

shown("elevations", "elevation")


@Language.component(
    "kitchen_elevation",
    requires=["doc._.numbers", "doc._.measures", "doc._.clock", "doc._.found"],
    assigns=["doc.spans", "doc._.elevations"],
)
def kitchen_elevation(doc: Doc) -> Doc:
    """Hear every elevation of the text."""
    words = norms(doc)
    keep(doc, "elevations", hear(words, doc._.numbers, (*doc._.measures, *doc._.clock), doc._.found))
    return doc


def hear(
    words: Sequence[str], numbers: Sequence[Number], measures: Sequence[Measure], found: Sequence[Found]
) -> tuple[Elevation, ...]:
    """The elevations among lower-case words, in order, each with its part."""
    places = elevation_names.named(words, found)
    figures = [*elevation_figures.stated(words, measures), *elevation_names.sea_level(words)]
    figures += elevation_figures.mile_high(words)
    figures = elevation_figures.without_bands(words, numbers, figures)
    figures += elevation_figures.bare(words, numbers, measures, [*places, *figures])
    figures += elevation_figures.put_right(words, numbers, measures, figures)
    land = elevation_figures.land_unit(words, places)
    mentions = elevation_names.at_one(words, elevation_figures.alike(figures, measures, land), places)
    return elevation_parts.told(words, mentions, measures)
