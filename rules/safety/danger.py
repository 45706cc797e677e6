"""What is refused or warned of whatever the topic: the verdict, what to do instead, why, and whom to ask."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from typing import Any

from rules import tables
from rules.book import Case, Part, rule
from rules.model import Caution, Request
from rules.said import Said, Value, exact_duration, sentences, together

REPLIES = "lexicon/danger/replies.toml"
INSTEAD, FREEZE, BOILED, FROZEN_SOURCES = "instead", "freeze", "boiled", ("nchfp", "from-memory")
BOILED_MIN, BOILED_SOURCES = 3.0, ("cdc-eid-2025-boil", "epa-boil")
say = sentences("safety/danger")


@dataclass(frozen=True, slots=True, kw_only=True)
class Reply:
    """What is said of a danger: where its sentences stand, which there are, and what they rest on.

    file: of the wording, without its ending; its message `id` holds the sentences as attributes
    steps: how many say what to do instead; asks: whether one says whom to ask; rule: whether one is added to the words
        on other dangers; caution: whether one warns beside an answer
    underdone: where it is of jars that had too little, whether these figures stand beside the verdict, or instead of it
    """

    id: str
    file: str
    sources: tuple[str, ...]
    steps: int = 1
    asks: bool = True
    rule: bool = False
    caution: bool = False
    underdone: str = ""

    @property
    def pieces(self) -> tuple[str, ...]:
        """The sentences that it has.

        >>> Reply(id="oil_fire", file="dangers/kitchen", sources=(), steps=2, asks=False).pieces
        ('verdict', 'instead', 'instead-2', 'why')
        """
        parts = (("ask", self.asks), ("rule", self.rule), ("caution", self.caution))
        more = (name for name, has in parts if has)
        return ("verdict", *self.instead_pieces, "why", *more)

    @property
    def instead_pieces(self) -> tuple[str, ...]:
        """Those of them that say what to do instead."""
        return ("instead", *(f"instead-{number}" for number in range(2, self.steps + 1)))

    @property
    def family(self) -> str:
        """The family of the hazard.

        >>> Reply(id="wax_seal", file="dangers/canning", sources=()).family
        'canning'
        """
        return self.file.rsplit("/", 1)[-1]

    def said(self, piece: str, **values: Value) -> Said:
        """One of its sentences."""
        return Said(self.file, f"{self.id}.{piece}", tuple(values.items()))

    def whom(self) -> tuple[Said, ...]:
        """Whom to ask, as the last step; nothing where nobody need be asked."""
        return (say("ask", whom=self.said("ask")),) if self.asks else ()


@cache
def replies() -> dict[str, Reply]:
    """The reply to every danger, by its id.

    raises: BadTable where a row has a field too many or too few
    """
    return {
        id: _reply(id, family, row) for family, rows in tables.read_toml(REPLIES).items() for id, row in rows.items()
    }


def _reply(id: str, family: str, row: dict[str, Any]) -> Reply:
    try:
        return Reply(**{**row, "id": id, "file": f"dangers/{family}", "sources": tuple(row["sources"])})
    except (KeyError, TypeError) as fault:
        raise tables.BadTable(f"data/{REPLIES}: {id}: {fault}") from fault


def beside(request: Request) -> tuple[Caution, ...]:
    """What is warned of after the answer to a question, in one line each, where the danger does not forbid it."""
    warned = () if request.danger else tuple(replies()[id] for id in request.dangers_too)
    return tuple(Caution("warn", reply.said("caution"), reply.sources) for reply in warned)


def further(case: Case) -> Iterator[Caution]:
    """The verdicts on further dangers, or the rule of a family, each as a caution."""
    for reply in (replies()[id] for id in case.request.dangers_too):
        if reply.rule:
            yield Caution("warn", reply.said("rule"), reply.sources)
        else:
            yield Caution("stop", reply.said("verdict"), reply.sources)


@rule("safety.danger", "from-memory")
def warning(case: Case) -> Part | None:
    """A danger that was heard: the verdict first, and no figure of what is refused."""
    if (reply := replies().get(case.request.danger or "")) is None:
        return None
    verdict = reply.said("verdict")
    if case.request.pressed:
        return _pressed(case, reply, verdict)
    return Part(
        headline=verdict,
        steps=(*map(reply.said, reply.instead_pieces), *reply.whom()),
        because=reply.said("why"),
        cautions=(Caution("stop", verdict, reply.sources), *further(case)),
        sources=reply.sources,
    )


def _pressed(case: Case, reply: Reply, verdict: Said) -> Part:
    """The same refusal once more, short: what was said for it is no reason, why, and what to do instead."""
    how, instead = case.request.pressed, reply.said("instead")
    if how == FREEZE:
        return Part(headline=say("frozen"), steps=(say("frozen-how"),), sources=FROZEN_SOURCES)
    if how == BOILED:
        return Part(
            headline=say("boiled", time=exact_duration(BOILED_MIN)), because=say("boiled-why"), sources=BOILED_SOURCES
        )
    if how == INSTEAD:
        more = (*map(reply.said, reply.instead_pieces[1:]), *reply.whom())
        stop = (Caution("stop", verdict, reply.sources),)
        return Part(headline=instead, steps=more, because=reply.said("why"), cautions=stop, sources=reply.sources)
    return Part(
        headline=together(say("pressed", how=how, family=reply.family), reply.said("why")),
        steps=(instead,),
        cautions=(Caution("stop", verdict, reply.sources), *further(case)),
        sources=reply.sources,
    )


NEEDS: tuple[str, ...] = ()
RULES = (warning,)
