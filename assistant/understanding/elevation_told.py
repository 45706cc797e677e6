"""An elevation by itself, as it is typed after an option or into a field: a figure with its unit, or a town."""

from __future__ import annotations

from assistant.errors import AssistantError
from rules.model import Request
from rules.physics.air import HIGHEST_M, LOWEST_M

# two figures no further apart are one height in two units, rounded
SAME_M = 20.0


class NotAnElevation(AssistantError, ValueError):
    """A text that tells no elevation. text: as it was typed; doubt: what speaks against it, or "" """

    def __init__(self, text: str, doubt: str = "") -> None:
        super().__init__(text, doubt)
        self.text, self.doubt = text, doubt

    def __str__(self) -> str:
        return self.doubt or f"{self.text!r} is not an elevation I know; say 7000ft, 2130m or a town"


def elevation_told(text: str) -> Request:
    """The elevation: elevation_m is not None, units are those of the figure.

    raises: NotAnElevation
    """
    if found := plain_elevation(text):
        return found
    from assistant.replies.sentences import worded
    from assistant.understanding.awaited import in_reply

    if tells_several(text):
        raise NotAnElevation(text, f"{text.strip()!r} is more than one elevation; say the one you cook at")
    figure = text.strip().replace("\N{MINUS SIGN}", "-")
    below = f"{figure[1:]} below sea level" if figure.startswith("-") else figure
    heard = in_reply("elevation", below)
    if heard.elevation_m is None:
        doubt = next((u.reason for u in heard.unused if u.kind == "elevation"), "")
        raise NotAnElevation(text, worded(doubt, heard.units))
    return heard


def tells_several(text: str) -> bool:
    """Whether a text tells heights that are not one and the same.

    >>> tells_several("7000ft 8000ft"), tells_several("7,000 to 8,000 ft"), tells_several("2,130 m (7,000 ft)")
    (True, True, False)
    """
    from assistant.reading.reader import hear
    from assistant.reading.units import HEIGHTS, tells_heights

    heard = hear(text, HEIGHTS)
    told = [m for m in heard.measures if tells_heights(m.unit)]
    heights = [height for measure in told for height in (measure.low, measure.high)]
    bare = [n for n in heard.numbers if not any(m.start <= n.start < m.end for m in heard.measures)]
    return bool(heights) and (bool(bare) or max(heights) - min(heights) > SAME_M)


def plain_elevation(text: str) -> Request | None:
    """An elevation typed as a figure with its unit, without the time it takes to load the language.

    >>> plain_elevation("7,000 ft").elevation_m, plain_elevation("2100m").units, plain_elevation("30000ft")
    (2133.6, 'metric', None)
    """
    from assistant.reading.reader import hear
    from assistant.reading.units import HEIGHTS, tells_heights

    typed = hear(text, HEIGHTS).only()
    if typed is None or not tells_heights(typed.unit) or not LOWEST_M <= typed.low <= HIGHEST_M:
        return None
    return Request(
        text=text,
        topic="set_kitchen",
        elevation_m=round(typed.low, 6),
        elevation_from="stated",
        units="metric" if typed.unit in ("m", "km") else "us",
    )
