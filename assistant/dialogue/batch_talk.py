"""One batch after another in a conversation: what came of the last change, the next one, and what was changed in all.

The next change is that of the log, worked out as `simmerline batch` does.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from assistant.dialogue import batch_ways
from assistant.dialogue.deeds import GONE, Deed, LogRun
from assistant.dialogue.gathering import CONVERT, answered, in_hand, sheet_in_hand
from assistant.dialogue.heard import Heard
from assistant.dialogue.memory import Memory
from assistant.dialogue.recipe_talk import Told as Reply
from assistant.dialogue.recipe_talk import noted, recipe_told
from assistant.dialogue.thread import after
from assistant.dialogue.workbench import Baked, RecipeTalk, Run
from assistant.errors import AssistantError
from assistant.recipes import batches as log
from assistant.recipes.batch_told import Told, applied, changes_in, faults_in, has, plain, summed, told_of
from assistant.recipes.sheet import Entry, Sheet, sheet_of
from assistant.understanding.complaints import TROUBLE
from assistant.understanding.conversation import settle_in
from assistant.worked_out import told
from rules.baking.rounding import measure
from rules.baking.styles import is_baked
from rules.catalogue import marked
from rules.model import PLACE_SLOTS, Answer, Because, Request
from rules.physics.units import to_f
from rules.said import Words, elevation, listed, sentences, together, yes

if TYPE_CHECKING:
    from rules.mending import Mending

say = sentences("dialogue/batch_talk")
LONGEST, SHORT = 60, 8
# the oven of a cake where none was said [degC]
MIDDLING_C = 180.0


@dataclass(frozen=True, slots=True)
class Said:
    """An utterance about batches. low: its plain words; told: what it says of one; run: those so far"""

    heard: Heard
    memory: Memory
    low: str
    run: Run

    @property
    def last(self) -> Baked:
        """The batch told of last."""
        return self.run.batches[-1]


def begun(request: Request, memory: Memory) -> Run | None:
    """The run that a complaint about a bake begins; None for one about something else, or at an unknown elevation."""
    settled = settle_in(request, memory.kitchen)
    run = memory.run
    if run and run.dish == request.dish and (run.kept or run.pending or len(run.batches) > 1):
        # a further question about the same bake is no first batch of another run
        return None
    of_a_bake = request.topic == TROUBLE and request.dish and is_baked(request.dish_class)
    if not of_a_bake or settled.elevation_m is None or request.danger:
        return None
    from rules.topics.troubleshoot import meant, worked_out

    symptoms = tuple(row.id for row in meant(settled))
    if not symptoms:
        return None
    first = Baked(
        symptoms=symptoms, elevation_m=settled.elevation_m, from_elevation_m=settled.from_elevation_m,
        style=request.dish_class or "", formula=formula(request),
    )  # fmt: skip
    ranked = worked_out(settled, settled.elevation_m).next
    suggested = log.as_kept(ranked.change, ranked.line, settled.units) if ranked else None
    return Run(title=request.dish or "", dish=request.dish, batches=(first,), suggested=suggested)


def formula(request: Request) -> str:
    """The recipe of a complaint, as far as it was told: what was pasted, else its amounts and its oven."""
    if request.recipe:
        return request.recipe
    lines = [
        Entry(f"{measure(a.value, None if a.unit == 'piece' else a.unit)} {a.ingredient}") for a in request.amounts
    ]
    as_told = batch_ways.lines_told(request.text)
    # what nobody has heard of stands in the lines alone
    lines = list(as_told) if len(as_told) >= len(lines) else lines
    if len(lines) < 2:
        return ""
    steps = []
    if request.temperature_c and request.temperature_of in (None, "oven"):
        setting = f"{round(to_f(request.temperature_c))} F"
        time = f" for {request.time_min:g} minutes" if request.time_min else ""
        steps = [Entry(f"Bake at {setting}{time}.")]
    return Sheet(title=(request.dish or "").title(), ingredients=tuple(lines), steps=tuple(steps)).text


def batches_told(heard: Heard, memory: Memory) -> Reply | None:
    """What is said of batches; None for an utterance that is about something else."""
    low = plain(heard.text)
    if heard.is_refused or memory.asked not in (None, "symptom", "dish") or len(low.split()) > LONGEST:
        return None
    if heard.hearing.request.recipe and "\n" in heard.text:
        return None
    if has(low, "keep"):
        return keeping(heard, memory, low)
    if memory.run is None:
        return None
    said = Said(heard, memory, low, memory.run)
    return next(filter(None, (way(said) for way in WAYS)), None)


# what is told


def next_batch(said: Said) -> Reply | None:
    """A further batch: put down with its changes, and the next change by the log."""
    heard, run = said.heard, said.run
    found = _as_before(told_of(heard.text, said.last.style), said) or _pending(said)
    if found is None or _other_dish(said):
        return None
    if found.number and found.number <= len(run.batches) and not found.is_next:
        return corrected(said, found) if _corrects(said, found) else None
    sheet = current(run)
    changes = () if found.unchanged else changes_in(heard.text, sheet) or run.pending
    made_so = (run.suggested,) if run.suggested and not changes and not found.unchanged else ()
    if not found.came_out and not changes and not found.did:
        return None
    baked = replace(
        said.last, symptoms=found.symptoms, changes=(*changes, *made_so), compared=found.compared, note="", id=0,
        rating=None,
    )  # fmt: skip
    if not found.came_out:
        # told what was changed, but not how it came out
        number = len(run.batches) + 1
        return _line(said, say("how-came-out", batch=number), replace(run, pending=baked.changes))
    return _put_down(
        said, replace(run, batches=(*run.batches, baked), pending=()), assumed=bool(made_so) and not found.did
    )


def _as_before(found: Told | None, said: Said) -> Told | None:
    """What is told of a batch; where nothing is said but better or worse, it is of what went wrong before."""
    if found is None or found.came_out or not found.compared or not said.last.symptoms:
        return found
    return replace(found, symptoms=said.last.symptoms)


def _pending(said: Said) -> Told | None:
    """How the batch came out whose changes were told before: it was dry, perfect."""
    if not said.run.pending or len(said.low.split()) > SHORT:
        return None
    symptoms = faults_in(said.heard.text, said.last.style)
    return Told(symptoms=symptoms, good=not symptoms and has(said.low, "good") and not has(said.low, "not_good"))


def _other_dish(said: Said) -> bool:
    """Whether another dish is talked of, that is not named only to liken the bake to it."""
    now = said.heard.hearing.request
    named = now.dish and now.dish != said.run.dish and not has(said.low, "flat_as")
    return bool(named) and not is_baked(now.dish_class)


def _put_down(said: Said, run: Run, *, assumed: bool = False) -> Reply:
    """The reply to a batch: what is noted of it, and what to change next."""
    found = log.mending(run.batches, units=_units(said))
    last, number = run.batches[-1], len(run.batches)
    line = noted_line(run, number, said, assumed=assumed)
    if log.is_apart(last):
        line = together(line, say("apart", item=_apart_item(last)), raised(last))
    if found is None or found.next is None:
        kept = summed([b.changes for b in run.batches])
        keep = say("keep", changes=_in_words(kept, said)) if kept else say("keep-plain")
        return _answered(said, together(line, keep), replace(run, suggested=None, kept=True), None)
    suggested = log.as_kept(found.next.change, found.next.line, _units(said))
    run = replace(run, suggested=suggested, kept=True)
    return _answered(said, together(line, say("next", change=found.next.line)), run, found)


def noted_line(run: Run, number: int, said: Said, *, assumed: bool = False) -> Words:
    """What is put down of a batch, in a line."""
    from rules.mending import catalogue

    batch = run.batches[number - 1]
    wrong = [catalogue()[id].title for id in batch.symptoms if id in catalogue()]
    place = None if batch.elevation_m is None else elevation(batch.elevation_m)
    changes = _in_words(batch.changes, said) if batch.changes else ""
    return say(
        "noted", batch=number, recipe=run.title, place=place or "", placed=yes(place), wrong=listed(wrong),
        fine=yes(not wrong), changes=changes, changed=yes(changes), assumed=yes(assumed),
    )  # fmt: skip


def _in_words(changes: tuple[dict[str, Any], ...], said: Said) -> Words:
    return listed([log.in_words(change, _units(said)) for change in changes], "semicolons")


def raised(batch: Baked) -> Words:
    """What is said of a flour that brings its own raising agent."""
    return say("raises-itself") if has(plain(_apart_item(batch)), "raised") else ""


def _apart_item(batch: Baked) -> str:
    return next((str(c["item"]) for c in batch.changes if c.get("apart")), "")


def _units(said: Said) -> Any:
    last = said.memory.request
    return last.units if last else said.memory.kitchen.units


def _question(said: Said, run: Run) -> Request:
    """The question that the conversation goes on with: the last fault of this bake, where it was baked."""
    last = run.batches[-1]
    base = said.memory.request or Request()
    placed = replace(base, elevation_m=last.elevation_m) if last.elevation_m is not None else base
    known = next((batch for batch in reversed(run.batches) if batch.symptoms), last)
    return replace(
        placed, topic=TROUBLE, dish=run.dish or placed.dish, dish_class=last.style or placed.dish_class,
        subject=next(iter(known.symptoms), None), symptoms_too=known.symptoms[1:], text=said.heard.text, choices=(),
        small_talk=None,
    )  # fmt: skip


def _answered(said: Said, headline: Words, run: Run, found: Mending | None) -> Reply:
    """The answer, with the reason for the change and what to take care of; the run goes into the log."""
    from rules.mending.safety import cautions

    question = _question(said, run)
    because: tuple[Because, ...] = ()
    if found and found.next:
        change = found.next.change
        because = (Because(change.rule or "mending", change.because, change.sources),)
    noted = together(found.note) if found and found.note else None
    answer = Answer(
        request=settle_in(question, said.memory.kitchen), headline=headline, because=because,
        steps=(noted,) if noted else (), cautions=tuple(cautions(found)) if found else (),
    )  # fmt: skip
    memory = replace(after(question, said.memory), run=run, asked=None)
    return Reply(told(answer), memory, LogRun(run, said.memory.kitchen.name))


def _line(said: Said, headline: Words, run: Run, *, deed: Deed | None = None) -> Reply:
    """A sentence about the run, at its place."""
    question = _question(said, run)
    answer = Answer(request=settle_in(question, said.memory.kitchen), headline=headline)
    return Reply(told(answer), replace(after(question, said.memory), run=run, asked=None), deed)


# what is put right, summed, shown and taken elsewhere


def _corrects(said: Said, found: Told) -> bool:
    spoken = has(said.low, "corrects") or found.number == len(said.run.batches)
    return spoken and (found.came_out or bool(changes_in(said.heard.text, current(said.run))))


def corrected(said: Said, found: Told) -> Reply:
    """A batch put right: what was wrong with it, or what was in it."""
    at = (found.number or 1) - 1
    old = said.run.batches[at]
    before = current(replace(said.run, batches=said.run.batches[:at])) if at else Sheet()
    changes = changes_in(said.heard.text, before if before.ingredients else current(said.run))
    symptoms = found.symptoms if found.came_out else old.symptoms
    whats = {change["what"] for change in changes}
    kept = tuple(change for change in old.changes if change["what"] not in whats)
    new = replace(old, symptoms=symptoms, changes=(*kept, *changes))
    run = replace(said.run, batches=(*said.run.batches[:at], new, *said.run.batches[at + 1 :]))
    reply = _put_down(said, run) if at == len(run.batches) - 1 or log.is_apart(new) else None
    return reply or _answered(said, noted_line(run, at + 1, said), run, None)


def summary(said: Said) -> Reply | None:
    """What was changed from the first batch to the last."""
    if not has(said.low, "summed"):
        return None
    changes = summed([batch.changes for batch in said.run.batches])
    if not changes:
        return _line(said, say("nothing-changed", recipe=said.run.title), said.run)
    count = len(said.run.batches)
    return _line(said, say("summed", recipe=said.run.title, count=count, changes=_in_words(changes, said)), said.run)


def what_next(said: Said) -> Reply | None:
    """The next change once more."""
    if not has(said.low, "next_change") or len(said.low.split()) > SHORT:
        return None
    found = log.mending(said.run.batches, units=_units(said))
    if len(said.run.batches) < 2 and not said.run.kept:
        return None
    if found is None or found.next is None:
        return _line(said, say("keep-plain"), said.run)
    return _answered(said, say("next", change=found.next.line), said.run, found)


def shown(said: Said) -> Reply | None:
    """One batch, or all of them, a line each."""
    if not has(said.low, "show"):
        return None
    from assistant.recipes.batch_told import numbered

    number = numbered(said.low)
    run = said.run
    if number and number > len(run.batches):
        return _line(said, say("no-such", batch=number, count=len(run.batches)), run)
    which = (number,) if number else tuple(range(1, len(run.batches) + 1))
    return _line(said, together(*(noted_line(run, n, said) for n in which)), run)


def taken_back(said: Said) -> Reply | None:
    """The last batch taken back."""
    if not has(said.low, "undo") or len(said.low.split()) > SHORT or len(said.run.batches) < 2:
        return None
    last = said.memory.request
    if last is None or last.topic != TROUBLE:
        return None
    run = replace(said.run, batches=said.run.batches[:-1], suggested=None)
    found = log.mending(run.batches, units=_units(said))
    if found and found.next:
        run = replace(run, suggested=log.as_kept(found.next.change, found.next.line, _units(said)))
    gone = replace(said.run, batches=(*run.batches, replace(said.last, note=GONE)))
    reply = _line(said, say("taken-back", batch=len(said.run.batches)), run)
    return replace(reply, deed=LogRun(gone, said.memory.kitchen.name))


def elsewhere(said: Said) -> Reply | None:
    """The formula that the batches have come to, for another kitchen."""
    from rules.mending import catalogue

    now, run = said.heard.hearing.request, said.run
    last = said.memory.request
    here_m = said.last.elevation_m
    about = last is not None and last.topic == TROUBLE and now.dish in (None, run.dish)
    loose = now.topic == TROUBLE or now.topic in marked("of_a_recipe")
    if not about or not loose or now.elevation_m is None or here_m is None or abs(now.elevation_m - here_m) < 1:
        return None
    if not has(said.low, "elsewhere") or "kitchen" in said.low.split() or now.subject in catalogue():
        return None
    sheet, right_m = best(run)
    if not sheet.ingredients:
        return None
    question = _recipe_at(said, sheet, right_m, {slot: getattr(now, slot) for slot in PLACE_SLOTS})
    return Reply(*answered(question, said.memory, RecipeTalk(sheet=sheet, question=question)))


def _recipe_at(said: Said, sheet: Sheet, right_m: float, place: dict[str, Any]) -> Request:
    """The recipe of the run at a place. right_m: where it is right as it stands [m]; place: slots of a Request"""
    return Request(
        topic=CONVERT, recipe=sheet.text, dish=said.run.dish, dish_class=said.last.style, text=said.heard.text,
        from_elevation_m=right_m, units=_units(said), **place,
    )  # fmt: skip


def back_home(said: Said) -> Reply | None:
    """The recipe for the cook's own kitchen again, after it was asked for another: and for me, for 40."""
    last, here_m = said.memory.request, said.last.elevation_m
    away = last is not None and last.topic == CONVERT and last.elevation_m not in (None, here_m)
    now = said.heard.hearing.request
    if not away or not has(said.low, "home") or now.elevation_m is not None or now.dish not in (None, said.run.dish):
        return None
    sheet, right_m = best(said.run)
    if not sheet.ingredients:
        return None
    question = _recipe_at(said, sheet, right_m, {"elevation_m": here_m, "elevation_from": "stated"})
    reply, memory = answered(question, said.memory, RecipeTalk(sheet=sheet, question=question))
    return recipe_told(said.heard, memory) or Reply(reply, memory)


def best(run: Run) -> tuple[Sheet, float]:
    """The recipe that came out well, and where it is right [m]; the recipe as it was told where none did yet."""
    last = run.batches[-1]
    if not last.symptoms and last.elevation_m is not None and len(run.batches) > 1:
        return current(run), last.elevation_m
    return current(replace(run, batches=run.batches[:1])), last.from_elevation_m or 0.0


def current(run: Run) -> Sheet:
    """The recipe as the batches have come to it; one without lines where it was never told."""
    text = next((batch.formula for batch in run.batches if batch.formula), "")
    try:
        sheet = sheet_of(text) if text else Sheet(title=run.title.title())
    except AssistantError:
        return Sheet(title=run.title.title())
    sheet = sheet if sheet.title else replace(sheet, title=run.title.title())
    comparable = [batch for batch in run.batches if not log.is_apart(batch)]
    return applied(sheet, [change for batch in comparable for change in batch.changes])


def amount_now(said: Said) -> Reply | None:
    """How much of an ingredient the batches have come to."""
    line = batch_ways.amount_now(said, current(said.run))
    return _line(said, line, said.run) if line else None


def bigger(said: Said) -> Reply | None:
    """The bake for so much of it in so many tins; where the batch is told of with it, that is put down first."""
    grams = batch_ways.wanted_g(said.low)
    put = next_batch(said) if grams else None
    run = put.memory.run if put and put.memory.run else said.run
    sheet, right_m = best(run)
    if grams is None or not sheet.ingredients:
        return None
    now = replace(said, run=run)
    place = {"elevation_m": run.batches[-1].elevation_m, "elevation_from": "stated"}
    found = batch_ways.bigger(now, _recipe_at(now, sheet, right_m, place), grams)
    if found is None:
        return None
    question, note = found
    reply, memory = answered(question, replace(said.memory, run=run), RecipeTalk(sheet=sheet, question=question))
    note = together(note, say("bigger-oven"))
    return Reply(noted(reply, note), memory, put.deed if put else None)


def by_hand(said: Said) -> Reply | None:
    """How an oven is read that shows no figures."""
    if not batch_ways.asks_by_hand(said.low):
        return None
    question = _question(said, said.run)
    answer = batch_ways.by_hand(said, question, batch_ways.setting_in(said.low, MIDDLING_C))
    return Reply(told(answer), replace(after(question, said.memory), run=said.run, asked=None))


def keeping(heard: Heard, memory: Memory, low: str) -> Reply | None:
    """The recipe as it was converted, or the run so far, put into the log."""
    recipe = in_hand(memory)
    if recipe is None and memory.run is not None:
        run = replace(memory.run, kept=True)
        said = Said(heard, memory, low, run)
        return _line(said, noted_line(run, len(run.batches), said), run, deed=LogRun(run, memory.kitchen.name))
    sheet = sheet_in_hand(memory)
    if recipe is None or sheet is None:
        return None
    return _kept_recipe(heard, memory, low, recipe, sheet)


def _kept_recipe(heard: Heard, memory: Memory, low: str, recipe: Request, sheet: Sheet) -> Reply | None:
    """The first batch of the recipe as it was converted: it is right where it was converted to."""
    from assistant.recipes.recipe_answer import convert
    from assistant.recipes.written import to_text
    from rules.baking.style import recognise
    from rules.mending.failed_dish import CLASSES
    from rules.recipes.convert import Converted

    found = convert(settle_in(recipe, memory.kitchen))
    if not isinstance(found, Converted):
        return None
    style = recognise(found.plain).id
    title = sheet.title or recipe.dish or style.replace("_", " ")
    batch = Baked(
        elevation_m=found.to_elevation_m, from_elevation_m=found.to_elevation_m, style=CLASSES.get(style, style),
        formula=to_text(found.plain),
    )  # fmt: skip
    run = Run(title=title, dish=recipe.dish, batches=(batch,), kept=True)
    kept = say("kept", recipe=title, place=elevation(found.to_elevation_m))
    request = replace(settle_in(recipe, memory.kitchen), text=heard.text)
    reply = told(Answer(request=request, headline=kept))
    return Reply(reply, replace(memory, run=run), LogRun(run, memory.kitchen.name))


def first_fault(said: Said) -> Reply | None:
    """What went wrong with the batch that was kept before it was baked."""
    if said.last.symptoms or said.run.suggested or len(said.run.batches) > 1 or not said.run.kept:
        return None
    symptoms = faults_in(said.heard.text, said.last.style)
    now = said.heard.hearing.request
    if not symptoms or now.topic != TROUBLE or (now.dish and now.dish != said.run.dish):
        return None
    return _put_down(said, replace(said.run, batches=(replace(said.last, symptoms=symptoms),)))


WAYS: tuple[Callable[[Said], Reply | None], ...] = (
    summary, shown, amount_now, bigger, by_hand, taken_back, next_batch, first_fault, what_next, elsewhere, back_home,
)  # fmt: skip
