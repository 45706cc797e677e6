from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

HERE = Path(__file__).parent
SAMPLES: dict[str, dict[str, Any]] = tomllib.loads((HERE / "samples.toml").read_text(encoding="utf-8"))


def pytest_generate_tests(metafunc):
    """A test that asks for `sample` runs once a file of the samples folder."""
    if "sample" in metafunc.fixturenames:
        metafunc.parametrize("sample", SAMPLES.values(), ids=SAMPLES.keys())
    if "sample_path" in metafunc.fixturenames:
        paths = sorted((HERE / "samples").iterdir())
        metafunc.parametrize("sample_path", paths, ids=[p.name for p in paths])


@pytest.fixture
def listed_files():
    return {sample["file"] for sample in SAMPLES.values()}
