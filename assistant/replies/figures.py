"""One figure as a cook reads it."""

from __future__ import annotations

from assistant.replies.quantities import Say, duration, duration_span, exact_duration
from rules.baking.rounding import measure, number
from rules.model import Figure
from rules.physics.units import PSI_PER_PA

# times of safety, which are never rounded down
EXACT_TIMES = (
    "timer",
    "process_time", "added_time", "hold_time", "hold_at_", "boil_before_tasting", "sterilising_time",
    "pasteurised_after", "first_boil",
)  # fmt: skip
COMPARED_BELOW = "cook_time"  # its baseline has a line of its own
# what is measured out for a formula, in the words a cook measures by
SPOONED = ("tsp", "tbsp", "cup", "oz", "lb")
WEIGHED = ("g", "kg", "ml", "l")
SETTINGS = ("oven", "fat_temperature", "cooker_setting")


def value_text(figure: Figure, say: Say, value: float | None = None) -> str:
    """One value of a figure with its unit, the asker's system first."""
    amount = figure.value if value is None else value
    if figure.unit in SPOONED or (figure.unit in WEIGHED and figure.id.endswith("_to")):
        return measure(amount, figure.unit)
    match figure.unit:
        case "degC":
            return say.oven(amount) if figure.id.startswith(SETTINGS) else say.temp(amount)
        case "K":
            return say.temp_drop(amount)
        case "min":
            return exact_duration(amount) if figure.id.startswith(EXACT_TIMES) else duration(amount)
        case "ml":
            return say.volume(amount)
        case "g":
            return say.mass(amount)
        case "kg":
            return say.bulk(amount * 1000)
        case "l":
            return say.liquid(amount * 1000)
        case "m":
            return say.elevation(amount)
        case "psi":
            return say.gauge(amount / PSI_PER_PA)
        case "kPa":
            return say.pressure(amount * 1000)
        case "percent":
            return f"{number(amount, 0 if figure.id.endswith('_change') else 1)} %"
        case "factor":
            return f"×{number(amount)}"
        case "count":
            return number(amount, 0)
        case other:
            return f"{number(amount, 3)} {other}"


def span_text(figure: Figure, say: Say) -> str:
    """The range of a figure, or its value where it has none."""
    if figure.low is None or figure.high is None:
        return value_text(figure, say)
    if figure.unit == "min" and not figure.id.startswith(EXACT_TIMES):
        return duration_span(figure.low, figure.high)
    low, high = (value_text(figure, say, end) for end in (figure.low, figure.high))
    return low if low == high else f"{low} to {high}"


def figure_line(figure: Figure, say: Say) -> str:
    """The whole line: label, value, range and what it is at sea level."""
    parts = [value_text(figure, say)]
    if figure.low is not None and figure.high is not None:
        span = span_text(figure, say)
        parts = [f"about {parts[0]}, range {span}" if span != parts[0] else parts[0]]
    if figure.sea_level is not None and figure.id != COMPARED_BELOW:
        sea = value_text(figure, say, figure.sea_level)
        parts.append("as at sea level" if sea == value_text(figure, say) else f"at sea level {sea}")
    return f"{figure.label}: {'; '.join(parts)}"
