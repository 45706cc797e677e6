"""What can go wrong in the rules, said so that a cook can put it right."""

from __future__ import annotations

from collections.abc import Iterable
from math import inf, isinf
from sys import float_info


class RulesError(Exception):
    """Root of every error the rules raise on purpose."""


class OutOfRange(RulesError, ValueError):
    """A figure outside the range for which a formula or table holds.

    name: what the figure is, in words
    value, low, high: the figure given, and the ends of the range [unit]
    unit: unit of the three
    hint: one sentence on what to do, may be empty

    >>> print(OutOfRange("elevation", 9000, -430, 5500, "m"))
    elevation is 9000 m, but must lie between -430 and 5500 m
    """

    def __init__(self, name: str, value: float, low: float, high: float, unit: str, hint: str = "") -> None:
        super().__init__(name, value, low, high, unit, hint)
        # a whole number may be too large to be written as another
        value = inf if value > float_info.max else -inf if value < -float_info.max else value
        self.name, self.value, self.low, self.high, self.unit, self.hint = name, value, low, high, unit, hint

    def __str__(self) -> str:
        if self.unit == "min":
            return self._in_hours()
        unit = f" {self.unit}" if self.unit else ""
        room = f"be at least {self.low:.7g}" if isinf(self.high) else f"lie between {self.low:.7g} and {self.high:.7g}"
        said = f"{self.name} is {self.value:.7g}{unit}, but must {room}{unit}"
        return f"{said}. {self.hint}" if self.hint else said

    def _in_hours(self) -> str:
        """A time that is too long, as a cook reads it."""
        long = f"{self.value / 60:.7g} hours" if self.value >= 60 else f"{self.value:.3g} min"
        most = f"at most {self.high / 60:.7g} hours" if self.high >= 60 else f"at most {self.high:.7g} min"
        said = f"{self.name} is {long}, but can be {most}"
        return f"{said}. {self.hint}" if self.hint else said


class UnknownWord(RulesError, LookupError):
    """A word that names nothing in a table or lexicon.

    kind: what the word should have named, such as "dish class"
    word: the word as given
    suggestions: known words near to it, nearest first

    >>> print(UnknownWord.among("dish class", "collagen", ["collagen_cut", "pasta"]))
    there is no dish class "collagen"; did you mean collagen_cut?
    """

    def __init__(self, kind: str, word: str, suggestions: tuple[str, ...] = ()) -> None:
        super().__init__(kind, word, suggestions)
        self.kind, self.word, self.suggestions = kind, word, suggestions

    @classmethod
    def among(cls, kind: str, word: str, known: Iterable[str]) -> UnknownWord:
        """The error for `word`, with the nearest of the `known` words as suggestions."""
        from difflib import get_close_matches

        return cls(kind, word, tuple(get_close_matches(word, sorted(known))))

    def __str__(self) -> str:
        said = f'there is no {self.kind} "{self.word}"'
        return f"{said}; did you mean {' or '.join(self.suggestions)}?" if self.suggestions else said


def within(name: str, value: float, low: float, high: float, unit: str, hint: str = "") -> float:
    """The value itself when low <= value <= high.

    raises: OutOfRange otherwise, also for a value that is not a number

    >>> within("Fourier number", 0.3, 0.2, 10, "")
    0.3
    """
    if not low <= value <= high:
        raise OutOfRange(name, value, low, high, unit, hint)
    return value
