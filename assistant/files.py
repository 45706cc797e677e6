"""Files that people name, read no further than they are of use."""

from __future__ import annotations

import errno
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO


def first_bytes(path: Path, most: int) -> bytes:
    """What a file holds, up to so many bytes.

    raises: OSError where it cannot be read, and for a pipe or a device, which may never end or never begin
    """
    if path.exists() and not path.is_file() and not path.is_dir():
        raise OSError(errno.EINVAL, "a pipe or a device is no file; give - to read standard input", str(path))
    with path.open("rb") as file:
        return file.read(most)


def lines_of(file: BinaryIO, most: int) -> Iterator[bytes]:
    """The lines of a file, of one longer than so many bytes as much as shows it, and one byte more."""
    while line := file.readline(most + 1):
        yield line
        while line and not line.endswith(b"\n"):
            line = file.readline(most)
