"""What is worked out of the data, kept on disk between runs of the command, whose start would pay for it each time.

A thing is kept under a stamp of every file of the program and its data, by size and time of change, as Python keeps
compiled modules. Nothing is kept before `keep_in` was called, so that a program that imports the package writes no
files. Where the folder is somebody else's, or cannot be written, all is worked out anew.
"""

from __future__ import annotations

import contextlib
import io
import os
import pickle
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import Field, fields, is_dataclass
from functools import cache, wraps
from hashlib import blake2b
from pathlib import Path
from typing import Any, Generic, ParamSpec, TypeVar, cast

import tomli

P = ParamSpec("P")
T = TypeVar("T")
PACKAGES = Path(__file__).resolve().parent.parent
# of the packages, and of data in a checkout; an installed package holds its data
FOLDERS = ("assistant", "rules", "data")
DIGEST_BYTES = 16
_folder: Path | None = None


class Kept(Generic[P, T]):
    """A function whose results are kept; see `kept`."""

    cache_clear: Callable[[], None]

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> T:
        raise NotImplementedError


def keep_in(folder: Path) -> None:
    """Keep what is worked out from now on below a folder of this user's, and take from there what is still true.

    Where the folder cannot be made, or others may write to it, nothing is kept.
    """
    global _folder
    _folder = None
    with contextlib.suppress(OSError):
        _folder = _own(folder / _digest(str(PACKAGES).encode()).hex() / stamp())


def kept(make: Callable[P, T]) -> Kept[P, T]:
    """Remember the results of a function of the data alone: within the process, and on disk once `keep_in` was called.

    make: takes text or nothing; treat its result as read-only, it is shared
    """

    @cache
    @wraps(make)
    def known(*args: Any) -> T:
        if _folder is None:
            return make(*args)  # type: ignore[call-arg]
        file = _folder / "-".join((make.__module__, make.__qualname__, *(arg.replace("/", ".") for arg in args)))
        found = _read(file)
        if found is None:
            found = (make(*args),)  # type: ignore[call-arg]
            _write(file, found)
        return cast(T, found[0])

    return cast(Kept[P, T], known)


def stamp() -> str:
    """A word for the state of the program, its data, its Python and the packages beside it."""
    libraries = Path(tomli.__file__).parents[1]
    files = sorted(line for name in FOLDERS for line in _files(str(PACKAGES / name)))
    return _digest(repr((sys.version, libraries.stat().st_mtime_ns, files)).encode()).hex()


def _files(folder: str) -> Iterator[tuple[str, int, int]]:
    with contextlib.suppress(FileNotFoundError), os.scandir(folder) as entries:
        for entry in entries:
            if not entry.is_dir():
                about = entry.stat()
                yield entry.path, about.st_size, about.st_mtime_ns
            elif entry.name != "__pycache__":
                yield from _files(entry.path)


def _digest(payload: bytes) -> bytes:
    return blake2b(payload, digest_size=DIGEST_BYTES).digest()


def _own(folder: Path) -> Path | None:
    """The folder, made for its owner alone; None where others could put something into it."""
    new = not folder.is_dir()
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not all(_is_private(one) for one in (folder, folder.parent)):
        return None
    for old in folder.parent.iterdir() if new else ():
        if old != folder:
            shutil.rmtree(old, ignore_errors=True)
    return folder


def _is_private(folder: Path) -> bool:
    about = folder.stat()
    return not hasattr(os, "getuid") or (about.st_uid == os.getuid() and not about.st_mode & 0o022)


def _read(file: Path) -> tuple[Any] | None:
    """What a file holds, in a tuple; None where there is none, or it is not as it was written."""
    try:
        written = file.read_bytes()
    except OSError:
        return None
    digest, payload = written[:DIGEST_BYTES], memoryview(written)[DIGEST_BYTES:]
    return pickle.loads(payload) if _digest(payload) == digest else None  # type: ignore[arg-type]


class _Plainly(pickle.Pickler):
    """Writes a row of a table as a call of its class, which is read in half the time of one set field by field."""

    def reducer_override(self, obj: Any) -> Any:
        """The call that makes a row again; NotImplemented where its class checks or works out more than it is given."""
        kind = type(obj)
        if not is_dataclass(kind) or hasattr(kind, "__post_init__") or not all(_is_given(f) for f in fields(kind)):
            return NotImplemented
        return kind, tuple(getattr(obj, f.name) for f in fields(kind))


def _is_given(field: Field[Any]) -> bool:
    return field.init and not field.kw_only


def _write(file: Path, found: tuple[Any]) -> None:
    written = io.BytesIO()
    _Plainly(written, protocol=pickle.HIGHEST_PROTOCOL).dump(found)
    payload = written.getvalue()
    with contextlib.suppress(OSError), tempfile.NamedTemporaryFile(dir=file.parent, delete=False) as part:
        part.write(_digest(payload) + payload)
        part.close()
        Path(part.name).replace(file)
