"""How the server is set up; handed to every worker as it is."""

from __future__ import annotations

import socket
from dataclasses import dataclass
from ipaddress import ip_address

from assistant.serving.watched import UNWATCHED, Watch

LOCAL_NAMES = ("localhost", "127.0.0.1", "[::1]")


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """What the server is started with.

    secret: signs cookies and forms; token: what has to be told to come in, "" where nothing
    origins: pages elsewhere that may call the API; names: further names that the server is called by
    certificate, key: files for https, "" for http; watch: what whoever runs it wants to see
    """

    secret: bytes
    host: str = "127.0.0.1"
    port: int = 8080
    token: str = ""
    origins: tuple[str, ...] = ()
    names: tuple[str, ...] = ()
    certificate: str = ""
    key: str = ""
    watch: Watch = UNWATCHED

    @property
    def secure(self) -> bool:
        """Whether it speaks https."""
        return bool(self.certificate)

    @property
    def is_local(self) -> bool:
        """Whether only this machine can reach it."""
        return self.host in ("localhost", "127.0.0.1", "::1")

    @property
    def address(self) -> str:
        """Where a browser on this machine finds it."""
        host = "localhost" if self.host in ("0.0.0.0", "::", "127.0.0.1", "::1") else self.host
        return f"http{'s' if self.secure else ''}://{host}:{self.port}/"

    def answers_to(self, host: str) -> bool:
        """Whether a Host header names this server.

        A page elsewhere can point a name of its own at this machine, and would then read what is said here.
        """
        name = host.rpartition(":")[0] if host.rpartition(":")[2].isdecimal() else host
        name = name.lower()
        if name in LOCAL_NAMES or name in self.names:
            return True
        return not self.is_local and (_is_address(name) or name in _own_names())


def _is_address(name: str) -> bool:
    try:
        ip_address(name.strip("[]"))
    except ValueError:
        return False
    return True


def _own_names() -> tuple[str, ...]:
    own = socket.gethostname().lower()
    return (own, f"{own.partition('.')[0]}.local")
