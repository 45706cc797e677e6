"""Stores to test on: SQLite always, PostgreSQL where there is one."""

import os
import pwd
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import MetaData, make_url, text

from assistant.store import open_store
from assistant.store.database import Store, make_engine

BINARIES = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), reverse=True)


@pytest.fixture(scope="session")
def cluster() -> Iterator[str]:
    """The URL of a PostgreSQL database: the one SIMMERLINE_TEST_POSTGRES names, else a throw-away cluster."""
    if url := os.environ.get("SIMMERLINE_TEST_POSTGRES"):
        yield url
        return
    pytest.importorskip("psycopg", reason="psycopg is not installed")
    initdb = BINARIES[0] if BINARIES else shutil.which("initdb")
    if not initdb:
        pytest.skip("no PostgreSQL: neither SIMMERLINE_TEST_POSTGRES nor an initdb on this machine")
    user = "nobody" if os.geteuid() == 0 else pwd.getpwuid(os.geteuid()).pw_name
    folder = Path(tempfile.mkdtemp(prefix="pg-", dir="/tmp"))
    if os.geteuid() == 0:
        shutil.chown(folder, user)
    run = {"check": True, "capture_output": True, "cwd": folder} | ({"user": user} if os.geteuid() == 0 else {})
    here, bin = str(folder / "data"), Path(initdb).parent
    options = f"-c listen_addresses='' -c unix_socket_directories={folder} -c fsync=off"
    subprocess.run([bin / "initdb", "-D", here, "-A", "trust", "-U", "cook", "-N"], **run)
    # the log goes to a file: a server that holds a pipe of ours open would keep us waiting
    subprocess.run([bin / "pg_ctl", "-D", here, "-o", options, "-l", str(folder / "log"), "-w", "start"], **run)
    try:
        yield f"postgresql+psycopg://cook@/postgres?host={folder}"
    finally:
        subprocess.run([bin / "pg_ctl", "-D", here, "-m", "immediate", "stop"], **run)
        shutil.rmtree(folder, ignore_errors=True)


@pytest.fixture
def postgres(cluster: str) -> str:
    """The URL of a PostgreSQL database without tables."""
    empty(cluster)
    return cluster


@pytest.fixture(params=["sqlite", "postgres"])
def store(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Store]:
    """An empty store of each kind."""
    sqlite = f"sqlite:///{tmp_path}/simmerline.db"
    url = sqlite if request.param == "sqlite" else request.getfixturevalue("postgres")
    opened = open_store(url)
    yield opened
    opened.close()


def empty(url: str) -> None:
    """Drop every table; a transaction that a test left open is an error, not a wait."""
    assert make_url(url).get_backend_name() == "postgresql"
    engine = make_engine(url)
    tables = MetaData()
    with engine.begin() as connection:
        connection.execute(text("SET lock_timeout = '5s'"))
        tables.reflect(connection)
        tables.drop_all(connection)
    engine.dispose()
