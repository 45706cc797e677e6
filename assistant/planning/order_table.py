"""An order as a table of values, for CSV and XLSX: weights in one unit, so that a spreadsheet can add them up."""

from __future__ import annotations

from assistant.planning.order_sheet import Sheet
from assistant.planning.order_view import name_of, view
from rules.model import Units
from rules.physics.units import G_PER_LB

Value = str | float | int | None
# grams in the unit of the weights
UNIT_G: dict[Units, tuple[str, float]] = {"us": ("lb", G_PER_LB), "metric": ("kg", 1000.0)}


def columns(units: Units) -> tuple[str, ...]:
    """The heads of the columns."""
    unit = UNIT_G[units][0]
    return (
        "store",
        "item",
        f"need_{unit}",
        f"with_margin_{unit}",
        f"on_hand_{unit}",
        f"order_{unit}",
        "pack",
        f"pack_{unit}",
        "packs",
        f"split_{unit}",
        "splits",
        f"packed_{unit}",
        "order",
        "for",
    )


def rows(sheet: Sheet, units: Units) -> list[tuple[Value, ...]]:
    """A row an item, in the order of the sheet."""
    shown = [(store, row) for store, inside in view(sheet, units).stores for row in inside]
    one = UNIT_G[units][1]

    def weight(grams: float | None) -> float | None:
        return None if grams is None else round(grams / one, 3)

    return [
        (
            store, name_of(line, units), weight(line.need_g), weight(line.wanted_g), weight(line.on_hand_g),
            weight(line.order_g), line.kept.pack, weight(line.kept.grams), line.packs.full if line.packs else None,
            weight(line.kept.split_g), line.packs.splits if line.packs else None,
            weight(line.packs.grams) if line.packs else None, row.order, row.parts,
        )
        for line, (store, row) in zip(sheet.lines, shown, strict=True)
    ]  # fmt: skip
