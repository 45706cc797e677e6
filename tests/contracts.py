"""JSON held against the contracts of data/schemas."""

from __future__ import annotations

import json
from functools import cache
from typing import Any

from jsonschema import Draft202012Validator, FormatChecker

from assistant.schemas import schema


@cache
def validator(name: str) -> Draft202012Validator:
    """What holds a JSON against the contract of a name."""
    return Draft202012Validator(schema(name), format_checker=FormatChecker())


def faults(name: str, value: Any) -> list[str]:
    """What is wrong with a JSON by the contract of a name, and where; figures that JSON cannot hold are a fault too."""
    sent = json.loads(json.dumps(value, allow_nan=False))
    return [f"{fault.json_path}: {fault.message[-200:]}" for fault in validator(name).iter_errors(sent)]
