"""The columns of the table: one row for a recipe in a kitchen, nested as the JSON of a converted recipe is.

Column by column:
  recipe, kitchen      the file, as it lies in the folder, and the kitchen's name: together the key
  elevation_m, units   where the kitchen stands [m], and which units stand first in its words
  title, style, style_sure, from_elevation_m, to_elevation_m (to 0.1 m), yield_value, yield_unit
  oven_from_c, oven_to_c, oven_low_c, oven_high_c   the main setting [degC]; null where there is none
  rules                the ids of the rules behind the changes, each once
  changes, cautions, ingredients, steps, unread     lists, as `simmerline convert --json` has them
  text                 the recipe to read; only where it was asked for
"""

from __future__ import annotations

from typing import Any

import pyarrow as pa

TEXT, NUMBER, WORDS = pa.string(), pa.float64(), pa.list_(pa.string())


def _struct(**fields: pa.DataType) -> pa.StructType:
    return pa.struct([pa.field(name, kind) for name, kind in fields.items()])


FIGURE = _struct(value=NUMBER, unit=TEXT)
CHANGE = pa.struct(
    [
        ("what", TEXT), ("way", TEXT), ("at", TEXT), ("from", FIGURE),
        ("to", _struct(value=NUMBER, low=NUMBER, high=NUMBER, unit=TEXT)),
        ("rule", TEXT), ("because", TEXT), ("sources", WORDS),
    ]
)  # fmt: skip
CAUTION = _struct(level=TEXT, text=TEXT, sources=WORDS)
INGREDIENT = _struct(
    line=TEXT, component=TEXT, item=TEXT, amount=NUMBER, amount_high=NUMBER, unit=TEXT, mass_g=NUMBER,
    to=_struct(amount=NUMBER, unit=TEXT, mass_g=NUMBER),
)  # fmt: skip
STEP = _struct(
    text=TEXT, to=TEXT,
    times=pa.list_(_struct(low_min=NUMBER, high_min=NUMBER, to_low_min=NUMBER, to_high_min=NUMBER, what=TEXT)),
    temperatures=pa.list_(_struct(c=NUMBER, to_c=NUMBER, what=TEXT)),
)  # fmt: skip
KEY = [("recipe", TEXT), ("kitchen", TEXT)]
CONVERSION = [
    ("elevation_m", NUMBER), ("units", TEXT), ("title", TEXT), ("style", TEXT), ("style_sure", NUMBER),
    ("from_elevation_m", NUMBER), ("to_elevation_m", NUMBER), ("yield_value", NUMBER), ("yield_unit", TEXT),
    ("oven_from_c", NUMBER), ("oven_to_c", NUMBER), ("oven_low_c", NUMBER), ("oven_high_c", NUMBER),
    ("rules", WORDS), ("changes", pa.list_(CHANGE)), ("cautions", pa.list_(CAUTION)),
    ("ingredients", pa.list_(INGREDIENT)), ("steps", pa.list_(STEP)), ("unread", WORDS),
]  # fmt: skip
AS_TEXT = ("text", TEXT)
ERRORS = pa.schema(
    [
        ("kind", TEXT), ("recipe", TEXT), ("kitchen", TEXT), ("line", pa.int64()), ("tries", pa.int64()),
        ("problem", TEXT),
    ]
)  # fmt: skip


def conversions(with_text: bool) -> pa.Schema:
    """The columns of a conversion, before kitchens share it: all but the key."""
    return pa.schema([*CONVERSION, AS_TEXT] if with_text else CONVERSION)


def pairs(with_text: bool) -> pa.Schema:
    """The columns of the table."""
    return pa.schema([*KEY, *conversions(with_text)])


def as_row(contract: dict[str, Any], elevation_m: float, units: str) -> dict[str, Any]:
    """One conversion as a row. contract: as `convert --json` gives it, its text left out or not"""
    oven, yields = contract["oven"] or {}, contract["yields"] or {}
    return {
        **{name: contract[name] for name in ("changes", "cautions", "ingredients", "steps", "unread", "title")},
        **{f"oven_{name}": oven.get(name) for name in ("from_c", "to_c", "low_c", "high_c")},
        "elevation_m": elevation_m,
        "units": units,
        "style": contract["style"]["id"],
        "style_sure": contract["style"]["sure"],
        "from_elevation_m": contract["from_elevation_m"],
        "to_elevation_m": contract["to_elevation_m"],
        "yield_value": yields.get("value"),
        "yield_unit": yields.get("unit"),
        "rules": list(dict.fromkeys(change["rule"] for change in contract["changes"])),
        "text": contract.get("text"),
    }
