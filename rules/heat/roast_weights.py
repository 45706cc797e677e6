"""How long a bird or a joint takes in the oven by its weight, as the agency prints it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from rules.foods.dishes import Span, kin
from rules.model import Quantity, Request
from rules.physics.units import G_PER_LB, to_c
from rules.tables import read_csv

TABLE = "tables/roast_weights_usda-roasting-chart.csv"
LB = {"lb": 1.0, "lbs": 1.0, "pound": 1.0, "pounds": 1.0, "oz": 1 / 16, "kg": 1000 / G_PER_LB, "g": 1 / G_PER_LB}
HEAVIEST_LB = 60.0
# how far a weight may lie beside the printed ones, as a share of the nearer end
REACH = 1.5
# what the weight told is of, where it is the piece's own
OF_THE_PIECE = (None, "each")


@dataclass(frozen=True, slots=True)
class Band:
    """A printed band of weights [lb], its time from end to end [min] and the oven it is printed for [degC]."""

    state: str
    low_lb: float
    high_lb: float
    oven_c: float
    per_pound: bool
    low_min: float
    high_min: float
    source: str

    def away(self, lb: float) -> float:
        """How far a weight lies outside the band [lb]."""
        return max(0.0, self.low_lb - lb, lb - self.high_lb)

    def reaches(self, lb: float) -> bool:
        """Whether a weight is near enough for the band to tell anything of it."""
        return self.low_lb / REACH <= lb <= self.high_lb * REACH

    def minutes(self, lb: float) -> tuple[float, float]:
        """Shortest and longest time of a weight: by the pound, or along the band and half of it to either side."""
        if self.per_pound:
            return lb * self.low_min, lb * self.high_min
        half = (self.high_min - self.low_min) / 2
        middle = self.low_min + (lb - self.low_lb) / (self.high_lb - self.low_lb) * 2 * half
        return max(middle - half, middle / 2), middle + half


@cache
def _bands() -> dict[tuple[str, str], tuple[Band, ...]]:
    found: dict[tuple[str, str], tuple[Band, ...]] = {}
    for r in read_csv(TABLE).rows:
        band = Band(
            r["state"], float(r["low_lb"]), float(r["high_lb"]), to_c(float(r["oven_f"])), r["per"] == "pound",
            float(r["low_min"]), float(r["high_min"]), r["source"],
        )  # fmt: skip
        for method in r["method"].split():
            key = r["dish"], method
            found[key] = (*found.get(key, ()), band)
    return found


def listed(request: Request, method: str) -> tuple[Band, ...]:
    """The bands of a dish in the oven, those of its state where it was told; none for what is not printed."""
    own = next((_bands()[name, method] for name in kin(request.dish) if (name, method) in _bands()), ())
    told = tuple(_told(request))
    return tuple(band for band in own if band.state in told) or tuple(band for band in own if band.state != "stuffed")


def _told(request: Request) -> Iterable[str]:
    if request.stuffed:
        yield "stuffed"
    if request.precooked:
        yield "precooked"
    if "boneless" in request.packing:
        yield "boneless"
    if "with_bones" in request.packing:
        yield ""


def pounds(quantity: Quantity | None) -> float | None:
    """A weight in pounds; None where none was given, or none that is one piece.

    >>> round(pounds(Quantity(2, "kg")), 2), pounds(None)
    (4.41, None)
    """
    factor = LB.get(quantity.unit) if quantity else None
    weight = quantity.value * factor if quantity and factor else 0.0
    return weight if 0 < weight <= HEAVIEST_LB else None


def near(request: Request, method: str) -> tuple[Band, ...]:
    """The bands nearest to the weight that was told; none where none was, or none reaches it."""
    lb = pounds(request.quantity) if request.quantity_of in OF_THE_PIECE else None
    if lb is None or request.time_min is not None:
        return ()
    bands = [band for band in listed(request, method) if band.reaches(lb)]
    least = min((band.away(lb) for band in bands), default=0.0)
    return tuple(band for band in bands if band.away(lb) <= least)


def by_weight(request: Request, method: str) -> Span | None:
    """The time at sea level of a piece of the weight that was told [min], in the oven it is printed for.

    source: usda-roasting-chart

    >>> from rules.model import Quantity
    >>> by_weight(Request(dish="turkey", quantity=Quantity(13.0, "lb")), "roast").low_min
    180.0
    """
    bands, lb = near(request, method), pounds(request.quantity)
    if not bands or lb is None:
        return None
    ends = [band.minutes(lb) for band in bands]
    return Span(min(low for low, _ in ends), max(high for _, high in ends), bands[0].source)


def printed_oven_c(request: Request, method: str) -> float | None:
    """The oven that the time by weight is printed for [degC]; None where no weight tells the time."""
    bands = near(request, method)
    return bands[0].oven_c if bands else None
