"""What can go wrong with the store, said so that a cook can put it right."""

from __future__ import annotations

from typing import Literal

from assistant.errors import AssistantError

Kind = Literal["locked", "full", "corrupt", "read_only", "newer", "foreign", "address", "unreachable"]


class StoreError(AssistantError, OSError):
    """The store cannot be opened, read or written.

    kind: what is wrong, in one word; the message says it in a sentence and what to do
    """

    def __init__(self, kind: Kind, message: str) -> None:
        super().__init__(message)
        self.kind = kind

    @property
    def going_on(self) -> str:
        """What a front end says that goes on all the same."""
        return f"{self} I go on without memory: nothing of this will be kept."
