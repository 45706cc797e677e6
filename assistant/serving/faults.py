"""Where a fault of ours was raised, for the log; what it says may hold somebody's words."""

from __future__ import annotations

import traceback
from pathlib import Path

# where code of ours lies
OURS = Path(__file__).parents[1]


def where(fault: Exception) -> str:
    """The kind of a fault, and file and line of our code that it comes from.

    >>> where(KeyError("never told"))
    'KeyError'
    """
    frames = traceback.extract_tb(fault.__traceback__)
    if not frames:
        return type(fault).__name__
    frame = next((frame for frame in reversed(frames) if OURS in Path(frame.filename).parents), frames[-1])
    return f"{type(fault).__name__} at {Path(frame.filename).name}:{frame.lineno}"
