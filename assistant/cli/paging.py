"""A long reply a screen at a time: what fits is shown, and the rest waits until more is asked for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

MORE = ("more", "more please", "rest", "the rest", "go on", "m")
STOP, INDENT = "Stop: ", " "
# beside the reply there are the empty lines around it, the line that says how much is left, and the prompt
ROOM_LINES = 6
FEWEST = 4


def page(text: str, rows: int) -> tuple[str, str]:
    """What of a wrapped text fits a screen of so many rows, and the rest. What must not be done is always shown.

    >>> page("one\\ntwo", 24)
    ('one\\ntwo', '')
    >>> first, rest = page("\\n".join(map(str, range(30))), 24)
    >>> first.count("\\n") + 1, rest.splitlines()[0]
    (18, '18')
    """
    lines, room = text.splitlines(), max(FEWEST, rows - ROOM_LINES)
    if len(lines) <= room:
        return text, ""
    room = _between_paragraphs(lines, room)
    first, rest = lines[:room], lines[room:]
    stops = list(_stops(rest))
    return "\n".join([*first, *stops]).rstrip(), "\n".join(rest).strip("\n")


def asks_for_more(line: str) -> bool:
    """Whether a line asks for the rest of a reply.

    >>> asks_for_more("More."), asks_for_more("more rice")
    (True, False)
    """
    return line.casefold().strip(" .!,") in MORE


def _between_paragraphs(lines: Sequence[str], room: int) -> int:
    """Where to cut: before the last paragraph that does not fit, where that leaves half a screen."""
    return next((i for i in range(room, room // 2, -1) if not lines[i - 1]), room)


def _stops(lines: Sequence[str]) -> Iterator[str]:
    """The lines that forbid something, with what of them goes on in the next line."""
    goes_on = False
    for line in lines:
        goes_on = line.startswith(STOP) or (goes_on and line.startswith(INDENT))
        if goes_on:
            yield line
