"""Training: a drill, question by question, and the sheet of a lesson."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from sanic import Blueprint, HTTPResponse, Request
from sanic.response import raw
from sanic_ext import openapi

from assistant.drill import Sitting, reply, start
from assistant.drill.seeds import HIGHEST_SEED, new_seed
from assistant.web import guard
from assistant.web.asked import kitchen_at, placed
from assistant.web.desk import Desk
from assistant.web.forms import fields, several, whole
from assistant.web.problems import Problem
from assistant.web.shown import Values, bench_of, shown
from rules.drill import THEMES

routes = Blueprint("training")
LETTERS = "abcdef"
KINDS = {"html": "text/html; charset=utf-8", "pdf": "application/pdf", "md": "text/markdown; charset=utf-8"}
STATE = ("seed", "themes", "units", "name", "count", "at", "right", "passed")
LARGEST_CLASS, LONGEST_NAME = 200, 80


@routes.get("/training")
@openapi.exclude()
async def show(request: Request) -> HTTPResponse:
    """What there is to train with."""
    return await shown(request, "training.html.j2", lambda desk, person: _page())


@routes.post("/training/drill")
@openapi.exclude()
async def drill(request: Request) -> HTTPResponse:
    """Begin a set, or take the reply to its question."""
    given = fields(request, *STATE, "reply", "do")
    work = partial(_answered, given=given, themes=several(request, "theme"))
    return await shown(request, "training.html.j2", work)


@routes.get("/training/lesson")
@openapi.exclude()
async def lesson(request: Request) -> HTTPResponse:
    """A lesson as a sheet, or its key."""
    asked = {name: str(request.args.get(name) or "") for name in ("theme", "class", "seed", "form", "key", "at")}
    if asked["form"] not in KINDS:
        raise Problem(422, f"A lesson is one of {', '.join(KINDS)}.")
    work = partial(_lesson, request.app.ctx.desk, request.ctx.person, asked)
    made = await bench_of(request, slow=True).run(work)
    return raw(
        made, content_type=KINDS[asked["form"]], headers={"Content-Security-Policy": guard.MADE_SHEET}
    )  # fmt: skip


def _page(**more: object) -> Values:
    from assistant.printing.lesson.themes import catalogue

    return {
        "themes": THEMES, "lessons": tuple(catalogue()),
        "sitting": None, "said": "", "options": (), **more,
    }  # fmt: skip


def _answered(desk: Desk, person: str, given: dict[str, str], themes: list[str]) -> Values:
    if given["do"] == "begin":
        units = desk.kitchen(person).units
        known = tuple(theme for theme in themes if theme in THEMES)
        sitting, said = start(_seed(given["seed"]), known, units, given["name"][:LONGEST_NAME])
    else:
        before = _sitting(given)
        sitting, said = reply(before, given["reply"] or "next")
        desk.keeper.drilled(before, sitting)
    question = None if sitting.over else sitting.question
    options = tuple(zip(LETTERS, question.options, strict=False)) if question and question.form == "choice" else ()
    form = question.form if question else ""
    state = {name: getattr(sitting, name) for name in STATE} | {"themes": ",".join(sitting.themes)}
    return _page(sitting=sitting, said=said, options=options, form=form, state=state)


def _sitting(given: dict[str, str]) -> Sitting:
    """The set under way, as the form brings it back.

    raises: Problem for what was never under way
    """
    count, at, right, passed = (whole(given[name], name) or 0 for name in ("count", "at", "right", "passed"))
    try:
        return Sitting(
            seed=_seed(given["seed"]), themes=tuple(filter(None, given["themes"].split(","))),
            units="metric" if given["units"] == "metric" else "us", name=given["name"][:LONGEST_NAME],
            count=count, at=at, right=right, passed=passed,
        )  # fmt: skip
    except ValueError as fault:
        raise Problem(422, f"There is no such set: {fault}.") from None


def _seed(text: str) -> int:
    number = whole(text, "The number of the set")
    if number is not None and number > HIGHEST_SEED:
        raise Problem(422, "There is no set of that number.")
    return new_seed() if number is None else number


def _lesson(desk: Desk, person: str, asked: dict[str, str]) -> bytes:
    from assistant.printing.lesson.drilled import enough_for
    from assistant.printing.lesson.forms import form_of
    from assistant.printing.lesson.sheets import Lesson, handout, key

    kitchen = kitchen_at(desk.kitchen(person), asked["at"].strip()[:100])
    size = min(max(whole(asked["class"], "The class") or 20, 1), LARGEST_CLASS)
    made = Lesson(
        theme=asked["theme"], elevations_m=(placed(kitchen),), class_size=size, count=enough_for(size),
        seed=_seed(asked["seed"] or "1"), units=kitchen.units,
        command=f"simmerline lesson {asked['theme']} --class {size} --seed {_seed(asked['seed'] or '1')}",
    )  # fmt: skip
    path = Path(f"lesson.{asked['form']}")
    sheet = key(made) if asked["key"] else handout(made)
    return next(iter(form_of(path).write(sheet, path, "letter").values()))
