"""What becomes of one time or temperature in a step."""

from __future__ import annotations

from dataclasses import dataclass

from rules.baking.bands import Span
from rules.baking.change import What


@dataclass(frozen=True, slots=True)
class Shift:
    """What a component does to a mark. span is a factor for a time, a difference [K] for a temperature.

    stays: it is listed as the same, with the reason
    """

    span: Span
    what: What
    rule: str
    because: str
    sources: tuple[str, ...]
    stays: bool = False
