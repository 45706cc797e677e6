"""No test touches the memory of the person who runs it."""

import os
from collections.abc import Iterator

import pytest

# run by hand, beside voices and libraries that nobody else needs
collect_ignore_glob = ["bench/voice*.py", "bench/tables*.py", "bench/fuzz.py"]


@pytest.fixture(scope="session", autouse=True)
def nobodys_memory(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """A database and a cache of this run's own, the database empty where a test does not fill it."""
    own = {
        "SIMMERLINE_DB": f"sqlite:///{tmp_path_factory.mktemp('memory')}/simmerline.db",
        "SIMMERLINE_CACHE": str(tmp_path_factory.mktemp("cache")),
    }
    before = {name: os.environ.get(name) for name in own}
    os.environ.update(own)
    yield
    for name, value in before.items():
        if value is None:
            del os.environ[name]
        else:
            os.environ[name] = value


@pytest.fixture
def database(tmp_path: object, monkeypatch: pytest.MonkeyPatch) -> str:
    """The URL of an empty database for one test, which SIMMERLINE_DB names."""
    url = f"sqlite:///{tmp_path}/simmerline.db"
    monkeypatch.setenv("SIMMERLINE_DB", url)
    return url
