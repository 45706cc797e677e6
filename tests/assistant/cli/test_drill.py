"""`simmerline drill`: piped, on paper, and the progress that is kept."""

import pytest
from typer.testing import CliRunner, Result

from assistant.cli import create_app
from assistant.cli.drill import LONGEST_SET, Theme, hold
from assistant.drill.wording import hint, in_words
from assistant.store import open_store, progress
from rules import drill

pytestmark = pytest.mark.usefixtures("database")


def run(*arguments: str, replies: str = "") -> Result:
    return CliRunner().invoke(create_app(), ["drill", *arguments], input=replies)


def made(seed: int, **choices: object) -> tuple[drill.Question, ...]:
    return tuple(map(in_words, drill.make_set(seed, **choices)))  # type: ignore[arg-type]


def right(question: drill.Question) -> str:
    if question.form != "figure":
        return str(question.answer)
    unit = {"degC": " C", "K": " C", "min": " min", "psi": " psi", "m": " m"}.get(question.unit, "")
    return f"{question.answer}{unit}"


def test_the_options_are_those_of_the_rules() -> None:
    assert tuple(Theme) == drill.THEMES
    assert LONGEST_SET == drill.LONGEST_SET


def test_a_set_through_a_pipe_a_reply_a_line() -> None:
    questions = made(7, count=6)
    replies = [right(question) for question in questions[:4]] + ["", "purple"]
    result = run("--set", "7", "--count", "6", replies="\n".join(replies) + "\n")
    assert result.exit_code == 0
    assert result.stdout.startswith("Set 7, 6 questions.")
    assert result.stdout.count("Right. ") == 4
    assert all(question.text in result.stdout and question.why in result.stdout for question in questions)
    assert "I cannot read that as an answer." in result.stdout
    assert "4 of 5 right, 1 passed over." in result.stdout
    assert "simmerline drill --set 7 --count 6 --level 3 --units us" in result.stdout


def test_the_same_set_is_asked_again() -> None:
    assert run("--seed", "7", replies="\n" * 10).stdout == run("--set", "7", replies="\n" * 10).stdout


def test_stop_and_the_end_of_the_lines_end_it() -> None:
    assert "1 passed over, none answered." in run("--set", "7", replies="\nstop\n").stdout
    assert "No question answered." in run("--set", "7").stdout


def test_a_set_without_a_number_says_the_number_to_repeat_it_with() -> None:
    first = run("--count", "2", replies="\n\n").stdout
    number = first.split(",")[0].removeprefix("Set ")
    assert run("--set", number, "--count", "2", replies="\n\n").stdout == first


def test_themes_level_and_units() -> None:
    options = "--set 1 --count 4 --theme safety --theme baking --level 1 --units metric"
    result = run(*options.split(), replies="\n" * 4)
    expected = made(1, themes=("safety", "baking"), count=4, level=1, units="metric")
    assert all(question.text in result.stdout for question in expected)
    assert f"simmerline drill {options}" in result.stdout


@pytest.mark.parametrize(
    "wrong", [["--theme", "bread"], ["--count", "0"], ["--count", "41"], ["--level", "4"], ["--name", " "]]
)
def test_what_cannot_be_is_refused(wrong: list[str]) -> None:
    assert run(*wrong).exit_code == 2


def test_the_sheet_and_its_key() -> None:
    questions = made(7, count=5)
    only = run("--set", "7", "--count", "5", "--print").stdout
    both = run("--set", "7", "--count", "5", "--print", "--key").stdout
    assert "Answer key" not in only
    assert both.startswith(only)
    assert all(question.why in both.split("\f")[1] for question in questions)
    assert run("--set", "7", "--key", "--markdown").stdout.startswith("# Cooking at elevation: set 7, 10 questions")


def test_progress_is_kept_by_name_and_shown_by_theme() -> None:
    questions = made(7, count=4)
    replies = "\n".join([right(questions[0]), "purple", right(questions[2]), right(questions[3])]) + "\n"
    assert run("--set", "7", "--count", "4", "--name", "Rosa", replies=replies).exit_code == 0
    shown = run("--progress", "rosa").stdout
    assert shown.startswith("Rosa: 3 of 4 right (75 %)")
    assert "boiling: 1 of 1 right (100 %)" in shown
    assert "timing: 0 of 1 right (0 %)" in shown
    assert "Most to learn: timing." in shown
    store = open_store()
    kept = progress.of_trainee(store, "ROSA")
    store.close()
    assert [(a.seed, a.question, a.right) for a in kept] == [
        (7, question.id, number != 1) for number, question in enumerate(questions)
    ]


def test_in_a_terminal_a_reply_that_cannot_be_read_is_asked_for_again(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    questions = made(7, count=3)
    replies = iter(["purple", "say it again", right(questions[0]), "next"])

    def typed(_: str) -> str:
        try:
            return next(replies)
        except StopIteration:
            raise KeyboardInterrupt from None

    monkeypatch.setattr("sys.stdin", type("Terminal", (), {"isatty": lambda self: True})())
    monkeypatch.setattr("builtins.input", typed)
    kept: list[tuple[str, bool]] = []
    assert hold(questions, lambda question, good: kept.append((question.id, good))) == (1, 1, 1)
    assert kept == [(questions[0].id, True)]
    said = capsys.readouterr().out
    assert hint(questions[0]) in said
    assert said.count(questions[0].text) == 2


def test_a_hint_narrows_down_and_a_why_tells_the_reason_of_the_answer_before() -> None:
    questions = made(7, count=2)
    said = run("--set", "7", "--count", "2", replies=f"hint\nwhy\n{right(questions[0])}\nwhy\nnext\n").stdout
    assert "The reason comes with the answer." in said
    assert said.count(questions[0].why) == 2
    assert "1 of 1 right, 1 passed over." in said


def test_nothing_is_kept_without_a_name() -> None:
    run("--set", "7", "--count", "2", replies="\n\n")
    assert "Nothing is kept of Rosa yet." in run("--progress", "Rosa").stdout


def test_a_store_that_fails_is_said_once_and_the_drill_goes_on(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SIMMERLINE_DB", "sqlite:////proc/nowhere/simmerline.db")
    result = run("--set", "7", "--count", "2", "--units", "us", "--name", "Rosa", replies="purple\npurple\n")
    assert result.exit_code == 0
    assert result.stderr.count("I go on without memory") == 1
    assert "0 of 2 right." in result.stdout


def test_a_store_that_fails_on_the_way_is_said_once(database: str) -> None:
    from sqlalchemy import text

    store = open_store()
    with store.write() as connection:
        connection.execute(text("DROP TABLE drill_answers"))
    store.close()
    result = run("--set", "7", "--count", "3", "--name", "Rosa", replies="purple\n" * 3)
    assert result.exit_code == 0
    assert result.stderr.count("I go on without memory") == 1
    assert "0 of 3 right." in result.stdout
