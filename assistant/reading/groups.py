"""Where the components put what they heard: a group of spans of the Doc, each with what was heard as its attribute."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial
from typing import Any, Protocol

from spacy.tokens import Doc, Span

# where the attributes of a group's spans stand once more, in one tuple: they are asked for often
KEPT = "kept"
ATTRIBUTES: dict[str, str] = {}


class Heard(Protocol):
    """Anything that stands at words start to end."""

    @property
    def start(self) -> int:
        """The first word."""

    @property
    def end(self) -> int:
        """The word after the last one."""


def shown(group: str, attribute: str) -> None:
    """Make a group of spans: `doc.spans[group]`, each span with `span._.<attribute>`; `doc._.<group>` lists those."""
    ATTRIBUTES[group] = attribute
    Span.set_extension(attribute, default=None, force=True)
    Doc.set_extension(group, getter=partial(_listed, group=group), force=True)


def keep(doc: Doc, group: str, heard: Iterable[Heard]) -> None:
    """Put what was heard into its group; the label of a span is the kind of what was heard, where it has one."""
    kept, spans = tuple(heard), []
    for one in kept:
        span = Span(doc, one.start, one.end, label=getattr(one, "kind", group))
        span._.set(ATTRIBUTES[group], one)
        spans.append(span)
    doc.spans[group] = spans
    doc.user_data[f"{KEPT} {group}"] = kept


def _listed(doc: Doc, group: str) -> tuple[Any, ...]:
    kept: tuple[Any, ...] = doc.user_data.get(f"{KEPT} {group}", ())
    return kept
