"""The form of a question decides how its answer begins: a module a form, which words the headline anew.

A module is named as its form in data/lexicon/forms.toml and holds RULES. They are asked about what the room has worked
out, and the first that has something to say puts its headline in the place of the room's. Where none does, or the room
refuses, the room's own headline stays.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import cached_property

from rules import book
from rules.book import Case, Part
from rules.catalogue import marked
from rules.heat.verdict import unopened
from rules.model import Answer, Because, Figure, Request
from rules.said import Listed, Said, Words, together

WRONG = "troubleshoot"
# forms that want yes or no
VERDICTS = ("changes", "enough", "is_ok", "folly")
# forms that the room's own headline answers
PLAIN = ("how_long", "how_hot", "how_much", "start", "convert", "why")
PLACES = "which.place"
JUDGED, OF_PLACES = "doneness.judged", (PLACES, "by_then.part")
# forms that neither yes nor no answers
UNDER_PRESSURE = "pressure_cook"
OF_TWO = frozenset(("which", "each"))
NO_VERDICT = frozenset(("which", "what_if"))
Work = Callable[[Request], Answer]
# what a question of the same kind, asked beside the first, does not take over from it
UNASKED: dict[str, object] = {
    "forms": (), "asked_way": None, "planned_min": None, "elapsed_min": None, "dishes_too": (), "methods_too": (),
    "elevations_m": (), "temperatures_c": (), "quantity": None, "portions": None,
}  # fmt: skip


@dataclass(frozen=True)
class Asked:
    """A question with what its room has worked out. work: works out another question."""

    answer: Answer
    work: Work

    @property
    def request(self) -> Request:
        """The question."""
        return self.answer.request

    @cached_property
    def case(self) -> Case:
        """The question as the rules see it."""
        return Case(self.request)

    @cached_property
    def time(self) -> tuple[Figure, Figure] | None:
        """The time here and the time at the baseline, where both are known."""
        here, base = self.answer.figure("cook_time"), self.answer.figure("baseline_time")
        return (here, base) if here and base else None

    @property
    def judged(self) -> bool:
        """Whether the room has judged a reading of the centre by the tables of safe temperatures."""
        return any(b.rule == JUDGED for b in self.answer.because)

    def otherwise(self, **changes: object) -> Asked:
        """The same question but for some slots."""
        other = replace(self.request, **{**UNASKED, **changes})  # type: ignore[arg-type]
        return Asked(self.work(other), self.work)


def in_form(answer: Answer, work: Work) -> Answer:
    """The answer as the form of its question wants it; neither yes nor no opens one of two ways."""
    if refuses(answer):
        return answer
    said = _in_form(answer, work)
    of_two = "which" in answer.request.forms
    return replace(said, headline=unopened(said.headline)) if of_two and said.headline else said


def _in_form(answer: Answer, work: Work) -> Answer:
    asked = Asked(answer, work)
    for form in forms_of(answer.request):
        module = book.room("forms", form)
        for rule, part in book.spoken(book.rules_of(module), asked) if module else ():
            of = of_first_place(asked) if rule.id == PLACES else answer
            said = with_part(of, part, Because(rule.id, part.because, part.sources or rule.sources))
            return of_all_places(said) if rule.id in OF_PLACES else said
    return answer


def forms_of(request: Request) -> Iterator[str]:
    """The forms a question has, the one that counts most first; places and times of the cook's own are forms too."""
    topic, had = request.topic, request.elapsed_min is not None
    if topic == "why" and (request.time_min or had or request.planned_min) and request.dish_class:
        yield "why"
    if had and (topic == WRONG or (topic in marked("in_form") and "remaining" in request.forms)):
        yield "remaining"
    if "past" in request.forms:
        yield "past"
    if request.lacking and topic in marked("by_hand"):
        yield "by_hand"
    if "worth" in request.forms and topic in marked("of_buying"):
        yield "worth"
    if "by_then" in request.forms and topic in marked("in_form"):
        yield "by_then"
    if judges_own_figure(request) and topic in marked("in_form"):
        yield "enough"
    against_pot = request.method == UNDER_PRESSURE and "which" in request.forms and request.whistles is None
    if (against_pot or (request.methods_too and OF_TWO.intersection(request.forms))) and topic in marked("in_form"):
        yield "which"
    if len(request.elevations_m) > 1 and topic in marked("of_places") and "why" not in request.forms:
        yield "which"
    if topic in marked("in_form"):
        yield from answered(request)
        yield from (("enough",) if request.planned_min is not None else ())
        yield from (("remaining",) if had else ())


def judges_own_figure(request: Request) -> bool:
    """Whether one of two is the cook's own figure, and the other to leave it: is 40 min enough, or do I go longer."""
    of_two = "which" in request.forms and not (request.methods_too or request.dishes_too or request.temperatures_c)
    own = any(slot is not None for slot in (request.time_min, request.planned_min, request.temperature_c))
    return of_two and own and ("enough" in request.forms or request.asked_way == "same")


def answered(request: Request) -> Iterator[str]:
    """The forms up to one that the room answers anyway; behind that only those that want yes or no."""
    forms = [form for form in request.forms if request.whistles is None or form != "which"]
    plain = next((at for at, form in enumerate(forms) if form in PLAIN), len(forms))
    yield from forms[:plain]
    yield from (form for form in forms[plain:] if form in VERDICTS)


def of_first_place(asked: Asked) -> Answer:
    """The answer for the highest of the places that are compared, whose figures and steps stand below the headline."""
    heights = asked.request.elevations_m
    if asked.request.pressure_pa is not None or not heights or max(heights) == asked.request.elevation_m:
        return asked.answer
    return replace(asked.otherwise(elevation_m=max(heights)).answer, request=asked.request)


def of_all_places(answer: Answer) -> Answer:
    """The answer that speaks of every place, without the note that only the first was worked with."""
    unused = tuple(u for u in answer.request.unused if u.kind != "elevations")
    return replace(answer, request=replace(answer.request, unused=unused))


def told_alike(request: Request) -> bool:
    """Whether the form is answered alike whichever of the topics that the words fit is meant."""
    choices = set(request.choices)
    if "worth" in request.forms:
        return choices <= marked("of_buying")
    if len(request.elevations_m) > 1:
        return choices <= marked("of_places")
    own = request.elapsed_min or request.planned_min or request.temperature_of in ("hold", "fridge")
    return choices <= marked("in_form") and bool(own or "can_it" in request.forms)


def opens(asked: Asked, verdict: str) -> str:
    """The verdict, but neither yes nor no where either may be meant, or what comes of it was asked: is it too long."""
    request = asked.request
    return "none" if request.asked_way == "either" or not NO_VERDICT.isdisjoint(request.forms) else verdict


def refuses(answer: Answer) -> bool:
    """Whether the room asks, refuses, or answers about safety: its headline stays whatever was asked."""
    request = answer.request
    of_safety = request.danger or (request.subject and book.room("safety", request.subject))
    return bool(of_safety or answer.missing or not answer.covered or any(c.level == "stop" for c in answer.cautions))


def beside(headline: Words) -> tuple[Words, ...]:
    """What a room says behind its headline, such as that dry beans boil first: it stays."""
    if not isinstance(headline, Listed) or headline.join != "sentences":
        return ()
    first, *behind = headline.items
    of_time = isinstance(first, Said) and first.file == "heat/headline"
    return tuple(words for words in behind if of_time and isinstance(words, str | Said | Listed))


def with_part(answer: Answer, part: Part, because: Because) -> Answer:
    """The answer with what a form adds: its headline in the place of the room's, the rest before it."""
    return replace(
        answer,
        headline=together(part.headline, *beside(answer.headline)) if part.headline else answer.headline,
        figures=tuple({f.id: f for f in (*answer.figures[::-1], *part.figures[::-1])}.values())[::-1],
        steps=tuple(dict.fromkeys((*part.steps, *answer.steps))),
        because=(*((because,) if part.because else ()), *answer.because),
        cautions=tuple(dict.fromkeys((*part.cautions, *answer.cautions))),
    )
