"""Which recognisers there are: every entry point of the group `simmerline.recognisers`, found when one is asked for."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache
from importlib.metadata import EntryPoint, entry_points
from typing import Protocol

from assistant.voice.errors import VoiceMissing

GROUP = "simmerline.recognisers"
DEFAULT = "moonshine"
HOW = "pip install 'simmerline[voice]'"


class Recogniser(Protocol):
    """What turns speech into words. An entry point names what takes nothing and gives one."""

    def words_of(self, samples: Sequence[float]) -> str:
        """The words of speech, -1 to 1 at 16 kHz; empty where none are heard."""


def names() -> list[str]:
    """The recognisers that are installed, ours first."""
    return sorted((found.name for found in entry_points(group=GROUP)), key=lambda name: (name != DEFAULT, name))


@cache
def recogniser(name: str = DEFAULT) -> Recogniser:
    """A recogniser, loaded once a process.

    raises: VoiceMissing where there is none of that name, or what it needs is not installed
    """
    entry = _entry(name)
    try:
        make: Callable[[], Recogniser] = entry.load()
        return make()
    except ImportError as fault:
        if isinstance(fault, VoiceMissing):
            raise
        raise VoiceMissing(f"the recogniser {name} needs {fault.name}, which is not installed: {HOW}") from None


def _entry(name: str) -> EntryPoint:
    found = next(iter(entry_points(group=GROUP, name=name)), None)
    if found is None:
        raise VoiceMissing(f"there is no recogniser {name}; installed: {', '.join(names()) or 'none'}. {HOW}")
    return found
