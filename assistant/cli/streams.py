"""Where a command runs: its three streams and their encoding, and an end that shows nobody a traceback."""

from __future__ import annotations

import errno
import os
import sys
import warnings
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from typing import TextIO

from assistant.cli import exits
from assistant.errors import AssistantError, Noted
from assistant.mistakes import where
from rules.errors import RulesError

# whoever looks for a mistake of ours sets it
TRACEBACK_VARIABLE = "SIMMERLINE_TRACEBACK"
# standard streams by their numbers: how each is opened where it came closed; what nobody can see may not seem shown
CLOSED = (("stdin", "r", os.O_RDONLY), ("stdout", "w", os.O_RDONLY), ("stderr", "w", os.O_WRONLY))


def make_ready() -> None:
    """See to it that there are three streams that speak UTF-8, and that what is noted is shown in a line."""
    _speak_utf8()
    for number, (name, mode, flags) in enumerate(CLOSED):
        if getattr(sys, name) is None:
            setattr(sys, name, os.fdopen(_opened_as(number, flags), mode, encoding="utf-8", errors="replace"))
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="replace")
    warnings.showwarning = _show_warning


def _speak_utf8() -> None:
    """Begin again in UTF-8 where Python was told to take everything for ASCII: names and files would be torn."""
    if sys.getfilesystemencoding() in ("ascii", "646") and not sys.flags.utf8_mode:
        os.execv(sys.executable, [sys.executable, "-X", "utf8", *sys.orig_argv[1:]])


def _opened_as(number: int, flags: int) -> int:
    opened = os.open(os.devnull, flags)
    if opened == number:
        return opened
    with suppress(OSError):
        os.fstat(number)
        return opened
    os.dup2(opened, number)
    os.close(opened)
    return number


_default_show = warnings.showwarning


def _show_warning(
    message: Warning | str, category: type[Warning], filename: str, lineno: int, file: TextIO | None = None,
    line: str | None = None,
) -> None:  # fmt: skip
    if issubclass(category, Noted):
        _tell(str(message))
    else:
        _default_show(message, category, filename, lineno, file, line)


@contextmanager
def ended_kindly() -> Iterator[None]:
    """What a block did not foresee is said in one line, and the process ends with a code of exits.CODES."""
    try:
        try:
            yield
        finally:
            sys.stdout.flush()
    except KeyboardInterrupt:
        _end(exits.STOPPED)
    except BrokenPipeError:
        _end(exits.FAILED)
    except OSError as fault:
        if fault.errno != errno.EPIPE:
            _tell(exits.of_system(fault))
        _end(exits.FAILED)
    except Exception as fault:
        if os.environ.get(TRACEBACK_VARIABLE):
            raise
        _tell(str(fault) if isinstance(fault, AssistantError | RulesError) else stumbled(fault))
        _end(exits.FAILED)


def stumbled(fault: BaseException) -> str:
    """What is said of a mistake of ours: its kind, and where it was made."""
    return (
        f"stumbled over that ({where(fault)}). It is a mistake of simmerline, not of yours; {TRACEBACK_VARIABLE}=1 "
        "shows more of it to those who mend it"
    )


def _tell(message: str) -> None:
    with suppress(OSError, ValueError):
        print(f"simmerline: {message}", file=sys.stderr, flush=True)


def _end(code: int) -> None:
    """Leave, and let nothing that is still to be shown fail once more."""
    for stream in (sys.stdout, sys.stderr):
        try:
            stream.flush()
        except (OSError, ValueError):
            with suppress(OSError, ValueError):
                nowhere = os.open(os.devnull, os.O_WRONLY)
                os.dup2(nowhere, stream.fileno())
                os.close(nowhere)
    sys.exit(code)
