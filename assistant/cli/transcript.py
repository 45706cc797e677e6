"""The transcript of a conversation: a new file, each line of it on the disk before the next is said."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TextIO

from assistant.files import check_free, why


@dataclass
class Transcript:
    """A transcript that is being written.

    failed: whether some of it could not be; warn: is told so once, and the conversation goes on
    """

    path: Path
    out: TextIO
    warn: Callable[[str], None]
    failed: bool = False

    @classmethod
    def begin(cls, path: Path, *, over: bool, warn: Callable[[str], None]) -> Transcript:
        """An empty transcript. over: whether a file that is there is replaced

        raises: NotWritten, AlreadyThere, OSError
        """
        check_free(path, over=over)
        return cls(path, path.open("w" if over else "x", encoding="utf-8", errors="replace"), warn)

    def add(self, *said: tuple[str, str]) -> None:
        """Add what was said: by whom, cook or assistant, and what."""
        if self.failed:
            return
        try:
            for who, text in said:
                self.out.write(f"{'You' if who == 'cook' else 'simmerline'}: {text}\n\n")
            self.out.flush()
        except OSError as fault:
            self.failed = True
            self.warn(f"{self.path}: {why(fault)}. The transcript ends here; the conversation goes on.")

    def close(self) -> None:
        """Let go of the file; what could not be written was said."""
        try:
            self.out.close()
        except OSError:
            self.failed = True
