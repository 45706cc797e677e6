"""Whether a time or a temperature of the cook's own will do here: yes or no, with what it takes."""

from __future__ import annotations

from rules.forms.enough import readings, settings, times

RULES = (
    readings.cold, readings.outdoors, readings.core, readings.reading, readings.bath, readings.hold, settings.setting,
    readings.drink,
    readings.boil, readings.stage, settings.gauge_does, times.time,
)  # fmt: skip
