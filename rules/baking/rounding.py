"""Roundings that a cook can measure: an eighth of a teaspoon, a tablespoon, a gram."""

from __future__ import annotations

from fractions import Fraction

from rules.physics.units import G_PER_LB, ML_PER_CUP, ML_PER_TBSP, ML_PER_TSP, round_to

ML = {
    "tsp": ML_PER_TSP, "tbsp": ML_PER_TBSP, "fl_oz": ML_PER_CUP / 8, "cup": ML_PER_CUP, "pt": 2 * ML_PER_CUP,
    "qt": 4 * ML_PER_CUP, "gal": 16 * ML_PER_CUP, "stick": ML_PER_CUP / 2,
    "ml": 1.0, "cl": 10.0, "dl": 100.0, "l": 1000.0,
}  # fmt: skip
G = {"g": 1.0, "kg": 1000.0, "mg": 0.001, "oz": G_PER_LB / 16, "lb": G_PER_LB}
# The smallest spoon of a set [tsp]: what has no spoon of its own is measured with one more.
SMALLEST_SPOON = 0.125
PACKETS = ("packet", "envelope")
PACKET_YEAST_TSP = 2.25


METRIC = ("g", "kg", "mg", "ml", "cl", "dl", "l", "percent")
SMALL = 0.1
COARSE = {"cup": 0.25, "ml": 50.0, "g": 50.0, "l": 0.05, "kg": 0.05}
QUARTS = ("qt", "gal")


def number(value: float, digits: int = 2) -> str:
    """A number without useless zeros, thousands with a comma.

    >>> number(7000), number(1.50), number(0.125, 3)
    ('7,000', '1.5', '0.125')
    """
    text = f"{round(value, digits) + 0.0:,.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


# teaspoons that are never told in larger spoons
IN_TSP = "in_tsp"


def step_of(amount: float, unit: str | None, *, fine: bool = False, coarse: bool = False) -> float:
    """The finest step [in the unit] worth measuring.

    fine: leavening, yeast and salt, where a little is much; coarse: the liquid of a pot, where a little is nothing

    >>> step_of(2, "tsp"), step_of(0.25, "tsp"), step_of(1, "cup"), step_of(7.0, "g", fine=True), step_of(220, "g")
    (0.125, 0.0625, 0.0625, 0.1, 1.0)
    """
    if coarse and unit in COARSE:
        return COARSE[unit]
    if unit == "tsp":
        return 0.125 if amount > 0.3 else 0.0625
    if unit == "tbsp":
        return 0.5 if amount >= 1 else 0.25
    if unit == "cup":
        return 0.25 if amount >= 8 else 0.125 if amount >= 4 else 1 / 16 if amount >= 0.5 else 1 / 32
    if unit == "fl_oz":
        return 0.25
    if unit == "g":
        return 0.1 if fine and amount < 10 else 1.0
    if unit == "ml":
        return 1.0 if amount < 100 else 5.0
    if unit == "oz":
        return 0.25 if amount >= 2 else 0.05
    if unit == "lb":
        return 1 / 32
    if unit in ("kg", "l"):
        return 0.001 if fine else 0.005
    if unit == "percent":
        return 0.05 if fine else 0.5
    if unit == "dl":
        return 0.1
    return 0.25


def kitchen(amount: float, unit: str | None, *, fine: bool = False, coarse: bool = False) -> float:
    """The amount rounded to what a cook can measure, never to nothing.

    >>> kitchen(1.5833, "tsp"), kitchen(0.19, "tsp"), kitchen(0.01, "tsp"), kitchen(5.63, "g", fine=True)
    (1.625, 0.1875, 0.0625, 5.6)
    """
    step = step_of(amount, unit, fine=fine, coarse=coarse)
    return max(round_to(amount, step), step) if amount > 0 else 0.0


def same_measure(amount: float, unit: str | None, *, fine: bool = False) -> tuple[float, str | None]:
    """An amount in the unit a cook would reach for: a part of a packet of yeast, or of a spoon of soda, in teaspoons,
    quarts in cups, and little of a kilogram or litre in grams or millilitres.

    >>> same_measure(0.75, "packet"), same_measure(2.5, "tbsp", fine=True), same_measure(1.5, "cup")
    ((1.6875, 'tsp'), (7.5, 'tsp'), (1.5, 'cup'))
    """
    if unit in PACKETS:
        return amount * PACKET_YEAST_TSP, "tsp"
    if unit == "tbsp" and fine:
        return amount * 3, "tsp"
    if unit in ("pt", "qt", "gal"):
        return amount * ML[unit] / ML["cup"], "cup"
    if unit in ("kg", "l") and amount < SMALL:
        return amount * 1000, "g" if unit == "kg" else "ml"
    return amount, unit


def in_unit(amount: float, unit: str | None, other: str | None) -> float | None:
    """An amount of one unit in another of the same kind; None where they are of different kinds.

    >>> in_unit(3, "tsp", "tbsp"), in_unit(1, "cup", "g") is None
    (1.0, True)
    """
    if unit == other:
        return amount
    if unit in PACKETS and other == "tsp":
        return amount * PACKET_YEAST_TSP
    for sizes in (ML, G):
        if unit in sizes and other in sizes:
            return amount * sizes[unit] / sizes[other]
    return None


def fraction(value: float) -> str:
    """A number as a recipe writes it.

    >>> fraction(1.625), fraction(0.75), fraction(2), fraction(0.333333), fraction(1.1875)
    ('1 5/8', '3/4', '2', '1/3', '1 3/16')
    """
    whole = int(value + 1e-9)
    rest = value - whole
    if rest < 0.005:
        return str(whole)
    near = Fraction(rest).limit_denominator(16)
    if near.denominator not in (2, 3, 4, 8, 16) or abs(float(near) - rest) > 0.005:
        return number(value)
    return f"{whole} {near}" if whole else str(near)


def measure(amount: float, unit: str | None, *, high: float | None = None, quarts: bool = False) -> str:
    """An amount in words, cups with spoons beside them where the cup has no mark for it.

    unit: IN_TSP for teaspoons that stay teaspoons, where the cook counts in them
    quarts: whether large amounts of cups are told in quarts

    >>> measure(1.25, "cup"), measure(0.875, "cup"), measure(1.1875, "cup"), measure(0.0625, "tsp"), measure(281, "g")
    ('1 1/4 cups', '3/4 cup plus 2 tbsp', '1 cup plus 3 tbsp', '1/16 tsp', '281 g')
    >>> measure(6, "tbsp", high=8), measure(0.875, "lb", high=1), measure(2, "tsp", high=3)
    ('6 to 8 tbsp', '14 oz to 1 lb', '2 tsp to 1 tbsp')
    >>> measure(3.375, "tsp"), measure(0.46875, "cup"), measure(16.75, "cup", quarts=True)
    ('1 tbsp plus 1/4 tsp plus 1/8 tsp', '7 1/2 tbsp', '4 qt plus 3/4 cup')
    >>> measure(0.875, "tsp"), measure(0.75, "tsp"), measure(0.125, "tsp")
    ('3/4 tsp plus 1/8 tsp', '3/4 tsp', '1/8 tsp')
    """
    if high is not None and high > amount:
        first, last = measure(amount, unit), measure(high, unit)
        words = [f" {_unit_word(unit, count)}" for count in (1, 2)] if unit else []
        alike = " plus " not in first and last.endswith(tuple(words))
        stem = next((first.removesuffix(word) for word in words if alike and first.endswith(word)), first)
        return f"{stem} to {last}"
    if unit == "cup" and quarts and amount >= 8:
        whole, rest = divmod(round_to(amount, 1 / 16), 4)
        return f"{number(whole, 0)} qt" + (f" plus {_cups(rest)}" if rest else "")
    if unit == IN_TSP:
        return _in_one_unit(amount, "tsp")
    if unit == "tsp" and amount >= 3:
        spoons, rest = divmod(round_to(amount, 1 / 16), 3)
        return f"{number(spoons, 0)} tbsp" + (f" plus {_in_one_unit(rest, unit)}" if rest else "")
    if unit == "lb" and amount * 4 % 1:
        pounds, rest = divmod(round_to(amount * 16, 0.5), 16)
        return (f"{number(pounds, 0)} lb " if pounds else "") + f"{fraction(rest)} oz"
    if unit == "tbsp" and 0 < amount < 1:
        return measure(amount * 3, "tsp")
    return _in_one_unit(amount, unit)


def _in_one_unit(amount: float, unit: str | None) -> str:
    if unit == "cup":
        return _cups(amount)
    if (
        unit == "tsp"
        and abs(round(amount * 8) - amount * 8) < 0.01
        and round(amount * 8) % 2
        and amount > SMALLEST_SPOON
    ):
        return f"{fraction(amount - SMALLEST_SPOON)} tsp plus {fraction(SMALLEST_SPOON)} tsp"
    text = number(amount, 3) if unit in METRIC else fraction(amount)
    if unit == "percent":
        return f"{text}%"
    word = _unit_word(unit, amount)
    return f"{text} {word}" if word else text


def _unit_word(unit: str | None, amount: float) -> str:
    if unit is None:
        return ""
    if unit == "fl_oz":
        return "fl oz"
    if unit == IN_TSP:
        return "tsp"
    whole_words = ("cup", "stick", "packet", "envelope")
    return f"{unit}s" if unit in whole_words and amount > 1 else unit


def _cups(amount: float) -> str:
    whole = int(amount + 1e-9)
    spoons = (amount - whole) * 16
    marks = (0.0, 4.0, 16 / 3, 8.0, 32 / 3, 12.0)
    if not whole and spoons < 7.95 and not any(m - 0.05 <= spoons < m + 0.95 for m in marks[1:3]):
        return measure(round_to(spoons, 0.5), "tbsp")
    mark = max(m for m in marks if m <= spoons + 0.05)
    if abs(spoons - mark) > 0.05 and mark not in (0.0, 4.0, 8.0, 12.0):
        mark = max(m for m in (0.0, 4.0, 8.0, 12.0) if m <= spoons)
    left = round_to(spoons - mark, 0.5)
    cups = whole + mark / 16
    if not left:
        return f"{fraction(cups)} {'cups' if cups > 1 else 'cup'}"
    spoon = measure(left, "tbsp")
    return f"{fraction(cups)} {'cups' if cups > 1 else 'cup'} plus {spoon}" if cups else spoon
