"""A drill within a conversation: what is left of it between two utterances is a few numbers and words."""

from __future__ import annotations

from dataclasses import dataclass, replace

from assistant.drill import wording
from assistant.drill.hints import hint
from assistant.drill.reading import attempted, read
from assistant.replies.sentences import worded
from rules.drill import LONGEST_SET, THEMES, Question, grade, make_set
from rules.errors import UnknownWord, within
from rules.model import Units
from rules.said import Listed, listed, sentences, together, yes

say = sentences("drill/sitting")
COUNT = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Sitting:
    """A set of questions under way. With its seed, themes, units and count the set is made again.

    name: of the trainee under which the answers are kept; "" for nobody
    at: how many are behind; right: how many of them were answered right; passed: how many were passed over
    over: whether it has ended
    raises: ValueError for what no set can have
    """

    seed: int = 1
    themes: tuple[str, ...] = ()
    units: Units = "us"
    name: str = ""
    count: int = COUNT
    at: int = 0
    right: int = 0
    passed: int = 0
    over: bool = False

    def __post_init__(self) -> None:
        for theme in self.themes:
            if theme not in THEMES:
                raise ValueError(str(UnknownWord.among("theme", theme, THEMES)))
        within("number of questions", self.count, 1, LONGEST_SET, "")
        within("questions behind", self.at, 0, self.count if self.over else self.count - 1, "")
        within("right answers", self.right, 0, self.at, "")
        within("questions passed over", self.passed, 0, self.at - self.right, "")

    @property
    def question(self) -> Question:
        """The question that is put, in words."""
        return self._numbered(self.at)

    @property
    def last(self) -> Question | None:
        """The question before, in words; None at the first."""
        return self._numbered(self.at - 1) if self.at else None

    def _numbered(self, number: int) -> Question:
        every = make_set(self.seed, themes=self.themes, count=self.count, units=self.units)
        return wording.in_words(every[number])


def start(
    seed: int, themes: tuple[str, ...] = (), units: Units = "us", name: str = "", count: int = COUNT
) -> tuple[Sitting, str]:
    """Begin a set, and what is said first.

    >>> sitting, text = start(7, ("baking",))
    >>> sitting.at, text.splitlines()[0]
    (0, 'Set 7, 5 questions on baking. Say next to pass one over, hint for a hint, stop to end.')
    """
    sitting = Sitting(seed=seed, themes=themes, units=units, name=name, count=count)
    first = say(
        "begin", seed=str(seed), count=count, themed=yes(themes), themes=_themes(sitting),
        named=yes(name), name=name,
    )  # fmt: skip
    return sitting, f"{worded(first, units)}\n\n{put(sitting)}"


def put(sitting: Sitting) -> str:
    """The question under way, as it is put."""
    return wording.asked(sitting.question, sitting.at + 1, sitting.count)


def reply(sitting: Sitting, text: str) -> tuple[Sitting, str]:
    """Take a reply, and what is said to it: how it was, and the next question or how the set came out.

    Never raises because of what the text says. What cannot be read as a reply counts for nothing.
    """
    question = sitting.question
    said = read(question, text)
    if said.meaning == "stop":
        return replace(sitting, over=True), _end(sitting)
    if said.meaning == "again":
        return sitting, put(sitting)
    if said.meaning == "hint":
        return sitting, hint(question)
    if said.meaning == "why":
        return sitting, wording.reason(sitting.last)
    if said.meaning == "unread":
        return sitting, worded(say("unread", unread=wording.unread(question)), sitting.units)
    graded = grade(question, said.given)
    told = wording.told(question, graded)
    last = sitting.at + 1 == sitting.count
    passed = sitting.passed + (said.meaning == "pass")
    after = replace(sitting, at=sitting.at + 1, right=sitting.right + graded.right, passed=passed, over=last)
    if last:
        return after, f"{told}\n\n{_end(after)}"
    return after, f"{told}\n\n{put(after)}"


def understood(sitting: Sitting, text: str) -> bool:
    """Whether an utterance is a reply to the question, if a failed one, or is about the drill."""
    return read(sitting.question, text).meaning != "unread" or attempted(text)


def _end(sitting: Sitting) -> str:
    """How the set came out, and how to ask for another."""
    themed = yes(sitting.themes)
    afresh = say("afresh", themed=themed, themes=_themes(sitting), seed=str(sitting.seed))
    return worded(
        together(wording.score(sitting.right, sitting.at - sitting.passed, sitting.passed), afresh), sitting.units
    )


def _themes(sitting: Sitting) -> Listed:
    return listed(map(wording.theme, sitting.themes), "and")
