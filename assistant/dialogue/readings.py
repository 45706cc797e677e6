"""What instruments show, held against what is known of the place: ice, a boil test, a barometer.

A named place is believed over one thermometer, and never moved by it; without one the boil tells the elevation.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any

from assistant.dialogue.heard import Heard
from assistant.dialogue.made import Made, said, said_of
from assistant.dialogue.memory import Memory, Reading
from assistant.dialogue.thread import after, question_of, talked_of
from assistant.reading.instruments import BAROMETER_UNITS
from assistant.reading.tokens import norms
from assistant.understanding import danger, thermometers
from assistant.understanding.conversation import settle_in
from assistant.understanding.cue_words import cues
from assistant.understanding.cue_words import said as said_among
from assistant.understanding.scene import Scene
from assistant.understanding.thermometers import Read
from assistant.worked_out import WorkedOut, work_out
from rules.catalogue import marked
from rules.errors import OutOfRange
from rules.model import Answer, Kitchen, Request
from rules.physics import air, water
from rules.physics.ambient import ambient
from rules.said import Value, Words, elevation, fixed, pressure, sentences, temp, temp_drop, together, yes

# water for a bottle is no reading
FORMULA = "formula"
say = sentences("dialogue/readings")

REPORTS, OTHERS = cues("instruments", "reports"), cues("whereabouts", "others")
# nearer than this two readings agree [K]; further off than this a thermometer is to be replaced
FITS_K, RIGHT_K, FAR_K = 1.0, 0.5, 5.0
SAME_M = 60.0
# units in which nobody reads a cooker
OF_WEATHER = ("hPa", "inHg", "mmHg")
LOWEST_PA, HIGHEST_PA = 45_000.0, 110_000.0
WATER = "water"
# hotter than this is no boiling water [degC]
SYRUP_C = 102.0


@dataclass(frozen=True, slots=True)
class Here:
    """Where the last question was asked. name: of the place, where it has one; known: apart from any thermometer"""

    elevation_m: float
    boil_c: float
    name: str
    known: bool

    @property
    def said(self) -> Value:
        """The place as it is told."""
        height = elevation(self.elevation_m)
        return say("place-by-name", name=self.name, place=height) if self.name else height


def read_off(heard: Heard, memory: Memory) -> Made | None:
    """What comes of a reading that is told, taken back or asked for; None for any other utterance."""
    refused = heard.is_refused and not is_barometer_alone(heard)
    if heard.hearing.request.recipe or heard.move or refused or heard.doc._.safety == FORMULA:
        return None
    words = norms(heard.doc)
    if memory.reading and thermometers.is_withdrawn(words):
        return _taken_back(heard, memory, memory.reading)
    read = thermometers.heard(heard.doc)
    if read:
        follow = {"ice": _in_ice, "boil": _at_boil}.get(read.way, _in_food)
        return follow(heard, memory, read)
    return _named_behind(heard, memory) or _by_barometer(heard, memory) or _to_a_tenth(heard, memory)


def is_barometer_alone(heard: Heard) -> bool:
    """Whether an utterance tells what a barometer reads, and no danger is in it by itself."""
    read = any(m.kind == "pressure" and m.unit in OF_WEATHER for m in heard.doc._.measures)
    return read and danger.listen(heard.doc, Scene()).hazard is None


def of_question(question: Request | None, kitchen: Kitchen) -> Here | None:
    """Where a question is asked; None where nobody knows."""
    here = settle_in(question or Request(), kitchen)
    if here.elevation_m is None:
        return None
    boil_c = ambient(here.elevation_m, here.pressure_pa).boiling_c
    return Here(here.elevation_m, boil_c, here.place, here.elevation_from != "boil_test")


def _in_ice(heard: Heard, memory: Memory, read: Read) -> Made | None:
    """The offset that ice shows; a boil that was read before is put right by it."""
    off_k = 0.0 if abs(read.value_c) <= RIGHT_K else read.value_c
    kept = Reading(way="ice", value_c=read.value_c, **_before(memory))
    last = memory.reading
    boiled = last if last and last.way == "boil" else None
    told: Words = say("right-in-ice", read=temp(read.value_c))
    if off_k:
        told = say("off-in-ice", zero=temp(0.0), size=temp_drop(abs(off_k)), way=_way(off_k))
    now = _with_offset(memory, off_k, replace(kept, boil_c=boiled.value_c if boiled else None))
    here = of_question(memory.request, memory.kitchen)
    if boiled is None or here is None or not off_k:
        return _told(heard, now, together(told, say("far-off") if abs(off_k) > FAR_K else ""))
    true_c = boiled.value_c - off_k
    figures: dict[str, Any] = {"read": temp(boiled.value_c), "true": temp(true_c)}
    if here.known and abs(true_c - here.boil_c) <= FITS_K:
        now = _with_offset(memory, off_k, replace(kept, boil_c=boiled.value_c, confirmed=True))
        return _told(heard, now, together(told, say("boil-fits", **figures, place=here.said)))
    found_m = _found_m(true_c)
    if found_m is None:
        return _told(heard, now, told)
    if here.known:
        doubt = say(
            "boil-does-not-fit", **figures, found=elevation(found_m), place=here.said, expected=temp(here.boil_c)
        )
        return _told(heard, now, together(told, doubt))
    moved = say("boil-gives", **figures, found=elevation(found_m))
    return _redone(heard, now, together(told, moved), _at(found_m))


def _at_boil(heard: Heard, memory: Memory, read: Read) -> Made | None:
    """A boil test: where the place is known it tests the thermometer, where it is not it tells the elevation."""
    now = heard.hearing.request
    if heard.doc._.safety:
        return None
    own_place = now.elevation_m is not None and now.elevation_from in ("place", "stated")
    here = of_question(now if own_place else memory.request, memory.kitchen)
    if memory.request is None and here and here.known and now.topic in marked("of_readings_told"):
        return _tested_first(heard, memory, read, here)
    elsewhere = memory.request is not None and read.elsewhere and not own_place
    if here and here.known and not elsewhere:
        return _tested(heard, memory, read, here)
    asks = bool(now.dish or now.dish_class)
    if memory.request is None and not asks:
        # the reading stands for itself, and is told as one
        return None
    off_k = 0.0 if read.foreign else memory.kitchen.thermometer_offset_c
    true_c = read.value_c - off_k
    found_m = _found_m(true_c)
    if found_m is None:
        return None
    kept = Reading(way="boil", value_c=read.value_c, **_before(memory))
    found = say("gives", true=temp(true_c), found=elevation(found_m))
    if off_k:
        found = say("gives-corrected", read=temp(read.value_c), true=temp(true_c), found=elevation(found_m))
    beside = _beside(found_m, here) if here else ""
    return _redone(heard, replace(memory, reading=kept), together(found, beside), _at(found_m))


def _tested_first(heard: Heard, memory: Memory, read: Read, here: Here) -> Made:
    """A test of the thermometer that is all that is asked: answered as a question, and its offset kept."""
    now, off_k = heard.hearing.request, read.value_c - here.boil_c
    kept = Reading(way="boil", value_c=read.value_c, **_before(memory))
    tested = memory if read.foreign else _with_offset(memory, off_k if abs(off_k) > RIGHT_K else 0.0, kept)
    return work_out(settle_in(now, memory.kitchen)), replace(after(now, tested), asked=None)


def _tested(heard: Heard, memory: Memory, read: Read, here: Here) -> Made | None:
    """A thermometer tested by the boil of a place that is known: both are told, and which is believed."""
    off_k, last = read.value_c - here.boil_c, memory.reading
    kept = Reading(way="boil", value_c=read.value_c, **_before(memory))
    known_k = memory.kitchen.thermometer_offset_c if last and last.way == "ice" else 0.0
    known_k = 0.0 if read.foreign else known_k
    true_c = read.value_c - known_k
    found_m = _found_m(true_c)
    figures: dict[str, Any] = {"read": temp(read.value_c), "place": here.said}
    if known_k and abs(true_c - here.boil_c) <= FITS_K:
        told = say("agrees-corrected", **figures, true=temp(true_c))
        return _redone(heard, replace(memory, reading=replace(kept, confirmed=True)), told)
    if abs(off_k) <= RIGHT_K or found_m is None:
        told = say("agrees", **figures)
        return _redone(heard, _with_offset(memory, 0.0, kept), told) if abs(off_k) <= RIGHT_K else None
    figures |= {"found": elevation(found_m), "expected": temp(here.boil_c)}
    if known_k:
        return _redone(heard, memory, say("by-the-ice", **figures, true=temp(true_c)))
    told = say("disagrees", **figures, size=temp_drop(abs(off_k)), way=_way(off_k))
    told_all = together(told, say("far-off") if abs(off_k) > FAR_K else "")
    return _redone(heard, memory if read.foreign else _with_offset(memory, off_k, kept), told_all)


def _named_behind(heard: Heard, memory: Memory) -> Made | None:
    """A place that is named behind a boil test that stood for it: the place is believed, and the thermometer is off."""
    now, last, reading = heard.hearing.request, memory.request, memory.reading
    boil_c = reading.value_c if reading and reading.way == "boil" else None
    if boil_c is None and last and last.elevation_from == "boil_test" and last.elevation_m is not None:
        boil_c = water.boiling_point_c(last.elevation_m) + memory.kitchen.thermometer_offset_c
    by_test = last is not None and last.elevation_from == "boil_test" and boil_c is not None
    words = norms(heard.doc)
    if not by_test or now.elevation_m is None or now.elevation_from not in ("place", "stated"):
        return None
    if boil_c is None or now.time_min or said_among(words, (*OTHERS, *thermometers.ELSEWHERE)):
        return None
    here = of_question(now, memory.kitchen)
    if here is None:
        return None
    # the height that the boil told was of this place
    places = tuple(place for place in memory.places if place.elevation_from != "boil_test")
    return _tested(heard, replace(memory, places=places), Read("boil", boil_c), here)


def _in_food(heard: Heard, memory: Memory, read: Read) -> Made | None:
    """What the thermometer must show for a temperature, or what was really meant by what it showed."""
    off_k = memory.kitchen.thermometer_offset_c
    if not off_k:
        return None
    # a thermometer that reads low by one test may have been tested badly: food is judged by what it shows
    doubted = off_k < 0 and memory.reading is not None and not memory.reading.confirmed
    if doubted:
        off_k = 0.0
    if doubted and read.way == "wanted":
        return _told(heard, memory, say("by-one-test", shown=temp(read.value_c)))
    if read.way == "wanted":
        shown = say(
            "must-show",
            wanted=temp(read.value_c),
            shown=temp(read.value_c + off_k),
            size=temp_drop(abs(off_k)),
            way=_way(off_k),
        )
        return _told(heard, memory, shown)
    true_c = read.value_c - off_k
    told = say("was-really", read=temp(read.value_c), true=temp(true_c))
    told = say("by-one-test", shown=temp(read.value_c)) if doubted else told
    dish = heard.hearing.request if heard.hearing.request.dish else talked_of(memory)
    if dish is None or not dish.dish:
        return _told(heard, memory, told)
    core = Request(
        text=heard.text,
        topic="doneness",
        dish=dish.dish,
        dish_class=dish.dish_class,
        temperature_c=true_c,
        temperature_of="core",
        forms=("enough", "safe", "is_ok"),
        units=_in_units(memory).kitchen.units,
    )
    verdict = work_out(settle_in(core, replace(memory.kitchen, thermometer_offset_c=0.0)))
    return _before_it(said(heard.text, told, _in_units(memory)), verdict), memory


def _taken_back(heard: Heard, memory: Memory, reading: Reading) -> Made:
    """A reading that counts no more: the thermometer and the place are as they were before it."""
    off_k = reading.offset_before_c
    told: Words = say("taken-back", off=yes(abs(off_k) > RIGHT_K), size=temp_drop(abs(off_k)), way=_way(off_k))
    back = replace(_with_offset(memory, off_k, None), reading=None)
    if reading.boil_c is not None and reading.way == "ice":
        back = replace(back, reading=Reading(way="boil", value_c=reading.boil_c))
    here = of_question(memory.request, memory.kitchen)
    if reading.before_m is None or here is None or abs(here.elevation_m - reading.before_m) < 1.0:
        return _redone(heard, back, told) if memory.request else _told(heard, back, told)
    to = say("taken-back-to", place=elevation(reading.before_m))
    slots = _at(reading.before_m) | {"elevation_from": reading.before_from, "place": reading.before_place}
    return _redone(heard, back, together(told, to), slots)


def _by_barometer(heard: Heard, memory: Memory) -> Made | None:
    """A barometer read in a place that is known: the air itself, or a report's figure, which is not believed."""
    measure = next((m for m in heard.doc._.measures if m.kind == "pressure" and m.unit in BAROMETER_UNITS), None)
    own = heard.hearing.request
    named = own.elevation_m if own.elevation_from == "place" else None
    last = talked_of(memory)
    here = of_question(memory.request, memory.kitchen)
    if measure is None or not LOWEST_PA <= measure.low <= HIGHEST_PA or here is None or last is None or named:
        return None
    if own.topic == "pressure" or own.method or own.dish:
        return None
    read_pa = measure.low - memory.kitchen.barometer_offset_pa
    before = settle_in(memory.request or Request(), memory.kitchen)
    boil = temp(here.boil_c)
    here_pa = ambient(here.elevation_m, before.pressure_pa).pressure_pa
    figures: dict[str, Any] = {"read": pressure(read_pa), "place": here.said, "here": pressure(here_pa)}
    reduced = air.looks_sea_level_reduced(read_pa, here.elevation_m)
    if reduced or (reduced is None and said_among(norms(heard.doc), REPORTS)):
        told = say("report-or-yours", **figures) if before.pressure_pa else say("report", **figures)
        return _told(heard, memory, together(told, say("still", boil=boil)))
    if abs(read_pa / air.pressure_pa(here.elevation_m) - 1) > air.WEATHER_SWING and here.known:
        return _told(heard, memory, say("misfit", **figures, boil=boil))
    placed = replace(memory.request or last, pressure_pa=read_pa)
    question = replace(placed, topic="boiling_point", dish=None, dish_class=None, method=None, subject=None, forms=())
    left = replace(after(replace(question, text=heard.text), memory), before=last, asked=None)
    return _exactly(heard, work_out(settle_in(question, memory.kitchen))), left


def _to_a_tenth(heard: Heard, memory: Memory) -> Made | None:
    """Where water boils to a tenth of a degree, where that is asked."""
    if not thermometers.is_to_a_tenth(norms(heard.doc)):
        return None
    question = question_of(heard.in_context(memory), memory, back_to_recipe=False)
    if question.topic != "boiling_point":
        return None
    work = work_out(settle_in(question, memory.kitchen))
    if work.missing:
        return None
    return _exactly(heard, work), replace(after(question, memory), asked=None)


def _exactly(heard: Heard, work: WorkedOut) -> WorkedOut:
    """An answer about the boil with the boil to a tenth of a degree before it."""
    request = work.request
    here = ambient(request.elevation_m or 0.0, request.pressure_pa)
    told = say(
        "tenth",
        celsius=fixed(here.boiling_c, 1),
        fahrenheit=fixed(here.boiling_c * 1.8 + 32, 1),
        pressure=pressure(here.pressure_pa),
    )
    intro = Memory(kitchen=Kitchen(units=request.units))
    return _before_it(said(heard.text, told, intro), work)


def _redone(heard: Heard, memory: Memory, told: Words, where: dict[str, Any] | None = None) -> Made:
    """What is told of a reading, and the question that is asked, or the last one, by what is known now.

    where: the slots of the place, where it is another one
    """
    question = _asked_now(heard, memory) or _asked_before(heard, memory)
    if question is None:
        return _told(heard, _somewhere(heard, memory, where), told)
    question = replace(question, **(where or {}))
    work = work_out(settle_in(question, memory.kitchen)).asked_as(heard.text)
    if work.missing:
        return _told(heard, replace(after(question, memory), asked=None), told)
    return _before_it(said(heard.text, told, _in_units(memory)), work), replace(after(question, memory), asked=None)


def _asked_now(heard: Heard, memory: Memory) -> Request | None:
    """The question that is asked beside a reading; None where nothing but the reading is told."""
    now, words = heard.hearing.request, norms(heard.doc)
    if not (now.dish or now.dish_class) or thermometers.way_of(words) != "boil" or now.dish == WATER:
        return None
    question = question_of(heard.in_context(memory), memory, back_to_recipe=False)
    topic = "time" if _is_of_no_dish(question.topic) else question.topic
    unused = tuple(u for u in question.unused if u.kind != "elevation")
    # how hot a syrup is boiled, or was, is no reading of the test
    syrup_c = question.temperature_c if (question.temperature_c or 0.0) > SYRUP_C else None
    return replace(question, topic=topic, temperature_c=syrup_c, unused=unused)


def _asked_before(heard: Heard, memory: Memory) -> Request | None:
    """The last question that was about anything but the place and its instruments."""
    now = heard.hearing.request
    earlier: Iterator[Request | None] = iter((memory.request, memory.before, *reversed(memory.earlier)))
    asked = next((q for q in earlier if q and not _is_of_no_dish(q.topic)), None)
    if asked is None or memory.request is None:
        return None
    where = {slot: getattr(memory.request, slot) for slot in ("elevation_m", "elevation_from", "place", "pressure_pa")}
    own = now.elevation_m is not None and now.elevation_from in ("place", "stated")
    if own:
        where = {slot: getattr(now, slot) for slot in ("elevation_m", "elevation_from", "place", "pressure_pa")}
    return replace(asked, **where)


def _is_of_no_dish(topic: str) -> bool:
    """Whether a question of a topic is not redone: it is about the place and its instruments, or by the way."""
    return topic in marked("without_a_dish") | marked("of_nothing") | marked("by_the_way")


def _somewhere(heard: Heard, memory: Memory, where: dict[str, Any] | None) -> Memory:
    """The memory where nothing but the place is known."""
    last = memory.request
    if where is None:
        return memory if last else after(_of_place(heard), memory)
    return after(replace(last or heard.hearing.request, **where), memory)


def _of_place(heard: Heard) -> Request:
    return replace(heard.hearing.request, topic="set_kitchen", temperature_c=None)


def _told(heard: Heard, memory: Memory, told: Words) -> Made:
    return said_of(heard.hearing.request, told, _in_units(memory), "calibrate"), replace(memory, asked=None)


def _in_units(memory: Memory) -> Memory:
    """The memory whose kitchen counts in the units of the conversation."""
    units = memory.request.units if memory.request else memory.kitchen.units
    return replace(memory, kitchen=replace(memory.kitchen, units=units))


def _before_it(intro: WorkedOut, work: WorkedOut) -> WorkedOut:
    """An answer with a sentence before it."""
    return replace(work, word=lambda: _joined(intro.answer, work.answer))


def _joined(first: Answer, second: Answer) -> Answer:
    return replace(second, text=f"{first.text}\n\n{second.text}", spoken=f"{first.spoken} {second.spoken}")


def _before(memory: Memory) -> dict[str, Any]:
    """What is known before a reading, to go back to."""
    last = memory.request
    return {
        "offset_before_c": memory.kitchen.thermometer_offset_c,
        "before_m": last.elevation_m if last else None,
        "before_from": last.elevation_from if last else None,
        "before_place": last.place if last else "",
    }


def _with_offset(memory: Memory, off_k: float, reading: Reading | None) -> Memory:
    kitchen = replace(memory.kitchen, thermometer_offset_c=round(off_k, 2))
    return replace(memory, kitchen=kitchen, reading=reading)


def _at(found_m: float) -> dict[str, Any]:
    """The slots of a place that a boil test tells of."""
    return {"elevation_m": found_m, "elevation_from": "boil_test", "place": "", "pressure_pa": None, "elevations_m": ()}


def _found_m(boil_c: float) -> float | None:
    """The elevation at which water boils so [m]; None where nobody cooks so high or low."""
    try:
        found_m = water.elevation_from_boiling_m(boil_c)
    except OutOfRange:
        return None
    return found_m if air.LOWEST_M <= found_m <= air.HIGHEST_M else None


def _beside(found_m: float, here: Here) -> Words:
    """A place held against the one before: as high, higher or lower."""
    climb_m = found_m - here.elevation_m
    way = "same" if abs(climb_m) < SAME_M else "higher" if climb_m > 0 else "lower"
    return say("beside-before", way=way, before=here.said, climb=elevation(abs(climb_m)))


def _way(off_k: float) -> str:
    return "high" if off_k > 0 else "low"
