"""What is told of a fault: to a cook what is wrong with a file, to a log where a mistake of ours was made."""

from __future__ import annotations

import traceback
from pathlib import Path

from assistant.errors import AssistantError
from rules import errors
from rules.errors import RulesError

# where code of ours lies
OURS = (Path(__file__).parent, Path(errors.__file__).parent)
EXPECTED = (AssistantError, RulesError, OSError)
LONGEST = 300


def where(fault: BaseException) -> str:
    """The kind of a fault, and file and line of our code that it comes from; what it says may hold somebody's words.

    >>> where(KeyError("never told"))
    'KeyError'
    """
    frames = traceback.extract_tb(fault.__traceback__)
    if not frames:
        return type(fault).__name__
    own = (frame for frame in reversed(frames) if any(Path(frame.filename).is_relative_to(folder) for folder in OURS))
    frame = next(own, frames[-1])
    return f"{type(fault).__name__} at {Path(frame.filename).name}:{frame.lineno}"


def problem(fault: Exception, source: str) -> str:
    """What is wrong with a file, in a line. A mistake of ours in one keeps no other from being worked on.

    >>> problem(OSError("cake.txt: gone"), "cake.txt"), problem(KeyError("egg"), "cake.txt")
    ('gone', "simmerline stumbled over it (KeyError: 'egg')")
    """
    if isinstance(fault, EXPECTED):
        return str(fault).removeprefix(f"{source}: ")
    return f"simmerline stumbled over it ({type(fault).__name__}: {fault})"[:LONGEST]
