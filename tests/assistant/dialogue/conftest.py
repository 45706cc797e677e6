"""Doors that several tests of conversations knock at."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from assistant.cli.app import create_app


@pytest.fixture
def by_batch(tmp_path: Path) -> Callable[..., dict[str, Any]]:
    """The answer of a file of questions to one question, after the utterances before it."""

    def ask(text: str, context: tuple[str, ...] = ()) -> dict[str, Any]:
        lines = tmp_path / "questions.jsonl"
        lines.write_text(json.dumps({"text": text, "context": list(context)}) + "\n", encoding="utf-8")
        answer: dict[str, Any] = json.loads(CliRunner().invoke(create_app(), ["ask", "--jsonl", str(lines)]).stdout)
        return answer

    return ask
