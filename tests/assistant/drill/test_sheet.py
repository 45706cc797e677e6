"""The sheet and its key: they agree with each other and with the set."""

import re

import pytest

from assistant.drill import sheet
from assistant.drill.wording import in_words
from rules.drill import make_set

QUESTIONS = tuple(map(in_words, make_set(7, count=12)))


@pytest.mark.parametrize("markdown", [False, True])
def test_the_sheet_asks_every_question_and_tells_no_answer(markdown):
    text = sheet.sheet(QUESTIONS, 7, markdown=markdown)
    for number, question in enumerate(QUESTIONS, start=1):
        assert f"\n{number}. {question.text}\n" in text
        assert question.why not in text
        assert all(
            f"{letter}) {option}" in text for letter, option in zip(question.letters, question.options, strict=True)
        )
        assert question.form != "figure" or question.shown not in text
    assert "set 7" in text.splitlines()[0]


@pytest.mark.parametrize("markdown", [False, True])
def test_the_key_has_the_answers_by_the_numbers_of_the_sheet(markdown):
    text = sheet.key(QUESTIONS, 7, markdown=markdown)
    for number, question in enumerate(QUESTIONS, start=1):
        shown = f"**{question.shown}**" if markdown else question.shown
        assert f"\n{number}. {shown}\n" in text
        assert question.why in text
        assert not question.tolerance or f"What counts: {question.tolerance}." in text
    assert len(re.findall(r"Source: ", text)) == len(QUESTIONS)


def test_the_key_stands_on_a_page_of_its_own():
    assert sheet.both(QUESTIONS, 7).split("\f") == [sheet.sheet(QUESTIONS, 7), sheet.key(QUESTIONS, 7)]
    pages = sheet.both(QUESTIONS, 7, markdown=True).split('<div style="page-break-before: always"></div>')
    assert [page.strip() for page in pages] == [
        sheet.sheet(QUESTIONS, 7, markdown=True).strip(),
        sheet.key(QUESTIONS, 7, markdown=True).strip(),
    ]


def test_lines_end_without_blanks():
    for markdown in (False, True):
        lines = sheet.both(QUESTIONS, 7, markdown=markdown).splitlines()
        assert all(line == line.rstrip() for line in lines)
