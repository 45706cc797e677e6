"""Lessons as they are handed out: PDF read back, HTML and Markdown taken apart, the command and what it will not do."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from html.parser import HTMLParser
from pathlib import Path

import pytest
from pypdf import PdfReader
from selectolax.lexbor import LexborHTMLParser as Page
from typer.testing import CliRunner, Result

from assistant.cli import create_app
from assistant.printing.lesson.blocks import Answers, Questions, Sheet, Text
from assistant.printing.lesson.drilled import MOST_QUESTIONS
from assistant.printing.lesson.forms import PAPERS_MM, BadForm, endings, form_of
from assistant.printing.lesson.sheets import Lesson, handout, key
from assistant.printing.lesson.themes import catalogue

LODGE_M = 2133.6
MANY_M = (4300.0, 1219.2, 1615.4, LODGE_M, 3000.0)
THEMES = tuple(catalogue())
ROOT = Path(__file__).parents[3]


def lesson(name: str, elevations_m: tuple[float, ...] = (LODGE_M,), count: int = 10, units: str = "us") -> Lesson:
    return Lesson(theme=name, elevations_m=elevations_m, class_size=20, count=count, seed=11, units=units)


def made(sheet: Sheet, ending: str, paper: str = "letter") -> dict[Path, bytes]:
    path = Path(f"lesson.{ending}")
    return form_of(path).write(sheet, path, paper)


def read(content: bytes) -> PdfReader:
    from io import BytesIO

    return PdfReader(BytesIO(content))


def plain(text: str) -> str:
    return re.sub(r"\s+", "", text)


def text_of(content: bytes) -> str:
    return plain("".join(page.extract_text() for page in read(content).pages))


def asked(sheet: Sheet) -> Questions:
    return next(block for block in sheet.blocks if isinstance(block, Questions))


def answered(sheet: Sheet) -> Answers:
    return next(block for block in sheet.blocks if isinstance(block, Answers))


@pytest.mark.parametrize("name", THEMES)
def test_the_fullest_sheet_fits_three_pages_and_stays_inside_its_margins(name: str) -> None:
    from reportlab.pdfbase.pdfmetrics import stringWidth

    from assistant.printing.lesson.forms.pdf import MARGIN_MM, PT_PER_MM

    fullest = lesson(name, MANY_M, MOST_QUESTIONS, "metric")
    pages = read(made(handout(fullest), "pdf", "a4")[Path("lesson.pdf")]).pages
    assert 1 <= len(pages) <= 3
    width, height = (side * PT_PER_MM for side in PAPERS_MM["a4"])
    margin = MARGIN_MM * PT_PER_MM
    for page in pages:
        assert (page.mediabox.width, page.mediabox.height) == (
            pytest.approx(width, abs=0.1),
            pytest.approx(height, abs=0.1),
        )

        def inside(text: str, cm: list[float], tm: list[float], font: dict | None, size: float) -> None:
            shown = text.strip()
            if not shown.strip() or font is None:
                return
            x, y = tm[4] * cm[0] + cm[4], tm[5] * cm[3] + cm[5]
            face = "DejaVuSans-B" if "Bold" in str(font["/BaseFont"]) else "DejaVuSans"
            right = x + max(stringWidth(line, face, size) for line in shown.split("\n"))
            assert x >= margin - 1, shown
            assert right <= width - margin + 2, (shown, right)
            assert 0 < y < height, shown

        page.extract_text(visitor_text=inside)


@pytest.mark.parametrize("name", ["baking", "pressure", "beans-and-grains"])
def test_the_pdf_holds_the_sheet_and_the_key_the_answers(name: str) -> None:
    sheet, solved = handout(lesson(name, MANY_M)), key(lesson(name, MANY_M))
    given, kept = text_of(made(sheet, "pdf")[Path("lesson.pdf")]), text_of(made(solved, "pdf")[Path("lesson.pdf")])
    assert plain(sheet.title) in given
    assert plain("14,110 ft (4,300 m)") in given
    assert all(plain(question.text) in given for question in asked(sheet).items)
    for answer in answered(solved).items:
        assert plain(answer.shown) in kept
        assert plain(answer.why) in kept
        assert plain(answer.why) not in given


def test_a_short_lesson_is_set_in_larger_type() -> None:
    def body(count: int) -> float:
        sizes: dict[float, int] = {}

        def weigh(text: str, cm: list[float], tm: list[float], font: dict | None, size: float) -> None:
            sizes[round(size, 1)] = sizes.get(round(size, 1), 0) + len(text)

        for page in read(made(handout(lesson("pressure", MANY_M, count)), "pdf")[Path("lesson.pdf")]).pages:
            page.extract_text(visitor_text=weigh)
        return max(sizes, key=lambda size: sizes[size])

    assert body(4) > body(MOST_QUESTIONS) >= 7.5


@pytest.mark.parametrize("ending", ["pdf", "html", "md"])
def test_the_same_seed_is_the_same_file(ending: str) -> None:
    assert made(handout(lesson("sugar")), ending) == made(handout(lesson("sugar")), ending)
    assert made(key(lesson("sugar")), ending) == made(key(lesson("sugar")), ending)


class _Balance(HTMLParser):
    """Whether every element that is opened is closed in its turn."""

    EMPTY = frozenset({"meta", "link", "br", "hr", "img", "path", "use"})

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []

    def handle_starttag(self, tag: str, attrs: list) -> None:
        if tag not in self.EMPTY:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list) -> None:
        return

    def handle_endtag(self, tag: str) -> None:
        if tag not in self.EMPTY:
            assert self.open.pop() == tag


@pytest.mark.parametrize("name", THEMES)
def test_the_page_is_whole_and_needs_nothing_else(name: str) -> None:
    sheet = handout(lesson(name))
    ((_, content),) = made(sheet, "html").items()
    text = content.decode()
    balance = _Balance()
    balance.feed(text)
    assert balance.open == []
    page = Page(text)
    assert [h1.text() for h1 in page.css("h1")] == [sheet.title] == [page.css_first("title").text()]
    assert len(page.css("figure svg")) == 1
    assert "boils" in page.css_first("figure").attributes["aria-label"]
    assert len(page.css("ol.questions > li")) == len(asked(sheet).items)
    assert not page.css("ol.answers, script, link, img, iframe")
    assert not re.search(r'(?:src|href)="(?!#)', re.sub(r"<metadata>.*?</metadata>", "", text, flags=re.S))
    assert len(page.css("section.together ol")) == 1
    rows = page.css("table tr")
    assert len({len(row.css("th, td")) for row in rows}) == 1
    assert "@page" in text
    assert page.css_first("html").attributes["lang"] == "en"


def test_the_key_as_a_page_holds_every_answer() -> None:
    solved = key(lesson("baking"))
    ((_, content),) = made(solved, "html").items()
    page = Page(content.decode())
    assert [li.css_first("strong").text() for li in page.css("ol.answers > li")] == [
        answer.shown for answer in answered(solved).items
    ]


@pytest.mark.parametrize("ending", ["pdf", "html", "md"])
def test_what_looks_like_a_mark_is_text(ending: str) -> None:
    sheet = Sheet("Salt & <b>pepper</b>", "here", (), (Text("a < b & *c* `d` [e](f)"),), "foot")
    ((_, content),) = made(sheet, ending).items()
    if ending == "pdf":
        assert plain("a < b & *c* `d` [e](f)") in text_of(content)
    elif ending == "html":
        assert Page(content.decode()).css_first("main p").text() == "a < b & *c* `d` [e](f)"
    else:
        from markdown_it import MarkdownIt

        shown = Page(MarkdownIt().render(content.decode()))
        assert "a < b & *c* `d` [e](f)" in shown.body.text()
        assert not shown.css("em, code, a, b")


def test_markdown_has_its_drawing_beside_it() -> None:
    from markdown_it import MarkdownIt

    sheet = handout(lesson("braising", MANY_M))
    text, picture = made(sheet, "md").values()
    page = Page(MarkdownIt().enable("table").render(text.decode()))
    assert page.css_first("img").attributes["src"] == "lesson-air.svg"
    assert picture.startswith(b"<?xml")
    assert b"</svg>" in picture
    assert len(page.css("table")) == 1
    assert len(page.css("thead th")) == len(MANY_M) + 2
    assert "____" in text.decode()
    (questions,) = (ol for ol in page.css("body > ol") if "Answer" in ol.text())
    assert len([li for li in questions.iter() if li.tag == "li"]) == len(asked(sheet).items) == 10


def test_another_ending_is_refused() -> None:
    assert endings() == ("html", "md", "pdf")
    with pytest.raises(BadForm, match=r"\.pdf, \.html or \.md"):
        form_of(Path("lesson.docx"))


def run(*words: str) -> Result:
    return CliRunner().invoke(create_app(["lesson"]), ["lesson", *words])


def test_the_command_writes_the_sheet_and_its_key_apart(tmp_path: Path) -> None:
    out = tmp_path / "cakes.md"
    words = ("baking", "--at", "7000ft", "--at", "5300ft", "--class", "9", "--seed", "4", "--out", str(out))
    done = run(*words)
    assert done.exit_code == 0, done.output
    assert {path.name for path in tmp_path.iterdir()} == {"cakes.md", "cakes-air.svg", "cakes-key.md"}
    solved = (tmp_path / "cakes-key.md").read_text(encoding="utf-8")
    assert "--at 7000ft --at 5300ft --class 9 --seed 4 --units us" in solved
    first = out.read_bytes()
    assert run(*words).exit_code == 1
    assert run(*words, "--force").exit_code == 0
    assert out.read_bytes() == first


@pytest.mark.parametrize("linked", ["lesson.md", "lesson-key.md", "lesson-air.svg"])
def test_nothing_is_written_where_one_of_the_files_is_a_link(tmp_path: Path, linked: str) -> None:
    (tmp_path / linked).symlink_to(tmp_path / "elsewhere")
    done = run("frying", "--at", "7000ft", "--out", str(tmp_path / "lesson.md"), "--force")
    assert done.exit_code == 1
    assert "link" in done.stderr
    assert [path.name for path in tmp_path.iterdir()] == [linked]


@pytest.mark.parametrize(
    ("words", "code", "says"),
    [
        (("roasting", "--at", "7000ft"), 2, "say one of boiling, braising"),
        (("boiling",), 3, "where is the class"),
        (("boiling", "--at", "nowhere at all"), 2, "--at"),
        (("boiling", "--at", "7000ft", "--paper", "b5"), 2, "letter, a4"),
        (("boiling", *["--at", "7000ft"] * 6), 2, "5 at most"),
        (("boiling", "--at", "7000ft", "--class", "0"), 2, "--class"),
        (("boiling", "--at", "7000ft", "--questions", "21"), 2, "--questions"),
        (("boiling", "--at", "7000ft", "--out", "lesson.docx"), 1, ".pdf, .html or .md"),
    ],
)
def test_misuse_is_told_kindly(words: tuple[str, ...], code: int, says: str) -> None:
    done = run(*words)
    assert done.exit_code == code, done.output
    assert says in done.stderr


def test_without_the_library_a_pdf_is_refused_in_a_line(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "reportlab.pdfbase", None)
    done = run("boiling", "--at", "7000ft", "--out", str(tmp_path / "lesson.pdf"))
    assert done.exit_code == 1
    assert 'pip install "simmerline[print]"' in done.stderr
    assert not list(tmp_path.iterdir())


def test_a_page_needs_no_reportlab(tmp_path: Path) -> None:
    code = (
        "import sys; sys.modules['reportlab'] = None; sys.argv = ['simmerline', 'lesson', 'boiling', '--at', '7000ft', "
        f"'--out', {str(tmp_path / 'lesson.html')!r}]; from assistant.cli import main; main()"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, env={**os.environ}, check=False)
    assert done.returncode == 0, done.stderr
    assert (tmp_path / "lesson.html").exists()
