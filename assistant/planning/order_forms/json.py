"""The JSON contract of an order: `simmerline order --format json`."""

from __future__ import annotations

import json
from typing import Any

from assistant.planning.forms import Form
from assistant.planning.order_forms.text import as_text
from assistant.planning.order_sheet import Line, Served, Sheet
from assistant.planning.order_view import name_of
from assistant.replies.sentences import worded
from rules.model import Units

SCHEMA = 1


def as_json(sheet: Sheet, units: Units = "us") -> dict[str, Any]:
    """The order as plain JSON values: masses in grams, volumes in millilitres, times in minutes, energy in kJ."""
    return {
        "schema": SCHEMA,
        "title": sheet.title,
        "elevation_m": round(sheet.elevation_m, 1),
        "covers": sheet.covers,
        "service": sheet.service,
        "margin": sheet.margin,
        "lines": [_line(line) for line in sheet.lines],
        "loose": [
            {"item": one.item, "amount": one.amount, "unit": one.unit, "dishes": list(one.dishes)}
            for one in sheet.loose
        ],
        "dishes": [_served(one) for one in sheet.served],
        "fuel": {
            "energy_kj": round(sheet.energy_kj),
            "gas_kg": round(sheet.gas_kg, 3),
            "electricity_kwh": round(sheet.electricity_kwh, 2),
            "basis": ["common-practice", "computed"],
        },
        "faults": [worded(fault, units) for fault in sheet.faults],
        "notes": [worded(note, units) for note in sheet.notes],
        "text": as_text(sheet, units),
    }


def _line(line: Line) -> dict[str, Any]:
    packs = line.packs
    return {
        "item": line.item,
        "bought_as": name_of(line),
        "store": line.store,
        "need_g": round(line.need_g, 1),
        "with_margin_g": round(line.wanted_g, 1),
        "on_hand_g": round(line.on_hand_g, 1),
        "order_g": round(line.order_g, 1),
        "pack": line.kept.pack or None,
        "pack_g": line.kept.grams,
        "split_g": line.kept.split_g,
        "packs": packs.full if packs else None,
        "splits": packs.splits if packs else None,
        "packed_g": packs.grams if packs else None,
        "for": [
            {"dish": part.dish, "grams": round(part.grams, 1), "at_baseline_g": round(part.there_g, 1)}
            for part in line.parts
        ],
    }


def _served(one: Served) -> dict[str, Any]:
    return {
        "dish": one.name,
        "way": one.way,
        "covers": one.covers,
        "cooked_g": None if one.cooked_g is None else round(one.cooked_g),
        "time_min": one.here_min,
        "sea_level_min": one.there_min,
        "water_ml": round(one.water_ml),
        "extra_water_ml": round(one.extra_ml),
        "energy_kj": round(one.energy_kj),
        "needs_recipe": one.made,
        "source": one.source or None,
    }


def _written(sheet: Sheet, units: Units) -> bytes:
    return (json.dumps(as_json(sheet, units), ensure_ascii=False, indent=2) + "\n").encode()


FORM = Form(ending=".json", write=_written)
