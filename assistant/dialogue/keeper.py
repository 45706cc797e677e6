"""What a conversation has the store keep beside its words: timers, and how trainees do in the drill."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from time import monotonic
from typing import TYPE_CHECKING, Self, TypeVar

from assistant.planning.clock import now_here
from assistant.store import StoreError, open_store
from rules.model import Request

if TYPE_CHECKING:
    from assistant.dialogue.deeds import Deed, Draw, LogRun
    from assistant.dialogue.timers import Outcome
    from assistant.dialogue.workbench import Run
    from assistant.drill import Sitting
    from assistant.store.database import Store

T = TypeVar("T")
LOOK_AGAIN_S = 10.0
BACK = "The database is there again: from here on it is kept."


@dataclass(kw_only=True)
class Keeper:
    """Keeps for any number of conversations, by the name that each has in its tracker.

    folder: where files are written that a cook asks for; None where none are
    pictures: whether whoever holds the conversations shows what is to be drawn
    warn: is told what is wrong with the store, and when it is there again; the conversations go on without it
    store: None where there is none to be had just now
    owner: whose log batches are kept in; "" for the house's
    """

    warn: Callable[[str], None]
    store: Store | None = None
    folder: Path | None = None
    owner: str = ""
    pictures: bool = False
    _next_look_s: float = 0.0

    @classmethod
    def open(cls, warn: Callable[[str], None]) -> Self:
        """A keeper with the store that open_store finds."""
        keeper = cls(warn=warn)
        keeper.reopen()
        return keeper

    def reopen(self) -> None:
        """Open the store, where it is not."""
        if self.store:
            return
        try:
            self.store = open_store()
        except StoreError as fault:
            self._do_without(fault)
            return
        if self._next_look_s:
            self._next_look_s = 0.0
            self.warn(BACK)

    def timed(self, request: Request, conversation: str) -> Outcome | None:
        """Do what is asked about timers; None where there is no store to keep them."""
        from assistant.dialogue.timers import obey

        self.reopen()
        return self.kept(lambda store: obey(store, request, now_here(), conversation))

    def rings(self, conversation: str) -> tuple[str, ...]:
        """What the timers of a conversation have to announce by now, each once."""
        from assistant.dialogue.timers import rings

        return self.kept(lambda store: rings(store, now_here(), conversation)) or ()

    def drilled(self, before: Sitting | None, after: Sitting | None) -> None:
        """Keep the answer that a trainee gave between two states of a drill, where one was given under a name."""
        if not before or not after or not after.name or after.at != before.at + 1 or after.passed > before.passed:
            return
        self.answered(after.name, after.seed, before.question.id, after.right > before.right)

    def answered(self, name: str, seed: int, question: str, right: bool) -> None:
        """Keep how a trainee answered a question of the drill. seed: of the set; question: its id."""
        from assistant.store.progress import DrillAnswer, record

        answer = DrillAnswer(name, seed, question, right, now_here())
        self.kept(lambda store: record(store, answer))

    def wrote(self, deed: Deed) -> str | None:
        """Write or draw a file that was asked for, and say where it is; None where none is, or none are written."""
        from assistant.dialogue.deeds import Draw, LogRun, WriteFile, write_new
        from assistant.dialogue.pictures import OF_PLAN
        from assistant.errors import AssistantError
        from assistant.files import NotWritten
        from assistant.replies.sentences import worded
        from rules.said import sentences

        say = sentences("dialogue/keeper")
        if isinstance(deed, Draw) and self.pictures and deed.kind != OF_PLAN:
            return shown()
        if isinstance(deed, LogRun) or self.folder is None:
            return None
        try:
            content = deed.text.encode(errors="replace") if isinstance(deed, WriteFile) else drawn(deed)
            path = write_new(self.folder, deed.name, content)
        except NotWritten as fault:
            return worded(say("not-written", reason=str(fault)), "us")
        except AssistantError as fault:
            return worded(say("not-drawn", reason=str(fault)), "us")
        return worded(say("written", file=str(path)), "us")

    def logged(self, deed: LogRun) -> Run | None:
        """Keep the batches of a run in the log, each once; the run with their numbers, None where there is no store."""
        from assistant.dialogue.logging_runs import log_run

        self.reopen()
        return self.kept(lambda store: log_run(store, deed, now_here().date(), self.owner))

    def kept(self, work: Callable[[Store], T]) -> T | None:
        """What some work with the store gives; None where there is none, or no longer.

        One that failed is looked for again, but not at every turn: to find out can take seconds.
        """
        if self.store is None and self._next_look_s and monotonic() >= self._next_look_s:
            self.reopen()
        if self.store is None:
            return None
        try:
            return work(self.store)
        except StoreError as fault:
            self._do_without(fault)
            return None

    def close(self) -> None:
        """Let go of the store."""
        if self.store:
            self.store.close()

    def _do_without(self, fault: StoreError) -> None:
        self.close()
        self.store = None
        self._next_look_s = monotonic() + LOOK_AGAIN_S
        self.warn(fault.going_on)


def shown() -> str:
    """That a picture is shown, by whoever holds the conversation."""
    from assistant.replies.sentences import worded
    from rules.said import sentences

    say = sentences("dialogue/keeper")
    return worded(say("shown"), "us")


def drawn(deed: Draw) -> bytes:
    """The picture that was asked for.

    raises: AssistantError where nothing draws, or where there is nothing to draw
    """
    from assistant.printing.pictures import picture_of

    return picture_of(deed.kind, deed.question, deed.name, now_here())
