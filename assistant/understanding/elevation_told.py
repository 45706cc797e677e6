"""An elevation by itself, as it is typed after an option or into a field: a figure with its unit, or a town."""

from __future__ import annotations

from assistant.errors import AssistantError
from rules.model import Request
from rules.physics.air import HIGHEST_M, LOWEST_M


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

    figure = text.strip().replace("\N{MINUS SIGN}", "-")
    below = f"{figure[1:]} below sea level" if figure.startswith("-") else figure
    heard = in_reply("elevation", below)
    if heard.elevation_m is None:
        doubt = next((u.reason for u in heard.unused if u.kind == "elevation"), "")
        raise NotAnElevation(text, worded(doubt, heard.units))
    return heard


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
