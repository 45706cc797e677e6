"""A quick start of the command: nothing is run, swept or worked out that an answer does not take."""

from __future__ import annotations

import gc

from assistant.cli.later import UNUSED, run_later
from assistant.store.where import cache_folder
from rules.kept import keep_in


def start(*, takes_data: bool = True) -> None:
    """Prepare a process that is the command's own, before anything heavy is imported.

    takes_data: whether the command works anything out of the data
    """
    # what is loaded is kept for good: looking for rubbish among it costs a tenth of a cold answer
    gc.disable()
    run_later(UNUSED)
    if takes_data and (folder := cache_folder()):
        keep_in(folder)


def loaded() -> None:
    """Sweep again from now on, but for what has been loaded; for whatever goes on after its first answer."""
    if not gc.isenabled():
        gc.freeze()
        gc.enable()


def ended() -> None:
    """Let the process end without a last sweep through all that was loaded, which takes a quarter of a cold answer."""
    gc.freeze()
