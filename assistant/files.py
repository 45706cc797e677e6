"""Files as people name them: read without waiting for a pipe that nobody fills, written whole or not at all."""

from __future__ import annotations

import errno
import os
import stat
from collections.abc import Iterator, Mapping
from contextlib import ExitStack
from pathlib import Path
from secrets import token_hex
from typing import BinaryIO

from assistant.errors import AssistantError

# a disk or an operating system says it in its own words; these are for the cook
REASONS = {
    "ENOSPC": "the disk is full; make room, or name a place on another",
    "EDQUOT": "the disk is full; make room, or name a place on another",
    "EROFS": "nothing can be written on that disk; name a place on another",
    "EACCES": "nothing may be written there; allow it, or name another place",
    "EPERM": "nothing may be written there; allow it, or name another place",
    "ENOENT": "there is no such folder",
    "ENOTDIR": "what should be a folder on the way to it is a file",
    "EEXIST": "what should be a folder on the way to it is a file",
    "ENAMETOOLONG": "the name is too long",
}


class NotWritten(AssistantError, OSError):
    """A file that was not written; what was there is as it was. path: that was to be written; reason: why not"""

    def __init__(self, path: Path, reason: str) -> None:
        super().__init__(f"{path}: {reason}")
        self.path, self.reason = path, reason


class AlreadyThere(NotWritten):
    """A file that is there already."""


def why(fault: OSError) -> str:
    """What a fault of the operating system means for a file that is to be written.

    >>> why(OSError(errno.ENOSPC, "No space left on device"))
    'the disk is full; make room, or name a place on another'
    """
    return REASONS.get(errno.errorcode.get(fault.errno or 0, "")) or (fault.strerror or str(fault)).lower()


def opened(path: Path) -> BinaryIO:
    """A file to be read. A pipe that nobody writes into is empty, and is not waited for.

    raises: OSError, for a name that no file can have too
    """
    try:
        number = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    except ValueError:
        raise OSError(0, "that is no name of a file", str(path)) from None
    try:
        file = os.fdopen(number, "rb")
    except IsADirectoryError as fault:
        os.close(number)
        raise IsADirectoryError(fault.errno, fault.strerror, str(path)) from None
    if hasattr(os, "O_NONBLOCK"):
        os.set_blocking(number, True)
    return file


def content_of(path: Path, most: int) -> bytes:
    """What a file holds, or of one that holds more than so many bytes as much as shows it.

    raises: OSError where it cannot be read, and for a pipe or a device, which may never end or never begin
    """
    if path.exists() and not path.is_file() and not path.is_dir():
        raise OSError(errno.EINVAL, "a pipe or a device is no file; give - to read standard input", str(path))
    with opened(path) as file:
        return file.read(most + 1)


def lines_of(file: BinaryIO, longest: int) -> Iterator[bytes]:
    """The lines of a file, of one that has more than so many bytes no more than shows it."""
    while line := file.readline(longest + 1):
        yield line
        while len(line) > longest and not line.endswith(b"\n"):
            line = file.readline(longest + 1)


def check_free(path: Path, *, over: bool = False) -> None:
    """Look whether a file may be written. over: also where one is there already

    raises: NotWritten for a link, a folder or a device; AlreadyThere
    """
    try:
        mode = path.lstat().st_mode
    except FileNotFoundError:
        return
    except (OSError, ValueError) as fault:
        raise NotWritten(path, why(fault) if isinstance(fault, OSError) else "that is no name of a file") from None
    if stat.S_ISLNK(mode):
        raise NotWritten(path, "it is a link to another file; name a file of its own")
    if stat.S_ISDIR(mode):
        raise NotWritten(path, "it is a folder; name a file in it")
    if not stat.S_ISREG(mode):
        raise NotWritten(path, "it is no file but a device or a pipe; name a file")
    if not over:
        raise AlreadyThere(path, "it is there already")


def write_all(files: Mapping[Path, bytes], *, over: bool = False) -> None:
    """Write files, each whole, and none where one of them cannot be; their folders are made.

    over: whether a file that is there is replaced
    raises: NotWritten, AlreadyThere
    """
    for path in files:
        check_free(path, over=over)
    with ExitStack() as undone:
        beside = {path: _beside(path, content, undone) for path, content in files.items()}
        for path, written in beside.items():
            _put_in_place(written, path, over=over)


def _beside(path: Path, content: bytes, undone: ExitStack) -> Path:
    """The content in a file of its own beside the one that is meant, which is gone at the end."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        written = path.with_name(f".{token_hex(8)}.tmp")
        with written.open("xb") as file:
            undone.callback(written.unlink, missing_ok=True)
            file.write(content)
        if path.exists():
            written.chmod(stat.S_IMODE(path.stat().st_mode))
    except OSError as fault:
        raise NotWritten(path, why(fault)) from None
    return written


def _put_in_place(written: Path, path: Path, *, over: bool) -> None:
    try:
        if over:
            written.replace(path)
            return
        try:
            path.hardlink_to(written)
        except FileExistsError:
            raise AlreadyThere(path, "it is there already") from None
        except (OSError, NotImplementedError):  # a disk without links
            check_free(path)
            written.replace(path)
    except NotWritten:
        raise
    except OSError as fault:
        raise NotWritten(path, why(fault)) from None

