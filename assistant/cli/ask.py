"""`simmerline ask`: one question, or a file of them."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import Annotated, Any

import typer

from assistant.answering import reply_to
from assistant.cli import exits
from assistant.cli.taken_for_granted import Units, kitchen_for
from rules.model import Answer, Kitchen

# a recipe and a conversation, with every letter escaped
LONGEST_LINE = 4 * 2**20


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("ask", epilog=exits.EPILOG)(ask)


def ask(
    text: Annotated[list[str] | None, typer.Argument(help="The question; - reads it from standard input.")] = None,
    at: Annotated[
        str | None,
        typer.Option("--at", help="Your elevation: 7000ft, 2130m, a town; used where the question has none."),
    ] = None,
    kitchen_name: Annotated[
        str | None,
        typer.Option("--kitchen", metavar="NAME", help="A kitchen of yours instead of the one in use."),
    ] = None,
    units: Annotated[Units | None, typer.Option("--units", help="Unit system shown first.")] = None,
    depth: Annotated[
        int | None,
        typer.Option("--depth", min=1, max=3, help="1 one line, 2 a paragraph, 3 the equations with numbers."),
    ] = None,
    as_json: Annotated[bool, typer.Option("--json", help="Print the answer as one JSON object.")] = False,
    jsonl: Annotated[
        str | None,
        typer.Option(
            "--jsonl",
            help="Answer a file of questions, a line in, a line out. "
            'A line is a question or {"text": ..., "context": [...]}; - reads standard input.',
        ),
    ] = None,
) -> None:
    """Ask one question in your own words.

    simmerline ask "how long to braise short ribs at 7,000 feet"

    simmerline ask --at "Santa Fe" "soft ball for fudge"

    simmerline ask --units metric --depth 3 "why does water boil cooler at 2,100 m"
    """
    kitchen = kitchen_for(at, units, kitchen_name)
    if jsonl is not None:
        if text:
            exits.leave("give a question or --jsonl FILE, not both")
        raise typer.Exit(answer_lines(open_lines(jsonl), kitchen, depth))
    question = read_question(text)
    answer = answer_one(question, (), kitchen, depth)
    show(answer, as_json)
    raise typer.Exit(exits.of(answer))


def read_question(text: list[str] | None) -> str:
    """The question from the arguments or standard input; leaves with code 2 where there is none."""
    if text == ["-"] or (not text and not sys.stdin.isatty()):
        question = sys.stdin.buffer.read(LONGEST_LINE + 1).decode("utf-8", errors="replace")
        if len(question) > LONGEST_LINE:
            exits.leave("that is far longer than a question; give a recipe to simmerline convert")
    else:
        question = " ".join(text or ())
    if not question.strip():
        exits.leave('ask what? For example: simmerline ask "how long to boil pasta at 7,000 feet"')
    return question


def answer_one(text: str, context: Iterable[str], kitchen: Kitchen, depth: int | None) -> Answer:
    """Answer at the depth of the option, or of the question itself where there is no option."""
    return reply_to(text, tuple(context), kitchen, depth)


def show(answer: Answer, as_json: bool) -> None:
    """Print an answer: JSON, Rich in a terminal, plain text in a pipe."""
    if as_json:
        from assistant.replies.contract import as_json as contract

        typer.echo(json.dumps(contract(answer), ensure_ascii=False, indent=2))
    elif sys.stdout.isatty():
        from assistant.replies.terminal import show_answer

        show_answer(answer)
    else:
        typer.echo(answer.text)


def open_lines(name: str) -> Iterable[bytes]:
    """The lines of a file or of standard input, of one that is too long no more than shows it; leaves with code 2 where
    it cannot be read."""
    from assistant.files import lines_of, opened

    try:
        return lines_of(sys.stdin.buffer if name == "-" else opened(Path(name)), LONGEST_LINE)
    except OSError as error:
        exits.leave(f"cannot read {name}: {(error.strerror or str(error)).lower()}")


def answer_lines(lines: Iterable[bytes], kitchen: Kitchen, depth: int | None) -> int:
    """Answer each line in order, an object a line; a bad line gives an error object and the rest go on."""
    code = exits.ANSWERED
    for number, line in enumerate(lines, start=1):
        result = answer_line(line, number, kitchen, depth)
        if "error" in result:
            code = exits.FAILED
        sys.stdout.write(json.dumps(result, ensure_ascii=False) + "\n")
    sys.stdout.flush()
    return code


def answer_line(line: bytes, number: int, kitchen: Kitchen, depth: int | None) -> dict[str, Any]:
    """One line of a --jsonl file, answered, or what is wrong with it."""
    from assistant.replies.contract import as_json as contract

    try:
        text, context = question_of(line)
    except ValueError as error:
        return {"schema": 1, "error": {"kind": "bad_line", "line": number, "message": str(error)}}
    return contract(answer_one(text, context, kitchen, depth))


def question_of(line: bytes) -> tuple[str, list[str]]:
    """Text and context of a line: a JSON object or string, or the question itself.

    raises: ValueError that says what is wrong and what a line should be
    """
    if len(line) > LONGEST_LINE:
        raise ValueError(f"longer than the {LONGEST_LINE:,} bytes that are taken; give a recipe to simmerline convert")
    wanted = 'a line is a question, or {"text": "and at 9,000?", "context": ["how long to boil rice at 7,000"]}'
    try:
        plain = line.decode("utf-8").strip()
    except UnicodeDecodeError:
        raise ValueError(f"not UTF-8 text; {wanted}") from None
    if not plain:
        raise ValueError(f"empty; {wanted}")
    if plain[0] not in '{["':
        return plain, []
    try:
        row = json.loads(plain)
    except (ValueError, RecursionError):
        raise ValueError(f"not valid JSON; {wanted}") from None
    if isinstance(row, str):
        row = {"text": row}
    text, context = (row.get("text"), row.get("context", [])) if isinstance(row, dict) else (None, [])
    if not isinstance(text, str) or not text.strip():
        raise ValueError(f"no text; {wanted}")
    if not isinstance(context, list) or not all(isinstance(item, str) for item in context):
        raise ValueError(f"context must be a list of strings; {wanted}")
    return text, context
