"""The validator's part on danger: concepts, hazards, a reply for each, and how a verdict is worded in each language."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from assistant.contributing.validate_wording import Call, languages
from rules import tables
from rules.errors import RulesError

if TYPE_CHECKING:
    from rules.safety.danger import Reply
    from rules.said import Said

FOLDER, VERDICTS = "lexicon/danger", "verdicts.toml"
# stands for every value of a sentence, and holds no figure
FILLED = {"food": "…", "canner": "…", "place": "…", "limit": "…"}
Problem = tuple[str, str, str]
CONCEPT_KEYS = {"kind", "words", "stays", "names", "not_before", "not_after"}
HAZARD_KEYS = {
    "id",
    "when",
    "unless",
    "psi",
    "hours",
    "subject",
    "beside",
    "within",
    "minutes",
    "lasting",
    "advises",
    "sure",
    "elevation_m",
}


def problems() -> Iterator[Problem]:
    """File, row and what is wrong with it, for every fault."""
    yield from _concepts_and_hazards()
    try:
        yield from _replies()
        for language in languages():
            yield from worded_wrongly(language)
    except (RulesError, TypeError, KeyError) as fault:
        yield FOLDER, "rows", str(fault)


def _concepts_and_hazards() -> Iterator[Problem]:
    from assistant.understanding import concepts, hazards, temperatures

    roles = (*temperatures.ROLES, hazards.ANY_ROLE)
    known_keys = HAZARD_KEYS | {f"{before}{role}_f" for role in roles for before in ("", "unless_")}
    home: dict[str, str] = {}
    for name in (concepts.SHARED, *concepts.families()):
        file, read = f"{FOLDER}/{name}.toml", concepts.family(name)
        for id, row in read.get("concept", {}).items():
            if home.setdefault(id, file) != file:
                yield file, id, f"stands in {home[id]} already"
            yield from ((file, id, fault) for fault in _concept(row))
        for row in read.get("hazard", ()):
            yield from ((file, row["id"], f'key "{key}" unknown') for key in row.keys() - known_keys)


def _concept(row: dict[str, Any]) -> Iterator[str]:
    from assistant.reading.text import fold
    from assistant.understanding.concepts import ROW_SETS

    yield from (f'key "{key}" unknown' for key in row.keys() - CONCEPT_KEYS - set(ROW_SETS))
    for word in row.get("words", ()):
        if word != fold(word):
            yield f'"{word}": write it as it is compared, "{fold(word)}"'
    if not row.get("words") and not any(key in row for key in ROW_SETS):
        yield "nothing tells it: no words and no rows"


def _replies() -> Iterator[Problem]:
    """Hazards without a reply and replies to none, refusals that nobody can ask about, sources that are none.

    raises: BadTable for rows that cannot be read
    """
    from assistant.understanding import concepts, hazards
    from rules.preserving import catalogue
    from rules.safety import danger

    told, refusals = danger.replies(), catalogue.refusals()
    wanted = {h.id for h in hazards.hazards() if h.subject is None} | {f"general_{f}" for f in concepts.families()}
    yield from ((danger.REPLIES, id, "no reply to this hazard") for id in sorted(wanted - told.keys()))
    yield from ((danger.REPLIES, id, "no such hazard") for id in sorted(told.keys() - wanted))
    subjects = {row["id"] for row in tables.read_toml("lexicon/safety_subjects.toml")["subject"]}
    unheard = sorted(catalogue.PRACTICES - subjects)
    yield from ((catalogue.FILE, id, "is heard, and is no subject of food safety") for id in unheard)
    yield from unknown_sources(danger.REPLIES, told.values())
    yield from unknown_sources(catalogue.FILE, [refusal.reply for refusal in refusals.values()])


def unknown_sources(file: str, replies: Iterable[Reply]) -> Iterator[Problem]:
    """Sources that stand in no row of the bibliography."""
    known = tables.sources()
    for reply in replies:
        yield from ((file, reply.id, f'source "{source}" unknown') for source in reply.sources if source not in known)


def calls() -> Iterator[Call]:
    """What rows say of a danger, of a refusal, of a food that is canned, and the kinds that are judged by a time."""
    from rules.preserving import catalogue, foods, printed, tested
    from rules.safety import danger, lethality

    for reply in danger.replies().values():
        yield from (_call(reply.said(piece), danger.REPLIES) for piece in reply.pieces)
    for refusal in catalogue.refusals().values():
        yield from (replace(_call(said, catalogue.FILE), names=None) for said in refusal.sentences)
    for food in foods.foods().values():
        yield from (_call(said, foods.FOODS) for said in (food.demands, food.instead) if said)
    for recipe in printed.recipes().values():
        yield _call(tested.name_of(recipe), printed.RECIPES)
    for kind in lethality.kinds():
        yield from (_call(said, lethality.KINDS) for said in (lethality.called(kind), lethality.called_held(kind)))


def _call(said: Said, where: str) -> Call:
    """A sentence that nothing fills."""
    return Call(said.file, said.id, frozenset(), where)


def verdict_words(language: str) -> dict[str, Any]:
    """How a verdict begins in a language, and what no refusal holds.

    danger, refusal: the first words, of a verdict on a danger and of a refusal about jars; figure: a regular expression

    >>> verdict_words("en")["danger"]
    ['No', 'Discard', 'Yes', 'Only if']
    """
    words: dict[str, Any] = tables.read_toml(f"wording/{language}/{VERDICTS}")
    return words


def worded_wrongly(language: str) -> Iterator[Problem]:
    """Verdicts with another first word, refusals about jars with a figure, and sentences that cannot be said.

    raises: BadTable where the language does not say how a verdict begins
    """
    yield from dict.fromkeys(_wrong_in(language))


def _wrong_in(language: str) -> Iterator[Problem]:
    """The same, twice where a refusal shares its words with a danger."""
    from rules.preserving import catalogue
    from rules.safety import danger

    words = verdict_words(language)
    for reply in danger.replies().values():
        yield from _wrong(reply, (reply.said(piece) for piece in reply.pieces), language, words["danger"])
    for refusal in catalogue.refusals().values():
        yield from _wrong(refusal.reply, refusal.sentences, language, words["refusal"], words["figure"])


def _wrong(
    reply: Reply, sentences: Iterable[Said], language: str, begins: list[str], figure: str = "(?!)"
) -> Iterator[Problem]:
    """The faults of one reply's sentences that are there. figure: what they may not hold, nothing where left out."""
    from assistant.replies.sentences import BadWording, NoSuchSentence, sentence

    file = f"wording/{language}/{reply.file}.ftl"
    for said in sentences:
        try:
            texts = [sentence(said.file, said.id, FILLED, units, language) for units in ("us", "metric")]
        except NoSuchSentence:
            continue
        except BadWording as fault:
            yield file, said.id, str(fault)
            continue
        if said.id.endswith(".verdict") and not texts[0].startswith(tuple(begins)):
            yield file, said.id, "does not begin as a verdict does"
        if re.search(figure, texts[0]):
            yield file, said.id, "holds a figure of what is refused"
