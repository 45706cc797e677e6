"""Many recipes converted in their order, a large folder on all cores; nothing is written here."""

from __future__ import annotations

import multiprocessing
from collections.abc import Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from functools import partial
from typing import Any

from assistant.cli.convert_one import converted_from
from assistant.machine import cores
from assistant.mistakes import problem
from assistant.replies.recipe import forms

STANDARD_INPUT = "-"
# below so many, starting processes takes longer than they save
FEWEST_SHARED = 64
# how many files a process takes at a time: few enough that all end together
AT_A_TIME = 8


@dataclass(frozen=True, slots=True, kw_only=True)
class Done:
    """What came of one file. written: where the result is; error: why there is none; each None or empty otherwise."""

    file: str
    title: str = ""
    style: str | None = None
    sure: float | None = None
    changed: int = 0
    unread: int = 0
    written: str | None = None
    error: str | None = None


@dataclass(frozen=True, slots=True)
class Worked:
    """What came of one file, with the text of its result, which is yet to be written."""

    done: Done
    text: str = ""


def in_order(sources: Sequence[str], asked: dict[str, Any], form: str) -> Iterator[Worked]:
    """Every file converted, in the order of the files; one that cannot be is told, the rest are done.

    form: the name of the output form
    """
    work = partial(_worked, asked=asked, form=form)
    count = cores()
    if count < 2 or len(sources) < FEWEST_SHARED or STANDARD_INPUT in sources:
        yield from map(work, sources)
        return
    yield work(sources[0])  # a process that is forked from here finds everything loaded
    yield from _shared(work, sources[1:], count)


def _shared(work: partial[Worked], sources: Sequence[str], count: int) -> Iterator[Worked]:
    """The same work in a process a core."""
    way = "fork" if "fork" in multiprocessing.get_all_start_methods() else None
    with ProcessPoolExecutor(count, mp_context=multiprocessing.get_context(way)) as pool:
        try:
            yield from pool.map(work, sources, chunksize=AT_A_TIME)
        except BaseException:
            pool.shutdown(wait=False, cancel_futures=True)
            raise


def _worked(source: str, asked: dict[str, Any], form: str) -> Worked:
    try:
        converted = converted_from(source, asked)
        text = forms.form(form).write(converted, asked["units"])
    except Exception as fault:
        return Worked(Done(file=source, error=problem(fault, source)))
    done = Done(
        file=source,
        title=converted.recipe.title,
        style=converted.style,
        sure=converted.sure,
        changed=sum(c.way != "same" for c in converted.changes),
        unread=len(converted.unread),
    )
    return Worked(done, text)
