"""No test touches the memory of the person who runs it."""

import os
from collections.abc import Iterator

import pytest

# run by hand, beside voices that nobody else needs
collect_ignore_glob = ["bench/voice*.py", "bench/fuzz.py"]


@pytest.fixture(scope="session", autouse=True)
def nobodys_memory(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """A database of this run's own, empty where a test does not fill it."""
    before = os.environ.get("SIMMERLINE_DB")
    os.environ["SIMMERLINE_DB"] = f"sqlite:///{tmp_path_factory.mktemp('memory')}/simmerline.db"
    yield
    if before is None:
        del os.environ["SIMMERLINE_DB"]
    else:
        os.environ["SIMMERLINE_DB"] = before


@pytest.fixture
def database(tmp_path: object, monkeypatch: pytest.MonkeyPatch) -> str:
    """The URL of an empty database for one test, which SIMMERLINE_DB names."""
    url = f"sqlite:///{tmp_path}/simmerline.db"
    monkeypatch.setenv("SIMMERLINE_DB", url)
    return url
