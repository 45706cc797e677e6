"""What a rule said, in words: sentences of data/wording, filled with quantities in the asker's units.

The sentences are in the format of Project Fluent, a file a module that speaks; what the files of a folder share stands
in its shared.ftl, and may be said or named by each of them. A message may have several sentences, its attributes.
Functions for sentences: CAPITAL($food) opens a sentence, SMALL($line) lets one go on within another, COUNT($food) tells
whether what a dish is called is spoken of as one or as many, TEMP(165) is a temperature of a food that the sentence
itself names, in degF. For equations: FIXED($boil, 2) is the bare SI number of a quantity with so many digits,
GROUPED($pressure, 0) the same with its thousands set apart.
"""

from __future__ import annotations

from functools import cache, reduce
from typing import TYPE_CHECKING, Any

from assistant.replies import message_files
from assistant.replies.quantities import Say, duration, duration_span, exact_duration
from rules.baking.rounding import measure, number
from rules.physics.units import to_c
from rules.said import Listed, Measure, Said, Value

if TYPE_CHECKING:
    from fluent.runtime import FluentBundle
    from fluent.runtime.resolver import Pattern

    from rules.model import Units

LANGUAGE = "en"
LAST = {"and": "and", "or": "or", "commas": "comma", "semicolons": "semicolon", "sentences": "sentence", "then": "then"}
BETWEEN = LAST | {"and": "comma", "or": "comma"}
# Fluent takes up to 2,500 characters for a value, and a menu of a hundred dishes has more: the rest is put in later
LONGEST_VALUE, LONGEST_HEAD = 2000, 200
PRIVATE_USE = 0xF0000


class Written(str):
    """A quantity as this asker reads it, with its SI value for the equations."""

    si: float


class BadWording(ValueError):
    """A sentence that is not there, or is filled with what it does not name."""


class NoSuchSentence(BadWording):
    """A sentence that is not there."""


def worded(words: Value, units: Units) -> str:
    """The words of a sentence or a value, quantities in the asker's units.

    raises: BadWording where data/wording has no such sentence, or a value it needs is missing
    """
    return words if isinstance(words, str) else _text(words, units)


def _text(value: Value, units: Units) -> str:
    match value:
        case Said():
            return _filled(value, units)
        case Listed():
            return _joined(value, units)
        case Measure():
            return written(value, units)
    return str(value)


def _filled(said: Said, units: Units) -> str:
    values = {name: _value(value, units) for name, value in said.values}
    return sentence(said.file, said.id, values, units)


def _value(value: Value, units: Units) -> str | int | float:
    """A plain number stays one, so that a sentence can choose by it; all else is text."""
    if isinstance(value, Measure):
        quantity = Written(written(value, units))
        quantity.si = value.values[0]
        return quantity
    return value if isinstance(value, int | float) else _text(value, units)


def _joined(listed: Listed, units: Units) -> str:
    texts = [text for item in listed.items if (text := _text(item, units))]
    if not texts:
        return ""
    *first, last = texts
    if not first:
        return last
    before = reduce(lambda a, b: _join(BETWEEN[listed.join], a, b, units), first)
    return _join(LAST[listed.join], before, last, units)


def _join(by: str, a: str, b: str, units: Units) -> str:
    return sentence("common", by, {"a": a, "b": b}, units)


def written(value: Measure, units: Units) -> str:
    """A quantity as this asker reads it."""
    match value.kind:
        case "duration":
            return duration(*value.values)
        case "exact_duration":
            return exact_duration(*value.values)
        case "duration_span":
            return duration_span(*value.values)
        case "number":
            return number(value.values[0], int(value.by))
        case "fixed":
            return f"{value.values[0]:.{value.by}f}"
        case "measure":
            amount, *high = value.values
            return measure(amount, value.by, high=high[0] if high else None)
    text: str = getattr(Say(units), value.kind)(*value.values)
    return text


def sentence(file: str, id: str, values: dict[str, Any], units: Units, language: str = LANGUAGE) -> str:
    """One sentence of the wording with its values, on one line.

    id: of a message, or of one of its attributes: `spoiled_jar.why`
    raises: BadWording that names the file and the message
    """
    name, _, attribute = id.partition(".")
    where = f"data/wording/{language}/{file}.ftl: {id}"
    bundle = _bundle(file, units, language)
    if not bundle.has_message(name):
        bundle.add_resource(message_files.parsed(file, name, language))
    if (pattern := _pattern(bundle, name, attribute)) is None:
        raise NoSuchSentence(f"{where}: there is no such message")
    heads, rests = _in_two(values)
    text, errors = bundle.format_pattern(pattern, values | heads)
    if errors:
        raise BadWording(f"{where}: {errors[0]}")
    whole = reduce(lambda told, rest: told.replace(*rest), rests, str(text))
    return whole.replace("\n", " ")


def _in_two(values: dict[str, Any]) -> tuple[dict[str, str], list[tuple[str, str]]]:
    """The heads of values that are too long, each with a mark behind it; and what belongs in the place of each mark."""
    long = [name for name, value in values.items() if isinstance(value, str) and len(value) > LONGEST_VALUE]
    marks = {name: chr(PRIVATE_USE + at) for at, name in enumerate(long)}
    heads = {name: values[name][:LONGEST_HEAD] + mark for name, mark in marks.items()}
    return heads, [(mark, values[name][LONGEST_HEAD:]) for name, mark in marks.items()]


def _pattern(bundle: FluentBundle, name: str, attribute: str) -> Pattern | None:
    if not bundle.has_message(name):
        return None
    message = bundle.get_message(name)
    return message.attributes.get(attribute) if attribute else message.value


@cache
def _bundle(file: str, units: Units, language: str) -> FluentBundle:
    """The messages of a file that were wanted so far."""
    from fluent.runtime import FluentBundle

    functions: dict[str, Any] = {
        "CAPITAL": capital,
        "SMALL": small,
        "COUNT": count,
        "FIXED": fixed,
        "GROUPED": grouped,
        "TEMP": lambda temp_f: Say(units).temp(to_c(float(temp_f))),
    }
    return FluentBundle([language], functions=functions, use_isolating=False)


def capital(words: Any) -> str:
    """The words as they open a sentence.

    >>> capital("the liquid")
    'The liquid'
    """
    text = str(words)
    return text[:1].upper() + text[1:]


def small(words: Any) -> str:
    """A sentence as it goes on within another.

    >>> small("Use less sugar.")
    'use less sugar.'
    """
    text = str(words)
    return text[:1].lower() + text[1:]


def count(words: Any) -> str:
    """Whether a dish is spoken of as `one` or as `many`.

    >>> count("baked potatoes"), count("swiss"), count("roast chicken"), count("herbs in oil")
    ('many', 'one', 'one', 'many')
    """
    text = str(words).partition(" in ")[0]
    return "many" if text.endswith("s") and not text.endswith(("ss", "us")) else "one"


def fixed(quantity: Any, digits: Any) -> str:
    """The SI value of a quantity with just so many digits."""
    return f"{quantity.si:.{int(digits)}f}"


def grouped(quantity: Any, digits: Any) -> str:
    """The SI value of a quantity, its thousands set apart."""
    return f"{quantity.si:,.{int(digits)}f}"
