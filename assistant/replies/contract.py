"""The JSON contract of an answer: `simmerline ask --json`, one object a line with `--jsonl`."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import asdict
from typing import Any

from rules.model import Answer, Caution, Request

SCHEMA = 1


def as_json(answer: Answer) -> dict[str, Any]:
    """The answer as plain JSON values, keys in the order of the contract."""
    return {
        "schema": SCHEMA,
        "heard": heard(answer.request),
        "missing": list(answer.missing),
        "figures": [
            {k: f[k] for k in ("id", "label", "value", "low", "high", "unit", "sea_level")}
            for f in map(asdict, answer.figures)
        ],
        "steps": list(answer.steps),
        "because": [{"rule": b.rule, "text": b.text, "sources": list(b.sources)} for b in answer.because],
        "cautions": cautions(answer.cautions),
        "text": answer.text,
        "spoken": answer.spoken,
        **({"parts": [as_json(part) for part in answer.parts]} if answer.parts else {}),
    }


def cautions(of: Iterable[Caution]) -> list[dict[str, Any]]:
    """Cautions as plain JSON values, for every contract."""
    return [{"level": c.level, "text": c.text, "sources": list(c.sources)} for c in of]


def heard(request: Request) -> dict[str, Any]:
    """What was understood."""
    quantity = request.quantity
    return {
        "text": request.text,
        "topic": request.topic,
        "dish": request.dish,
        "dish_class": request.dish_class,
        "method": request.method,
        "elevation_m": None if request.elevation_m is None else round(request.elevation_m, 1),
        "elevation_from": request.elevation_from,
        "from_elevation_m": None if request.from_elevation_m is None else round(request.from_elevation_m, 1),
        "time_min": request.planned_min if request.time_min is None else request.time_min,
        "elapsed_min": request.elapsed_min,
        "temperature_c": None if request.temperature_c is None else round(request.temperature_c, 2),
        "quantity": {"value": quantity.value, "unit": quantity.unit} if quantity else None,
        "portions": request.portions,
    }
