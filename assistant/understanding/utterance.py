"""One utterance, read once: what is said around a recipe that was pasted, and the recipe set apart."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from spacy.tokens import Doc

from assistant.reading import elevation_mentions
from assistant.reading.text import LONGEST, clean
from assistant.reading.tokens import norms
from assistant.understanding import bake_subject, what_is_in_it
from assistant.understanding.complaints import TROUBLE
from assistant.understanding.pipeline import read_clean
from assistant.understanding.request import Hearing, hear
from rules.catalogue import marked
from rules.model import Amount, Kitchen, Request, Unused
from rules.said import number, sentences

if TYPE_CHECKING:
    from assistant.recipes.pasted import Pasted

say = sentences("understanding/utterance")

# a recipe comes in lines, behind a colon, or machine-made
CONVERT = "convert_recipe"
BAKE = "bake_adjust"
AMOUNT_FORMS = frozenset(("how_much", "more"))
RECIPE_SIGNS = ("\n", ":", "{", "[", "<")


@dataclass(frozen=True, slots=True)
class Utterance:
    """What one utterance says by itself. text: as it came; doc: of what is said around a recipe; hearing: of it all"""

    text: str
    doc: Doc
    hearing: Hearing


def listen(text: str, kitchen: Kitchen, awaited: str | None = None) -> Utterance:
    """Read an utterance; of a very long one the beginning, and a note that says so.

    awaited: the piece that was asked for, a word of rules.model.MISSING_WORDS
    """
    found = _pasted(text, awaited == "recipe")
    cleaned = clean(found.question if found else text)
    doc = read_clean(cleaned)
    hearing = hear(doc, kitchen)
    if found:
        recipe = with_recipe(hearing, text, found.recipe, alone=not found.question)
        if recipe.request.topic == TROUBLE:
            recipe = replace(recipe, request=with_amounts(recipe.request, text, found))
        return Utterance(text, doc, placed(recipe, text, kitchen))
    outright = bake_subject.asked_outright(doc) if hearing.request.topic in marked("of_a_formula") else None
    asked_of_it = (
        outright is not None and outright == hearing.request.subject and "convert" not in hearing.request.forms
    )
    of_one = asks_of_one(hearing.request) or hearing.request.rise_min is not None or asked_of_it
    of_all = hearing.request.topic in marked("of_a_formula") and not of_one
    formula = _told(text) if of_all else None
    if formula:
        return Utterance(text, doc, with_recipe(hearing, text, _titled(formula.recipe, hearing), alone=True))
    hearing = asked_of_what_is_told(doc, hearing) if of_all else hearing
    if hearing.request.topic == TROUBLE and any(char.isdigit() for char in text):
        hearing = replace(hearing, request=with_amounts(hearing.request, text))
    kept = text[: len(cleaned.text) + 1] if cleaned.dropped else text
    return Utterance(text, doc, replace(hearing, request=replace(capped(hearing.request, cleaned.dropped), text=kept)))


def asked_of_what_is_told(doc: Doc, hearing: Hearing) -> Hearing:
    """A recipe that is to be converted, of which one figure is told and no more: it is asked about that.

    One ingredient with its amount is asked of the bake, one time of a pot of the pot.
    """
    now = hearing.request
    if now.topic != CONVERT or now.recipe:
        return hearing
    from rules.baking.styles import is_a, style_of

    subject = hearing.subject_for(BAKE)
    named = {found.id for found in doc._.found if found.kind == "ingredient"}
    if now.quantity is not None and subject in what_is_in_it.roles() and named == {subject}:
        return replace(hearing.about(BAKE, subject=subject), elliptical=False)
    pot = now.dish is not None and not is_a(style_of(now.dish_class or ""), "baked")
    timed = any(measure.kind == "time" for measure in doc._.measures)
    return replace(hearing.about("time", subject=None), elliptical=False) if pot and timed and not named else hearing


def asks_of_one(request: Request) -> bool:
    """Whether how much of one ingredient is asked, whose amount is told beside those of others."""
    asked = not AMOUNT_FORMS.isdisjoint(request.forms) and request.quantity is not None
    return asked and request.topic == "bake_adjust" and request.subject in what_is_in_it.roles()


def with_recipe(hearing: Hearing, text: str, recipe: str, *, alone: bool) -> Hearing:
    """What is said around a recipe, with the recipe; little or nothing around it asks to convert it."""
    request = replace(hearing.request, text=text, recipe=recipe)
    fails = request.topic == TROUBLE and not alone
    nothing_else = request.topic in marked("of_a_formula") | marked("of_nothing")
    if alone or (hearing.elliptical and not fails) or nothing_else:
        request = replace(request, topic="convert_recipe", method=None, small_talk=None)
    return replace(hearing, elliptical=False, request=request)


def with_amounts(request: Request, text: str, formula: Pasted | None = None) -> Request:
    """A fault with the amounts of the formula that is told with it, so that a change is of them."""
    formula = formula or _told(text)
    if formula is None:
        return request
    told = {amount.ingredient for amount in request.amounts}
    more = (amount for amount in _amounts(formula) if amount.ingredient not in told)
    return replace(request, amounts=(*request.amounts, *more))


def placed(hearing: Hearing, text: str, kitchen: Kitchen) -> Hearing:
    """What is said with a recipe, with the elevation that stands amidst its lines: I live at 4,800 ft."""
    if hearing.request.elevation_m is not None:
        return hearing
    amidst = read_clean(clean(text))
    # a recipe of several lines may name heights of its own; one told in a breath has that of its kitchen
    in_a_breath = "\n" not in text.strip()
    told = [mention for mention in amidst._.elevations if mention.sure or (in_a_breath and mention.unit)]
    height = elevation_mentions.settle(told, norms(amidst), kitchen.units)
    if height.here_m is None:
        return hearing
    baseline = hearing.request.from_elevation_m
    request = replace(
        hearing.request,
        elevation_m=height.here_m,
        elevation_from=height.known_from,
        place=height.place,
        from_elevation_m=height.from_m if baseline is None else baseline,
    )
    return replace(hearing, request=request)


def capped(request: Request, dropped: int) -> Request:
    """The request with a note that the end of a very long text was not read."""
    if not dropped:
        return request
    reason = say("read-in-part", read=number(LONGEST))
    return replace(request, unused=(*request.unused, Unused("text", str(dropped), reason)))


def _titled(recipe: str, hearing: Hearing) -> str:
    """A formula under the name of what is baked, which tells its style."""
    dish = hearing.request.dish
    return f"{dish.title()}\n\n{recipe}" if dish else recipe


def _told(text: str) -> Pasted | None:
    """The formula that is told within a sentence; its reader is imported only where a bake is talked of."""
    from assistant.recipes.told import told

    return told(text)


def _amounts(formula: Pasted) -> tuple[Amount, ...]:
    """The amounts of a formula by ingredient, as far as they are known."""
    from assistant.recipes.lines import read_line
    from assistant.recipes.told import SMALLEST_G

    lines = (read_line(line) for line in formula.recipe.splitlines())
    known = [line for line in lines if line and line.known and line.role and line.amount]
    # amounts without a unit are grams where nobody counts so many: 250 butter, but 2 eggs
    units = [line.unit or ("g" if (line.amount or 0.0) >= SMALLEST_G else "piece") for line in known]
    return tuple(
        Amount(line.item, line.role or "", line.amount or 0.0, unit)
        for line, unit in zip(known, units, strict=True)
        if line.role != "egg" or unit == "piece" or line.unit
    )


def _pasted(text: str, awaited: bool) -> Pasted | None:
    """The recipe in a text; the reader of recipes is imported only where a text can hold one."""
    if not awaited and not any(sign in text for sign in RECIPE_SIGNS):
        return None
    from assistant.recipes.pasted import Pasted, listed, pasted

    found, recipe = pasted(text), listed(text) if awaited else ""
    if found and "\n" not in text:
        return _told(text) or found
    return found or (Pasted("", recipe) if recipe else None)
