"""`simmerline drill`: questions for trainees, in the terminal, through a pipe, or on paper with an answer key."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from enum import StrEnum
from typing import TYPE_CHECKING, Annotated

import typer

from assistant.cli import exits
from assistant.cli.saying import show, tell, text_of
from assistant.cli.taken_for_granted import Units, kitchen_for, opened, warner
from assistant.drill.seeds import HIGHEST_SEED, new_seed
from rules.said import sentences

if TYPE_CHECKING:
    from assistant.drill.reading import Reply
    from assistant.store.progress import DrillAnswer
    from rules.drill import Question
    from rules.model import Units as UnitSystem
    from rules.said import Said

say = sentences("cli/drill")
PROMPT = "> "
LONGEST_SET = 40
LONGEST_NAME = 80


class Theme(StrEnum):
    """What questions are about."""

    boiling = "boiling"
    timing = "timing"
    baking = "baking"
    safety = "safety"


Keep = Callable[["Question", bool], None]


def register(app: typer.Typer) -> None:
    """Add the command to the app."""
    app.command("drill", epilog=exits.EPILOG)(drill)


def drill(
    seed: Annotated[
        int | None,
        typer.Option(
            "--set",
            "--seed",
            metavar="N",
            min=0,
            max=HIGHEST_SEED,
            help="Number of the set; a new one where none is given.",
        ),
    ] = None,
    count: Annotated[int, typer.Option("--count", min=1, max=LONGEST_SET, help="How many questions.")] = 10,
    themes: Annotated[
        list[Theme] | None, typer.Option("--theme", help="Only questions on this; may be repeated.")
    ] = None,
    level: Annotated[
        int, typer.Option("--level", min=1, max=3, help="1 first weeks, 2 cooks, 3 those who train others.")
    ] = 3,
    units: Annotated[Units | None, typer.Option("--units", help="Units asked for, and shown first.")] = None,
    name: Annotated[str | None, typer.Option("--name", help="Whose progress is kept; without it none is.")] = None,
    on_paper: Annotated[bool, typer.Option("--print", help="Print the set as a sheet instead of asking it.")] = False,
    with_key: Annotated[bool, typer.Option("--key", help="Print the sheet, and the answer key on a new page.")] = False,
    markdown: Annotated[bool, typer.Option("--markdown", help="Print them as Markdown.")] = False,
    progress: Annotated[
        str | None, typer.Option("--progress", metavar="NAME", help="Show how somebody has done so far, by theme.")
    ] = None,
) -> None:
    """Train: questions on cooking at elevation, each answer worked out, explained and graded.

    simmerline drill --theme boiling --theme safety --name Rosa

    simmerline drill --set 7 --count 20 --print --key

    A reply is a figure in either system of units, yes or no, or letters; next passes over, hint narrows it down, why
    gives the reason of the answer before, stop ends. Through a pipe a line is a reply, and an empty line passes over.
    """
    if progress is not None:
        show_progress(named(progress))
        return
    from assistant.drill.wording import in_words, score
    from rules.drill import make_set

    first = kitchen_for(None, units).units
    number = new_seed() if seed is None else seed
    themes_wanted = tuple(theme.value for theme in themes or ())
    made = make_set(number, themes=themes_wanted, count=count, level=level, units=first)
    questions = tuple(map(in_words, made))
    if on_paper or with_key or markdown:
        print_set(questions, number, with_key=with_key, markdown=markdown)
        return
    trainee = named(name) if name is not None else None
    show(say("begin", set=str(number), count=len(questions)))
    with keeping(trainee, number) as keep:
        right, answered, passed = hold(questions, keep)
    typer.echo("")
    show(say("end", score=score(right, answered, passed), command=again(number, count, themes_wanted, level, first)))


def again(seed: int, count: int, themes: tuple[str, ...], level: int, units: UnitSystem) -> str:
    """The command that asks the same set."""
    chosen = "".join(f" --theme {theme}" for theme in themes)
    return f"simmerline drill --set {seed} --count {count}{chosen} --level {level} --units {units}"


def print_set(questions: tuple[Question, ...], seed: int, *, with_key: bool, markdown: bool) -> None:
    """Print the sheet, with its key where wanted."""
    from assistant.drill import sheet

    pages = sheet.both if with_key else sheet.sheet
    typer.echo(pages(questions, seed, markdown=markdown), nl=False)


def hold(questions: tuple[Question, ...], keep: Keep) -> tuple[int, int, int]:
    """Ask the questions one by one; how many were right, were answered, and were passed over."""
    from assistant.drill import wording
    from rules.drill import grade

    patient = sys.stdin.isatty()
    replies = typed() if patient else piped()
    right = answered = passed = 0
    for number, question in enumerate(questions, start=1):
        tell(f"\n{wording.asked(question, number, len(questions))}")
        before = questions[number - 2] if number > 1 else None
        said = taken(question, before, replies, patient=patient)
        if said is None:
            break
        graded = grade(question, said.given)
        if said.meaning == "pass":
            passed += 1
        else:
            keep(question, graded.right)
            right, answered = right + graded.right, answered + 1
        tell(wording.told(question, graded))
    return right, answered, passed


def taken(question: Question, before: Question | None, replies: Iterator[str], *, patient: bool) -> Reply | None:
    """The reply to a question, after hints and reasons; None where the drill ends. An empty line passes over.

    patient: whether a reply that cannot be read is asked for again
    """
    from assistant.drill import hints, wording
    from assistant.drill.reading import Reply, read

    for text in replies:
        said = read(question, text)
        match said.meaning:
            case "stop":
                return None
            case "hint":
                tell(hints.hint(question))
            case "why":
                tell(wording.reason(before))
            case "again":
                tell(question.text)
            case "unread" if patient:
                tell(wording.hint(question))
            case "unread" if not text:
                return Reply("pass")
            case "unread":
                tell(wording.unread(question))
                return said
            case _:
                return said
    return None


def piped() -> Iterator[str]:
    """Replies through a pipe, a line each."""
    for raw in sys.stdin.buffer:
        yield raw.decode("utf-8", errors="replace").strip()


def typed() -> Iterator[str]:
    """Replies at a prompt, until Ctrl-D or Ctrl-C."""
    while True:
        try:
            yield input(PROMPT).strip()
        except (EOFError, KeyboardInterrupt):
            return


@contextmanager
def keeping(trainee: str | None, seed: int) -> Iterator[Keep]:
    """What keeps each answer as it is given; a store that fails is said once, and the drill goes on without it."""
    if trainee is None:
        yield lambda question, right: None
        return
    from assistant.dialogue.keeper import Keeper

    keeper = Keeper.open(warner())
    try:
        yield lambda question, right: keeper.answered(trainee, seed, question.id, right)
    finally:
        keeper.close()


def named(name: str) -> str:
    """A trainee's name; leaves with code 2 where it cannot be one."""
    clean = " ".join(name.split())
    if not clean or not clean.isprintable() or len(clean) > LONGEST_NAME:
        exits.leave(text_of(say("bad-name", most=LONGEST_NAME)))
    return clean


def show_progress(name: str) -> None:
    """Print how a trainee has done, by theme."""
    from assistant.store import progress

    with opened() as store:
        answers = progress.of_trainee(store, name)
    if not answers:
        show(say("nothing-kept", name=name, quoted=quoted(name)))
        return
    for line in results(answers):
        show(line)


def results(answers: tuple[DrillAnswer, ...]) -> list[Said]:
    """How a trainee has done: all in all, by theme, and what to go over again."""
    from assistant.drill.wording import theme
    from rules.drill import THEMES, theme_of

    lines = [say("all-in-all", name=answers[-1].name, share=share(answers), day=f"{answers[-1].answered_at:%Y-%m-%d}")]
    by_theme = {name: [a for a in answers if theme_of(a.question) == name] for name in THEMES}
    for name, given in by_theme.items():
        told = share(given) if given else say("not-asked")
        lines.append(say("by-theme", theme=theme(name), share=told))
    asked = [name for name, given in by_theme.items() if given and not all(a.right for a in given)]
    if asked:
        weakest = min(asked, key=lambda name: sum(a.right for a in by_theme[name]) / len(by_theme[name]))
        lines.append(say("weakest", theme=theme(weakest), option=weakest))
    return lines


def share(answers: Sequence[DrillAnswer]) -> Said:
    """How many were right."""
    right, count = sum(answer.right for answer in answers), len(answers)
    return say("share", right=str(right), count=str(count), percent=f"{100 * right / count:.0f}")


def quoted(name: str) -> str:
    """A name as it is typed in a shell."""
    import shlex

    return shlex.quote(name)
