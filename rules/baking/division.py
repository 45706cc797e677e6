"""Which part of a recipe each line and step belongs to: the batter, or its filling, frosting or glaze.

Headings tell it. A list without any is cut where the method, the lines' own words, what is listed twice, and the order
of the list agree best: a part is a run of lines, since people list what they need in the order in which they need it.
"""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from itertools import pairwise

from rules.baking.part_names import announced, any_of, first_left, heads, is_apart, is_left, laid, listed, tied
from rules.baking.parts import Placed, placed
from rules.recipe import IngredientLine, Recipe, Step
from rules.recipes.phrases import says, stem, stems, tokens
from rules.remembered import all_of_them, remembered

MAIN = ""
CORE = ("flour", "powder", "soda", "yeast", "starter", "nut_meal")
# A spoon of flour thickens a filling; from here on it is a batter's [g].
FLOUR_G = 60.0
# From here on it is a sponge's, which its eggs hold up [g].
SPONGE_G = 25.0
# Points of evidence: what the line itself says, an amount named with it, a mention that other lines share, what an
# ingredient is usually for, what it costs to begin another part, to come back to one, and to list a thing twice in one.
SAYS_SO, WITH_AMOUNT, MENTIONED, USUAL, NEW_PART, COME_BACK, TWICE = 6.0, 2.0, 1.0, 1.5, 0.8, 1.6, 1.2
# How much of what was made first its portions come to, as a share of it: browned butter has lost its water.
LEAST_OF_STOCK, MOST_OF_STOCK = 0.6, 1.05
_SENTENCE = re.compile(r"(?<=[.!?;])\s+|\n+")
_NUMBER = re.compile(r"\d+(?:[./]\d+)?(?:\s+\d/\d)?|[¼½¾⅓⅔⅛⅜⅝⅞]")
# What sets a batter: behind it nothing more is made for it.
_SET_BY = ("bake", "steam", "fry")
_NEAR = 26
_LEAST_WORD = 4
# So many sentences ahead a part that is made without a name can still get one: "Frost the cake."
_AHEAD = 6
_MIXTURE = re.compile(r"\b(?P<of>[\w-]+)\s+(?:mixture|mix|paste)\b", re.I)
_ASIDE = re.compile(r"[,(;]| - ")


@dataclass(frozen=True, slots=True)
class _Said:
    """A sentence of the method: in which step (from zero), and the part that it is about."""

    step: int
    text: str
    part: str


@remembered(by=all_of_them)
def divided(recipe: Recipe) -> Recipe:
    """The recipe with every line and step in its part, where the recipe itself does not say; texts as they are.

    A recipe without flour, leavening or yeast stays in one piece, and so does one whose parts cannot be told.
    """
    lines = placed(recipe)
    if not any(_is_core(p) for p in lines) and not _is_sponge(lines):
        return recipe
    said = tuple(_laid_on(list(_sentences(recipe, lines)), lines))
    steps = tuple(_in_part(step, index, said) for index, step in enumerate(recipe.steps))
    if any(p.line.component for p in lines):
        return replace(recipe, steps=steps)
    parts = _cut(lines, said)
    if not _whole(lines, parts):
        return recipe
    ingredients = tuple(replace(line, component=part) for line, part in zip(recipe.ingredients, parts, strict=True))
    return replace(recipe, ingredients=ingredients, steps=steps)


@remembered(by=all_of_them)
def batter(recipe: Recipe) -> tuple[Placed, ...]:
    """The lines of the dough, batter or foam itself: not frosting or filling, not what the pan is greased with.

    A part counts when it holds flour, leavening or eggs and its name is not that of a finish. Where none does
    (a meringue, a pan of caramel), the whole recipe counts.
    """
    listed_lines = placed(divided(recipe))
    portions = [p for p in listed_lines if _is_made_of(p)]
    lines = [p for p in listed_lines if not is_apart(p.line.line) and not _is_stock(p, portions)]
    core = {"flour", "powder", "soda", "yeast", "starter"}
    named = {p.line.component for p in lines if p.part.name in core and not is_left(p.line.component)}
    chosen = tuple(p for p in lines if p.line.component in named)
    return chosen or tuple(p for p in lines if not is_left(p.line.component)) or tuple(lines)


def _is_made_of(p: Placed) -> bool:
    return says(p.line.line, listed("lines", "made_of"))


def _is_stock(p: Placed, portions: Sequence[Placed]) -> bool:
    """Whether a line is listed once more below in portions of what is made of it: butter that is browned."""
    if not p.mass_g or _is_made_of(p):
        return False
    of_it = (q.mass_g for q in portions if q.index > p.index and q.line.item == p.line.item)
    return LEAST_OF_STOCK <= sum(of_it) / p.mass_g <= MOST_OF_STOCK


def left_steps(recipe: Recipe) -> frozenset[int]:
    """The steps (from zero) that make a part which is left as it is."""
    return frozenset(i for i, step in enumerate(divided(recipe).steps) if is_left(step.component))


def _is_core(p: Placed) -> bool:
    return p.part.name in CORE and (p.part.name not in ("flour", "nut_meal") or p.mass_g >= FLOUR_G or not p.mass_g)


def _is_sponge(lines: Sequence[Placed]) -> bool:
    """Whether eggs carry what little flour there is."""
    eggs = any(p.part.name in ("egg", "white", "yolk") for p in lines)
    return eggs and any(p.part.name == "flour" and p.mass_g >= SPONGE_G for p in lines)


# What the method says


def _sentences(recipe: Recipe, lines: Sequence[Placed]) -> Iterator[_Said]:
    """The sentences of the method, each with the part that it is about: the one announced last, as far as that reaches.

    Before the batter is in the oven a part reaches to the end of its step, unless the batter is announced as well.
    Afterwards what is made of ingredients is no batter any more.
    """
    spoken = [one for index, step in enumerate(recipe.steps) for one in _spoken(index, step)]
    told = [announced(one.text) for one in spoken]
    main_told = any(a and a.plainly and a.kind.baked for a in told)
    part, baked, cored, step = MAIN, False, False, -1
    for at, (one, name) in enumerate(zip(spoken, told, strict=True)):
        component = recipe.steps[one.step].component
        if is_left(component):
            part = component
        elif one.step != step and not (baked or (main_told and part)):
            part = MAIN
        step = one.step
        if name:
            part = MAIN if name.kind.baked else name.kind.id
            baked = baked and not name.kind.baked
        elif part == MAIN and baked and _makes().search(one.text) and _names_any(one.text, lines):
            found = next((kind for later in spoken[at : at + _AHEAD] if (kind := first_left(later.text))), None)
            part = found.id if found else "topping"
        yield _Said(one.step, one.text, part)
        cored = cored or (part == MAIN and _told_of_core(one.text, lines))
        if one.sets and (cored or not any(_told_of_core(later.text, lines) for later in spoken[at + 1 :])):
            part, baked, cored = component if is_left(component) else MAIN, True, True


@dataclass(frozen=True, slots=True)
class _Spoken:
    """A sentence: in which step (from zero), and whether what it speaks of is baked, steamed or fried there."""

    step: int
    text: str
    sets: bool


def _spoken(index: int, step: Step) -> Iterator[_Spoken]:
    """The sentences of a step."""
    starts = [0, *(m.end() for m in _SENTENCE.finditer(step.text)), len(step.text) + 1]
    for start, end in pairwise(starts):
        if text := step.text[start:end].strip():
            yield _Spoken(index, text, any(start <= t.start < end and t.what in _SET_BY for t in step.times))


def _laid_on(said: list[_Said], lines: Sequence[Placed]) -> list[_Said]:
    """The sentences, with those put to another part whose making is told by where it goes before the batter is baked.

    "Spread the fig mixture over the dough" tells of the step that made it; "sprinkle it over the batter" of the
    sentence before; "roll the balls in the sugar" of itself.
    """
    cores = [p for p in lines if _is_core(p)]
    for at, s in enumerate(list(said)):
        told = laid(s.text)
        if told is None or s.part != MAIN or any(_mentions_line(s.text, p) for p in cores):
            continue
        part, place = told
        made = _MIXTURE.search(s.text[:place])
        named_mix = made or _MIXTURE.search(s.text)
        mixed = _mixed_before(said[:at], named_mix["of"], lines) if named_mix else None
        first = made and next((o for o in said[:at] if stem(made["of"].lower()) in stems(o.text)), None)
        if mixed is not None:
            of = [mixed]
        elif first:
            of = [i for i, o in enumerate(said[:at]) if o.step == first.step]
        elif _names_any(s.text, lines):
            of = [
                at,
                *([at - 1] if at and said[at - 1].step == s.step and _is_dry_mix(said[at - 1].text, lines) else []),
            ]
        else:
            of = [at - 1] if at and said[at - 1].step == s.step else []
        if not any(_mentions_line(said[i].text, p) for i in of for p in cores):
            for i in of:
                said[i] = replace(said[i], part=part)
    return said


def _mixed_before(said: Sequence[_Said], of: str, lines: Sequence[Placed]) -> int | None:
    """The place of the last sentence that mixes what a mixture is called by: "the nutmeg-sugar mixture"."""
    words = set(stems(of))
    told = (at for at, one in enumerate(said) if words <= set(stems(one.text)) and _is_dry_mix(one.text, lines))
    return max(told, default=None)


def _is_dry_mix(sentence: str, lines: Sequence[Placed]) -> bool:
    """Whether a sentence mixes sugar with spice or nuts and nothing of a batter."""
    of = {p.part.name for p in lines if _mentions_line(sentence, p)}
    return bool(of) and of <= {"sugar", "icing_sugar", "other"} and _makes().search(sentence) is not None


@cache
def _makes() -> re.Pattern[str]:
    return re.compile(rf"(?<![\w-]){any_of(listed('method', 'makes'))}(?![\w-])", re.I)


def _names_any(sentence: str, lines: Sequence[Placed]) -> bool:
    return any(_mentions_line(sentence, p) for p in lines if not is_apart(p.line.line))


def _told_of_core(text: str, lines: Sequence[Placed]) -> bool:
    """Whether a text names what the batter is made of: nuts are toasted before it is begun."""
    return any(_is_core(p) and _mentions_line(text, p) for p in lines)


def _mentions_line(sentence: str, p: Placed) -> bool:
    return not _heads(p.line).isdisjoint(stems(sentence))


def _in_part(step: Step, index: int, said: Sequence[_Said]) -> Step:
    """The step in the part that all of it is about."""
    if step.component:
        return step
    parts = {s.part for s in said if s.step == index}
    return replace(step, component=parts.pop()) if len(parts) == 1 else step


# Which line each mention is of


# the lines of the recipe at hand, with room for a long one
@lru_cache(maxsize=1024)
def _heads(line: IngredientLine) -> frozenset[str]:
    """The words by which a method calls an ingredient: the last one of its name and of the name as it is written."""
    weak = set(listed("lines", "weak"))
    names = (stems(line.item), stems(_ASIDE.split(line.line[line.end :])[0]))
    return frozenset(next((w for w in reversed(words) if w not in weak), words[-1]) for words in names if words)


def _first_number(text: str) -> str:
    found = _NUMBER.search(text)
    return found.group() if found else ""


def _evidence(lines: Sequence[Placed], said: Sequence[_Said]) -> list[dict[str, float]]:
    """For each line, how much speaks for each part."""
    heads: dict[str, list[int]] = defaultdict(list)
    for index, p in enumerate(lines):
        for head in _heads(p.line):
            heads[head].append(index)
    words = [set(stems(p.line.line)) for p in lines]
    found: list[dict[str, float]] = [defaultdict(float) for _ in lines]
    for s in said:
        spoken = tokens(s.text)
        for at, (word, start, _) in enumerate(spoken):
            among = heads.get(word) or _ending_in(word, heads)
            if not among or (at + 1 < len(spoken) and spoken[at + 1][0] in listed("lines", "made_before")):
                continue
            before = {spoken[i][0] for i in range(max(0, at - 2), at)}
            window = s.text[max(0, start - _NEAR) : start]
            for index, points in _meant(among, before, window, words, lines).items():
                found[index][s.part] = max(found[index][s.part], points)
    return found


def _ending_in(word: str, heads: Mapping[str, list[int]]) -> list[int]:
    """The lines of what a short word can mean: "the berries" are the blackberries."""
    found = {tuple(lines) for head, lines in heads.items() if len(word) >= _LEAST_WORD and head.endswith(word)}
    return list(found.pop()) if len(found) == 1 else []


def _meant(
    among: Sequence[int], before: set[str], window: str, words: Sequence[set[str]], lines: Sequence[Placed]
) -> dict[int, float]:
    """The lines that a mention can be of, with points: those that fit the words and the amount before it best."""
    own = [words[i] for i in among]
    special = set[str]().union(*own) - own[0].intersection(*own)
    fits = {}
    for i in among:
        number = _first_number(lines[i].line.line)
        amount = bool(number) and re.search(rf"(?<![\d/.]){re.escape(number)}(?![\d/.])", window) is not None
        qualified = len(before & words[i] & special) - len((before & special) - words[i])
        fits[i] = qualified + WITH_AMOUNT * amount
    best = max(fits.values())
    chosen = [i for i, fit in fits.items() if fit == best and best >= 0]
    return {i: (MENTIONED + max(0.0, best)) / len(chosen) for i in chosen}


# The cut


def _cut(lines: Sequence[Placed], said: Sequence[_Said]) -> list[str]:
    """The part of each line."""
    evidence = _evidence(lines, said)
    headed = None
    for points, p in zip(evidence, lines, strict=True):
        headed = (p.line.amount is None and heads(p.line.line)) or headed
        if headed:
            points[MAIN if headed.baked else headed.id] += SAYS_SO
        if (kind := tied(p.line.line)) is not None:
            known = {s.part for s in said if s.part != MAIN}
            # "sugar, for the meringue" is the frosting's where the method calls it that
            for part in [MAIN] if kind.baked else [kind.id, *([] if kind.id in known else known)]:
                points[part] += SAYS_SO
    parts = list(dict.fromkeys([MAIN, *(s.part for s in said), *(part for points in evidence for part in points)]))
    if len(parts) == 1:
        return [MAIN] * len(lines)
    _add_usual(lines, evidence, parts)
    return _best_runs(lines, evidence, parts)


def _add_usual(lines: Sequence[Placed], evidence: list[dict[str, float]], parts: Sequence[str]) -> None:
    """What an ingredient is usually for, beside what is said of it."""
    sugars = [p for p in lines if p.part.name in ("sugar", "syrup") and p.mass_g >= FLOUR_G]
    finishing, finishing_words = listed("kinds", "finishing"), listed("kinds", "finishing_words")
    for p, points in zip(lines, evidence, strict=True):
        name = p.line.item.lower()
        if (p.part.name in finishing and sugars) or any(word in name for word in finishing_words):
            for part in parts:
                points[part] += 0.0 if part == MAIN else USUAL
        elif _is_core(p) and p.part.name != "nut_meal":
            points[MAIN] += USUAL if p.part.name == "flour" else 2 * USUAL


def _best_runs(lines: Sequence[Placed], evidence: Sequence[Mapping[str, float]], parts: Sequence[str]) -> list[str]:
    """The runs of lines with the most evidence, found from the first line on.

    A state is where the current run began, its part, and the parts used before.
    """
    best: dict[tuple[int, str, frozenset[str]], tuple[float, list[str]]] = {}
    for part in parts:
        best[(0, part, frozenset((part,)))] = (evidence[0].get(part, 0.0), [part])
    for at in range(1, len(lines)):
        after: dict[tuple[int, str, frozenset[str]], tuple[float, list[str]]] = {}
        for (begun, part, used), (points, path) in best.items():
            again = TWICE * _listed_before(lines, begun, at)
            _keep(after, (begun, part, used), points + evidence[at].get(part, 0.0) - again, [*path, part])
            for other in parts:
                if other != part:
                    cost = COME_BACK if other in used else NEW_PART
                    key = (at, other, used | {other})
                    _keep(after, key, points + evidence[at].get(other, 0.0) - cost, [*path, other])
        # what is far behind the best never catches up
        most = max(points for points, _ in after.values())
        best = {key: state for key, state in after.items() if state[0] > most - 2 * SAYS_SO}
    return max(best.values(), key=lambda state: state[0])[1]


def _keep(
    states: dict[tuple[int, str, frozenset[str]], tuple[float, list[str]]],
    key: tuple[int, str, frozenset[str]],
    points: float,
    path: list[str],
) -> None:
    if key not in states or points > states[key][0]:
        states[key] = (points, path)


def _listed_before(lines: Sequence[Placed], begun: int, at: int) -> bool:
    """Whether the run lists the ingredient of a line already."""
    names = [(p.line.item, p.part.name) for p in lines[begun : at + 1] if not is_apart(p.line.line)]
    return bool(names) and not is_apart(lines[at].line.line) and Counter(names)[names[-1]] > 1


def _whole(lines: Sequence[Placed], parts: Sequence[str]) -> bool:
    """Whether a cut leaves the batter its leavening and most of its flour."""
    if not any(parts):
        return False
    in_main = [p for p, part in zip(lines, parts, strict=True) if part == MAIN]
    flours = sorted((p for p in lines if p.part.name == "flour"), key=lambda p: -p.mass_g)
    core = [p for p in lines if p.part.name in ("powder", "soda", "yeast", "starter")]
    return all(p in in_main for p in core) and (not flours or flours[0] in in_main)
