"""What was drawn and may be asked for again, up to so many bytes; the longest unasked goes first. Used on the loop."""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Hashable

MOST_BYTES = 8 * 1024 * 1024


class Shelf:
    """Drawings by what they are of."""

    def __init__(self, most_bytes: int = MOST_BYTES) -> None:
        self._most_bytes, self._held_bytes = most_bytes, 0
        self._held: OrderedDict[Hashable, bytes] = OrderedDict()

    def get(self, of: Hashable) -> bytes | None:
        """A drawing; None where it is not here."""
        if of in self._held:
            self._held.move_to_end(of)
        return self._held.get(of)

    def put(self, of: Hashable, drawing: bytes) -> None:
        """Keep a drawing."""
        self._held_bytes += len(drawing) - len(self._held.pop(of, b""))
        self._held[of] = drawing
        while self._held_bytes > self._most_bytes:
            self._held_bytes -= len(self._held.popitem(last=False)[1])
