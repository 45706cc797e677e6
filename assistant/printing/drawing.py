"""Figures and their files: matplotlib, loaded when something is drawn."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any

from assistant.errors import AssistantError

if TYPE_CHECKING:
    from matplotlib.figure import Figure

FORMATS = ("pdf", "svg", "png")
DOTS_PER_INCH = 200
MM_PER_INCH = 25.4
# text stays text in a PDF and an SVG, so that it can be searched and read aloud; the same card is the same file
SETTINGS: dict[str, Any] = {
    "pdf.fonttype": 42,
    "svg.fonttype": "none",
    "svg.hashsalt": "simmerline",
    "font.family": "DejaVu Sans",
}
NO_DATE = {"pdf": {"CreationDate": None}, "svg": {"Date": None}, "png": {}}


class NothingDraws(AssistantError, RuntimeError):
    """The library that draws is not installed."""

    def __str__(self) -> str:
        return 'drawing needs matplotlib, which is not installed here: pip install "simmerline[print]"'


class BadPicture(AssistantError, ValueError):
    """A file name whose ending is no format. path: the name; endings: those that would do, without their dots"""

    def __init__(self, path: Path, endings: tuple[str, ...] = FORMATS) -> None:
        super().__init__(path, endings)
        self.path, self.endings = path, endings

    def __str__(self) -> str:
        *first, last = (f".{ending}" for ending in self.endings)
        return f"{self.path} has no ending I can draw; name it {', '.join(first)} or {last}"


def format_of(path: Path) -> str:
    """The format of a file by its ending.

    raises: BadPicture for any other ending

    >>> format_of(Path("wall.PDF"))
    'pdf'
    """
    ending = path.suffix.lower().lstrip(".")
    if ending not in FORMATS:
        raise BadPicture(path)
    return ending


def new_figure(width_mm: float, height_mm: float) -> Figure:
    """A blank figure of this size [mm].

    raises: NothingDraws where matplotlib is not installed
    """
    try:
        import matplotlib
        from matplotlib.figure import Figure
    except ImportError:
        raise NothingDraws from None
    matplotlib.rcParams.update(SETTINGS)  # type: ignore[arg-type]
    return Figure(figsize=(width_mm / MM_PER_INCH, height_mm / MM_PER_INCH))


def as_files(pages: list[Figure], path: Path) -> dict[Path, bytes]:
    """Figures as the content of files: pages of one PDF, or one numbered picture each.

    raises: BadPicture for an ending that is no format
    """
    form = format_of(path)
    if form == "pdf":
        return {path: _pdf(pages)}
    names = [path] if len(pages) == 1 else [path.with_stem(f"{path.stem}-{n}") for n in range(1, len(pages) + 1)]
    return {name: _picture(page, form) for page, name in zip(pages, names, strict=True)}


def _picture(page: Figure, form: str) -> bytes:
    options: dict[str, Any] = {"dpi": DOTS_PER_INCH} if form == "png" else {}
    out = BytesIO()
    page.savefig(out, format=form, metadata=NO_DATE[form], **options)
    return out.getvalue()


def _pdf(pages: list[Figure]) -> bytes:
    from matplotlib.backends.backend_pdf import PdfPages

    out = BytesIO()
    with PdfPages(out, metadata=NO_DATE["pdf"]) as book:
        for page in pages:
            book.savefig(page)
    return out.getvalue()
