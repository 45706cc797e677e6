"""The one sentence that opens a reply about a time."""

from __future__ import annotations

from rules.book import Case
from rules.model import Figure
from rules.say import duration_span
from rules.tables import read_toml

# what nobody calls simmered or poached
NO_GERUND = ("popcorn", "custard", "sauce")


def takes(case: Case, method: str, figures: tuple[Figure, Figure]) -> str:
    """The headline of a time: "Roast chicken takes 70 to 110 min at 7,000 ft, as at sea level."."""
    here, base = (duration_span(f.low or f.value, f.high or f.value) for f in figures)
    said = doing(case, method)
    takes = "take" if said.startswith(case.food.capitalize()) and plural(case.food) else "takes"
    against = f"against {base} at {case.baseline}" if here != base else f"as at {case.baseline}"
    return f"{said} {takes} {here} at {case.place}" + (f", {against}." if case.moved else ".")


def plural(words: str) -> bool:
    """Whether a dish is spoken of in the plural.

    >>> plural("baked potatoes"), plural("swiss"), plural("roast chicken")
    (True, False, False)
    """
    return words.endswith("s") and not words.endswith(("ss", "us"))


def doing(case: Case, method: str) -> str:
    """What is done to the dish, without saying it twice: "Roasting prime rib", but "Roast chicken".

    The method's words are those of data/lexicon/methods.toml.
    """
    row = next(r for r in read_toml("lexicon/methods.toml")["method"] if r["id"] == method)
    food = case.request.dish
    if food is None:
        return str(row["gerund"]).capitalize()
    named = any(f" {word} " in f" {food} " for word in row["heard_as"])
    named = named or case.dish_class in NO_GERUND
    said = food if named else f"cooking {food} sous vide" if method == "sous_vide" else f"{row['gerund']} {food}"
    return said[:1].upper() + said[1:]
