"""What of an answer is shown at each depth: what a cook sets, checks and does; the workings and the rest on request."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache

from assistant.replies.figures import span_text, value_text
from assistant.replies.quantities import Say
from rules import tables
from rules.baking.rounding import IN_TSP, measure
from rules.catalogue import marked
from rules.model import Answer, Because, Caution, Figure

BRIEF, USUAL = 1, 2
MOST_FIGURES = MOST_STEPS = 4
# lines of a usual reply, and what of its figures and steps is kept where other lines are many
MOST_LINES, FEWEST_FIGURES, FEWEST_STEPS = 12, 1, 3
MOST_NOTES = 1
MOST_SOURCES = 3
WORKINGS = "wording/workings.toml"
SENTENCE_END = re.compile(r"(?<=[a-z0-9)\]%][.])\s+(?=[A-Z])")


@cache
def workings() -> frozenset[str]:
    """Figures by which an answer was worked out, and which no cook sets or checks."""
    return frozenset(tables.read_toml(WORKINGS)["figures"])


@cache
def unshown() -> frozenset[str]:
    """Workings that no cook reads, or that steps and reasons say already: of them nothing is shown but on request."""
    return frozenset(tables.read_toml(WORKINGS)["unshown"])


def figures(answer: Answer, headline: str, beside: Sequence[str], say: Say) -> tuple[Figure, ...]:
    """The figures that are shown: not those that the headline or the sentences beside tell, nor workings where others
    are left."""
    if answer.request.depth != USUAL:
        return answer.figures if answer.request.depth > USUAL else ()
    new = [f for f in answer.figures if not any(text in headline for text in _texts(f, say))]
    if answer.request.topic == "temperature":
        new = [f for f in new if f.unit != "min"]
    new = [f for f in new if f.id not in told_in_steps() or not _tells(beside, f, say)]
    own = [f for f in new if f.id not in workings()]
    rest = own or [f for f in new if f.id not in unshown() or not (answer.steps or answer.because)]
    return tuple(rest[:MOST_FIGURES])


@cache
def told_in_steps() -> frozenset[str]:
    """Figures that a step or a caution tells as well, where they need no line of their own."""
    return frozenset(tables.read_toml(WORKINGS)["told_in_steps"])


def _tells(texts: Sequence[str], figure: Figure, say: Say) -> bool:
    """Whether a sentence tells a figure: of a time its range where it has one, since 10 min may be of another thing."""
    spans = [text for text in _spans(figure, say) if text != value_text(figure, say)]
    told = spans if spans and figure.unit == "min" else _texts(figure, say)
    return any(re.search(rf"(?<![\d.,]){re.escape(one)}", text) for text in texts for one in told)


def fitted(figures: Sequence[Figure], steps: Sequence[str], beside: int) -> tuple[tuple[Figure, ...], tuple[str, ...]]:
    """As many figures and steps as leave the reply short; beside: its other lines. Figures go before steps."""
    over = max(0, beside + len(figures) + len(steps) - MOST_LINES)
    fewer = min(over, max(0, len(figures) - FEWEST_FIGURES))
    kept = figures[: len(figures) - fewer]
    return tuple(kept), tuple(steps[: max(FEWEST_STEPS, len(steps) - (over - fewer))])


def _texts(figure: Figure, say: Say) -> tuple[str, ...]:
    """A figure in every way in which a sentence may have said it."""
    spoons = (measure(figure.value, IN_TSP),) if figure.unit == "tsp" else ()
    return (value_text(figure, say), *_spans(figure, say), *spoons)


def _spans(figure: Figure, say: Say) -> tuple[str, ...]:
    """The range of a figure, as a line of its own has it and as a sentence does."""
    if figure.low is None or figure.high is None:
        return ()
    ends = figure.low, figure.high
    setting = (say.oven_span(*ends), say.temp_span(*ends)) if figure.unit == "degC" else ()
    return (span_text(figure, say), *setting)


def steps(answer: Answer) -> tuple[str, ...]:
    """The steps that are shown."""
    told = tuple(str(step) for step in answer.steps)
    if answer.request.menu or answer.request.dishes:
        # of a menu no dish is left out
        return told
    return told if answer.request.depth > USUAL else told[:MOST_STEPS] if answer.request.depth == USUAL else ()


def reasons(answer: Answer, headline: str) -> tuple[str, ...]:
    """The reasons that are shown: all of an explanation, elsewhere the first sentence of the first."""
    if answer.request.depth == BRIEF:
        return ()
    texts = [str(b.text) for b in answer.because if str(b.text).casefold() not in headline.casefold()]
    if answer.request.depth > USUAL or answer.request.topic in marked("told_whole"):
        return tuple(texts)
    return tuple(first_sentence(text) for text in texts[:1])


def first_sentence(text: str) -> str:
    """The first sentence of a text.

    >>> first_sentence("Water boils at 93 °C (199 °F). No pot gets hotter.")
    'Water boils at 93 °C (199 °F).'
    """
    return SENTENCE_END.split(text, maxsplit=1)[0]


def cautions(answer: Answer, headline: str) -> tuple[Caution, ...]:
    """The cautions that are shown: all that warn, and of mere notes the first."""
    told = [c for c in answer.cautions if str(c.text) not in headline]
    if answer.request.depth > USUAL:
        return tuple(told)
    notes = [c for c in told if c.level == "note"][: MOST_NOTES if answer.request.depth == USUAL else 0]
    return tuple(c for c in told if c.level != "note" or c in notes)


def cited(answer: Answer) -> tuple[str, ...]:
    """The ids of the sources of what is shown."""
    if answer.request.depth == BRIEF:
        return ()
    used: Sequence[Because] = answer.because
    return tuple(i for b in used for i in b.sources) + tuple(i for c in answer.cautions for i in c.sources)
