"""Another kind of what is talked of, in words that name no dish by themselves: brown; the red ones; and for lamb?"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spacy.tokens import Doc

from assistant.understanding import lexicon
from assistant.understanding.cue_words import cues
from assistant.understanding.unclaimed import HINT_WORDS, LEANING
from rules.foods.dishes import dishes
from rules.model import Request, Unused
from rules.said import sentences

say = sentences("understanding/kinds")

KINDS = frozenset(cues("turning", "kinds"))
ANIMALS, CUTS = cues("turning", "animals"), cues("turning", "cuts")
LONGEST = 3


def other_kind(doc: Doc, now: Request, last: Request) -> str | None:
    """The dish that words of kind make with the name of the dish before: brown, after jasmine rice; and for lamb?"""
    if last.dish is None or now.dish not in (None, last.dish) or any(f.kind == "equipment" for f in doc._.found):
        return None
    named = {doc[i].norm_ for f in doc._.found if f.kind == "dish" for i in range(f.start, f.end)}
    words = [word for word in own_words(doc) if word not in named] or _way_alone(doc, last)
    put_in = {doc[i].norm_ for f in doc._.found if f.kind == "ingredient" for i in range(f.start, f.end)}
    if not 1 <= len(words) <= LONGEST or put_in.issuperset(words):
        return None
    # a cut may be named among other words of it: bone-in shanks
    cut = [word for word in words if word in CUTS or word in ANIMALS]
    ways = [words, *([cut] if cut and cut != words else [])]
    return next((dish for way in ways for dish in _made_with(way, last, now.method) if dish != last.dish), None)


def _way_alone(doc: Doc, last: Request) -> list[str]:
    """The word for a way in which the dish is not cooked as it is, which may make another: poached, of boiled eggs."""
    usual = dishes()[str(last.dish)].methods
    ways = (f for f in doc._.found if f.kind == "method" and f.id not in usual)
    return [doc[i].norm_ for f in ways for i in range(f.start, f.end)][:1]


def of_the_talk(doc: Doc, now: Request, last: Request, earlier: Sequence[Request]) -> str | None:
    """The dish that was talked of and is meant by the plain name of its kind: the beans, after pinto beans; the rib."""
    spans = [f for f in doc._.found if f.kind == "dish" and f.id == now.dish]
    if not spans or any(f.end - f.start > 1 for f in spans) or now.dish == last.dish:
        return None
    plain = doc[spans[0].start].norm_
    talked = [last, *reversed(earlier)]
    if any(question.dish == now.dish for question in talked):
        return None
    named = (q.dish for q in talked if q.dish and len(q.dish.split()) > 1)
    return next((dish for dish in named if _singular(dish.split()[-1]) == _singular(plain)), None)


def of_its_class(now: Request, last: Request) -> str | None:
    """The dish that is talked of and is meant by the name of its whole class: the fruit, after peaches."""
    general = now.dish is not None and now.dish == dishes()[now.dish].dish_class
    return last.dish if general and last.dish_class == now.dish_class and last.dish != now.dish else None


def _singular(word: str) -> str:
    return word.removesuffix("s")


def taken_as(doc: Doc, dish: str) -> tuple[Unused, ...]:
    """A note of which cut an animal was taken for, where none was named."""
    animal = next((word for word in own_words(doc) if word in ANIMALS), None)
    if animal is None or any(word in CUTS for word in own_words(doc)) or animal == dish:
        return ()
    return (Unused("detail", dish, say("taken-as", animal=animal, dish=dish)),)


def own_words(doc: Doc) -> list[str]:
    """The words of an utterance that may tell the kind: no little words, no slots, nothing that a not takes back."""
    taken = {i for f in doc._.found if f.kind in ("place", "method") for i in range(f.start, f.end)}
    taken |= {i for spans in (doc._.measures, doc._.elevations) for s in spans for i in range(s.start, s.end)}
    little = LEANING | HINT_WORDS | KINDS
    opens_with_not = len(doc) > 1 and doc[0].norm_ == "not"
    taken |= {1} if opens_with_not else set()
    back = next((t.i for t in doc if t.i and t.norm_ == "not"), len(doc))
    own = [t for t in doc[:back] if t.i not in taken and t.norm_.replace("-", "").isalpha()]
    return [t.norm_ for t in own if t.norm_ not in little]


def _made_with(words: Sequence[str], last: Request, method: str | None) -> Iterator[str]:
    dish = str(last.dish)
    head, first = dish.split()[-1], dish.split()[0]
    for name in (head, dish):
        own = " ".join(word for word in words if word not in head)
        before, behind = f"{own} {name}", f"{name} {own}"
        for phrase in (before, before.replace(" ", "-", 1), behind):
            yield from (id for kind, id in lexicon.meanings(phrase) if kind == "dish")
    yield from (id for kind, id in lexicon.meanings(f"{first} {' '.join(words)}") if kind == "dish")
    if len(words) == 1 and words[0] in ANIMALS:
        yield from _of_animal(words[0], dish, method or last.method)


def _of_animal(animal: str, dish: str, method: str | None) -> Iterator[str]:
    """Dishes of an animal: the same cut first, then those of the class of the dish before, as cooks name them first."""
    cuts = [cut for cut in CUTS if cut in dish.split()]
    for cut in (*cuts, *CUTS):
        named = (
            id
            for phrase in (f"{animal} {cut}", f"{cut} of {animal}")
            for kind, id in lexicon.meanings(phrase)
            if kind == "dish"
        )
        yield from (id for id in named if cut in cuts or _fits(id, dish, method))
    yield from (id for kind, id in lexicon.meanings(animal) if kind == "dish")


def _fits(id: str, dish: str, method: str | None) -> bool:
    row = dishes()[id]
    return row.dish_class == dishes()[dish].dish_class or method in row.methods
