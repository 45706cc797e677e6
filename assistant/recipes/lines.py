"""One line of an ingredient list -> IngredientLine."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from typing import Any

from assistant.reading.figures import is_plain, number_from
from assistant.reading.spans import Number
from assistant.reading.units import AMOUNTS, Unit, unit_at, unit_by, unit_of
from assistant.reading.words import Cut, cut
from assistant.recipes.pantry import Ingredient, find, neutral, of_some_make
from rules import tables
from rules.recipe import Amount, IngredientLine, MassFrom
from rules.recipes.phrases import stems

LONGEST = 500
RANGE_SIGNS = ("-", "~", "to", "or")
# Signs of a page that are no words: boxes to tick, footnote marks, joiners that nobody sees; each becomes one space.
_SIGNS = str.maketrans(dict.fromkeys("▢☐□▪◦•†‡\u2060\u2061\u2062\u2063\u2064\u200b\u200c\u200d\ufeff", " "))
# "warm water 105-110 degrees": what follows the name is about it.
_FIGURE_BEHIND = re.compile(r"(?<=[a-z])\s+(?=[\d¼½¾])", re.IGNORECASE)
# "2 clove(s)", "3 bunch(es)": one or more.
_PLURAL = re.compile(r"(?<=[a-z])\((?:e?s|ies)\)", re.IGNORECASE)
# "medium to large": which of the sizes decides nothing.
_OF_SIZES = re.compile(r"^\s*(?:small|medium|large)\s*(?:to|-|–)\s*(?=(?:medium|large|extra)\b)", re.IGNORECASE)
# What is done to it, told behind its name without a comma: "1 onion diced".
_DONE_TO_IT = re.compile(
    r"\s+((?:(?:finely|roughly|thinly|coarsely|freshly|lightly)\s+)?"
    r"(?:diced|chopped|sliced|minced|melted|softened|grated|shredded|peeled|crushed|beaten|sifted|mashed|drained))\s*$",
    re.IGNORECASE,
)
# "1 3.4- ounce package", "1 15- 15-ounce can": the stroke stands with its figure.
_TORN_SIZE = re.compile(r"(?<=\d)- (?=(?:ounce|oz|pound|lb|inch)\b)", re.IGNORECASE)
_TWICE = re.compile(r"\b(\d+)- +(?=\1-)")
# "1 - 3.4 ounce box": one pack of so much, not from one to so much
_ONE_PACK = re.compile(
    r"^\s*1\s+(?P<sign>[-–])\s+\d+(?:\.\d+)?[\s-]*(?:ounces?|oz|pounds?|lb|g|ml)\b\.?\s+(?P<pack>[a-z]+)", re.IGNORECASE
)
# "1 ½-inch knob": one of that length, not one and a half.
_OF_LENGTH = re.compile(r"(\d{1,2})\s+(?:\d+\s+)?[\d¼½¾/.]+\s*-?\s*(?:inch|in\.|cm)\s+", re.IGNORECASE)
# A scanner's "1 l/2" and "I/2": the letter is a one.
_SCANNED = re.compile(r"(?<![a-z\d])[lI](?=/\d)|(?<=\d )1(?=b\.?\s)")
# "1 ¼-ounce packet" is one packet of a quarter ounce, not one and a quarter ounces.
_SMALL_PACK = re.compile(
    r"(\d{1,3})(?=\s(?:[¼½¾]|\d/\d)-(?:ounce|oz)\.?\s+(?:packet|envelope|package|sachet|can)s?\b)", re.IGNORECASE
)


@dataclass(frozen=True, slots=True)
class Measure:
    """A number or range with its unit, and where it stands. piece: what one of a count holds ("2 (14 oz) cans")."""

    start: int
    end: int
    low: float
    high: float | None
    unit: Unit | None
    piece: Measure | None = None

    def amount(self, line: str) -> Amount:
        """The measure as the recipe keeps it."""
        return Amount(self.low, self.unit.name if self.unit else None, self.high, line[self.start : self.end])

    def mass_g(self, item: Ingredient) -> float | None:
        """Mass [g] at the lower end."""
        if self.piece is not None:
            each = self.piece.mass_g(item)
            return None if each is None else each * self.low
        return item.mass_g(self.low, self.unit)


@cache
def words(section: str, name: str) -> tuple[str, ...]:
    """A word list of the recipe reader."""
    return tuple(tables.read_toml("lexicon/recipe_words.toml")[section][name])


@cache
def any_of(section: str, name: str) -> str:
    """A regular expression for any word of a list, longest first."""
    listed = sorted(words(section, name), key=len, reverse=True)
    return "(?:" + "|".join(re.escape(word).replace(r"\ ", r"\s+") for word in listed) + r")(?!\w)"


@cache
def _patterns() -> dict[str, re.Pattern[str]]:
    flags = re.IGNORECASE
    return {
        "lead": re.compile(rf"\s*(?:(?:{any_of('lines', 'lead')}|[~≈+])\s*)*", flags),
        "before_unit": re.compile(rf"\s*(?:{any_of('lines', 'before_unit')}\s+)*", flags),
        "one": re.compile(
            r"\s*(?:(?:big|large|small|good|generous)\s+)?(pinch|dash|handful|knob|sprig|drop(?=\s+of))\s+(?:of\s+)?",
            flags,
        ),
        "times": re.compile(r"\s*[x×]\s*(?=\d)", flags),
        "and": re.compile(r"\s*,?\s*(?:\bplus\b|\+|\band\b|&)\s*", flags),
        "less": re.compile(r"\s*,?\s*\b(?:minus|less)\b\s*", flags),
        "range": re.compile(r"\s*(?:-|–|—|~|\bto\b|\bor\b)\s*", flags),
        "or": re.compile(r"\s*(?:/|;|=|\bor\b|,|\bequals\b|\||\bscant\b|\babout\b|≈)\s*", flags),
        "each": re.compile(r"\s*(?:each|apiece|a piece)\b", flags),
        "to_taste": re.compile(rf"\(?\b{any_of('lines', 'to_taste')}\)?", flags),
        "optional": re.compile(rf"\(?\b{any_of('lines', 'optional')}\)?:?", flags),
        "divided": re.compile(rf"\(?\b{any_of('lines', 'divided')}\)?", flags),
        "length": re.compile(
            r"^\s*-?\s*(?:inch(?:es)?\b|in\.|cm\b|[\"”″])\s*(?:piece|knob|length|stick|nub|chunk|thumb)s?\s+(?:of\s+)?",
            flags,
        ),
        "joined": re.compile(r"^(?:plus|and|&|\+)\s+(?=[\da-z¼½¾])", flags),
        "further": re.compile(r"\s(?:\+\s*|(?:&|and|plus)\s+)(?=[\d¼½¾⅓⅔])", flags),
        "either": re.compile(r"(?:^|(?<=\s))(?:[\w%-]+\s+){1,2}or\s+(?=\S)", flags),
        "juice_of": re.compile(
            r"\s*(?:the\s+)?(?:finely\s+)?(?:grated\s+)?(juice|zest|rind)(?:\s+and\s+(?:juice|zest))?\s+(?:of|from)\s+",
            flags,
        ),
    }  # fmt: skip


def figure_at(text: str, at: int, spelled: bool = False) -> tuple[float, float | None, int] | None:
    """The number or range that begins at a place: its ends, and where it stops.

    spelled: whether "one", "a", "half a" count as figures
    """
    seen = cut(text)
    first = _number(seen, seen.at(at), spelled)
    if first is None:
        return None
    signed = first.end < len(seen.norms) and seen.norms[first.end] in RANGE_SIGNS
    upper = _number(seen, first.end + 1, spelled) if signed else None
    if upper is None or upper.value <= first.value:
        return first.value, None, seen.end(first.end)
    dozens = seen.norms[upper.end - 1] == "dozen" and seen.norms[first.end - 1] != "dozen"
    return first.value * (12 if dozens else 1), upper.value, seen.end(upper.end)


def _number(seen: Cut, at: int, spelled: bool) -> Number | None:
    if not 0 <= at < len(seen.norms):
        return None
    number = number_from(seen.norms, at)
    if number is None:
        return Number(at, at + 1, 1.0) if spelled and seen.norms[at] in ("a", "an") else None
    if is_plain(number, seen.norms):
        return number
    hangs = seen.text[seen.end(number.end) :].startswith("-")
    named = hangs and unit_at(seen.norms, seen.spelled, number.end, AMOUNTS) is None
    return number if spelled and not named else None


def _unit_at(text: str, at: int) -> tuple[Unit, int] | None:
    seen = cut(text)
    for start in dict.fromkeys((at, _skip("before_unit", text, at))):
        word = seen.at(start, over="-")
        if word >= 0 and (hit := unit_at(seen.norms, seen.spelled, word, AMOUNTS)):
            end = seen.end(hit[1])
            return unit_by(hit[0]), end + text[end:].startswith(".")
    return None


def _plain(text: str, at: int, spelled: bool = False) -> Measure | None:
    """A figure with its unit, without brackets: "2-3 cups", "28-ounce"."""
    figure = figure_at(text, at, spelled)
    if figure is None:
        return None
    low, high, end = figure
    unit = _unit_at(text, end)
    if unit is None:
        return Measure(at, end, low, high, None)
    part, end = _part_behind(text, unit[1]) if high is None else (0.0, unit[1])
    return Measure(at, end, low + part, high, unit[0])


def _part_behind(text: str, end: int) -> tuple[float, int]:
    """What hangs on behind a unit, a share of it, and where that stops: a pound AND A HALF."""
    seen = cut(text)
    sign = seen.at(end)
    part = number_from(seen.norms, sign + 1) if 0 <= sign < len(seen.norms) - 1 and seen.norms[sign] == "and" else None
    own = part and unit_at(seen.norms, seen.spelled, part.end, AMOUNTS)
    if part is None or own or not 0 < part.value < 1 or is_plain(part, seen.norms) or seen.norms[sign + 1] == "half":
        return 0.0, end
    return part.value, seen.end(part.end)


def _skip(name: str, text: str, at: int) -> int:
    found = _patterns()[name].match(text, at)
    return found.end() if found else at


def _packed(text: str, count: Measure) -> Measure | None:
    """A count of packs with what each holds: "2 (14 oz) cans", "1 8-ounce package", "3 x 400 g tins"."""
    times = _skip("times", text, count.end)
    bracket = re.compile(r"\s*\(\s*").match(text, count.end)
    at = times if times > count.end else bracket.end() if bracket else _skip("lead", text, count.end)
    piece = _plain(text, _skip("lead", text, at))
    if piece is None or piece.unit is None or piece.unit.kind not in ("mass", "volume"):
        return _pack_by_name(text, count) if bracket else None
    end = _said_again(text, piece.end)
    if bracket and times == count.end:
        close = text.find(")", end)
        if close < 0:
            return None
        end = close + 1
    pack = _unit_at(text, end)
    if pack and (pack[0].kind == "count" or pack[0].name == "stick"):
        return Measure(count.start, pack[1], count.low, count.high, pack[0], piece)
    of_each = times > count.end or (bracket and _of_each(text[bracket.end() : piece.end], piece))
    return Measure(count.start, end, count.low, count.high, None, piece) if of_each else None


def _of_each(bracket: str, piece: Measure) -> bool:
    """Whether a bracket behind a count weighs one of them: 4 (8-ounce) steaks; "6 (about 2 pounds) thighs" are all."""
    said = re.sub(r"[^a-z]+$", "", bracket.lower())
    return piece.unit is not None and bracket[:1].isdigit() and (said.endswith(("ounce", "oz", "pound", "lb")))


def _said_again(text: str, end: int) -> int:
    """Where a measure stops that is said again in another unit right behind a stroke: 400g/14oz."""
    stroke = re.compile(r"\s*/\s*").match(text, end)
    other = _plain(text, stroke.end()) if stroke else None
    return other.end if other and other.unit else end


def _pack_by_name(text: str, count: Measure) -> Measure | None:
    """Packs known by a trade size: "2 (#10) cans"."""
    size = re.compile(r"\s*\([^()]{1,20}\)").match(text, count.end)
    pack = _unit_at(text, size.end()) if size else None
    return replace(count, unit=pack[0], end=pack[1]) if pack and pack[0].kind == "count" else None


def _one(text: str, at: int) -> Measure | None:
    """A measure whose figure goes without saying: "pinch of cayenne"."""
    found = _patterns()["one"].match(text, at)
    unit = unit_of(found[1]) if found else None
    return Measure(at, found.end(1), 1.0, None, unit) if found and unit else None


def measure_at(text: str, at: int, spelled: bool = False) -> Measure | None:
    """The measure that begins at a place, or None. spelled: whether "one", "a", "half a" count as figures."""
    if packs := _SMALL_PACK.match(text, at):
        return _packed(text, Measure(at, packs.end(1), float(packs[1]), None, None))
    if sized := _OF_LENGTH.match(text, at):
        unit = _unit_at(text, sized.end())
        of_count = unit if unit and unit[0].kind == "count" else (None, sized.end())
        return Measure(at, of_count[1], float(sized[1]), None, of_count[0])
    found = _plain(text, at, spelled)
    if found is None:
        return _one(text, at) if spelled else None
    if found.unit is None:
        return _packed(text, found) or found
    sign = _patterns()["range"].match(text, found.end)
    upper = _plain(text, sign.end()) if sign and found.high is None else None
    if upper and upper.unit and upper.unit.name == found.unit.name and upper.low > found.low:
        return replace(found, high=upper.low, end=upper.end)
    if upper and upper.unit and upper.unit.kind == found.unit.kind and "or" not in text[found.end : upper.start]:
        high = upper.low * upper.unit.size / found.unit.size
        return replace(found, high=high, end=upper.end) if high > found.low else found
    return found


@dataclass(frozen=True, slots=True)
class _Measured:
    """All measures at one place: those that add up, and those that say the same again."""

    sum: tuple[Measure, ...]
    same: tuple[Measure, ...]
    each: tuple[Measure, ...]
    end: int


def _bracket(text: str, at: int) -> tuple[list[Measure], bool, int] | None:
    """The measures inside a bracket that opens at a place, whether they are of one piece each, and where it ends."""
    opened = re.compile(r"\s*[(\[]\s*").match(text, at)
    if not opened:
        return None
    close = min((i for i in (text.find(")", opened.end()), text.find("]", opened.end())) if i >= 0), default=-1)
    if close < 0:
        return None
    inner, cursor, found = text[:close], opened.end(), []
    while cursor < close:
        measure = measure_at(inner, _skip("lead", inner, cursor))
        if measure is None or measure.unit is None:
            break
        found.append(measure)
        cursor = _skip("each", inner, measure.end)
        if (more := _skip("and", inner, cursor)) > cursor and (added := measure_at(inner, more)) and added.unit:
            found[-1] = _added(measure, added)
            cursor = added.end
        cursor = _skip("or", inner, cursor)
    each = _patterns()["each"].search(inner, opened.end()) is not None
    return (found, each, close + 1) if found and cursor >= close else None


def _added(first: Measure, second: Measure) -> Measure:
    if first.unit and second.unit and first.unit.kind == second.unit.kind:
        return replace(first, low=first.low + second.low * second.unit.size / first.unit.size, end=second.end)
    return first


def _measured(text: str, first: Measure) -> _Measured:
    total, same, each = [first], list[Measure](), list[Measure]()
    end = first.end
    while True:
        if bracket := _bracket(text, end):
            (each if bracket[1] else same).extend(bracket[0])
            end = bracket[2]
            continue
        joined = _skip("and", text, end)
        following = measure_at(text, joined) if joined > end else None
        if following is None and joined == end:
            following = _lesser(text, end, total[-1])
        if following and following.unit and following.unit.kind in ("mass", "volume") and total[-1].unit:
            total.append(following)
            end = following.end
            continue
        lessened = _skip("less", text, end)
        taken = measure_at(text, lessened) if lessened > end else None
        if taken and taken.unit and taken.high is None:
            total.append(replace(taken, low=-taken.low))
            end = taken.end
            continue
        again = re.compile(r"\s*(?:/|=|\|)\s*").match(text, end)
        other = measure_at(text, again.end()) if again else None
        if other and other.unit:
            lesser = _lesser(text, other.end, other)
            same.append(_added(other, lesser) if lesser else other)
            end = same[-1].end
            continue
        return _Measured(tuple(total), tuple(same), tuple(each), end)


def _behind(found: _Measured, rest: str) -> _Measured:
    """The measures, with the weight that a bracket behind the name of the ingredient states: "3 eggs (150 g)"."""
    for opened in re.finditer(r"[(\[]", rest):
        if (bracket := _bracket(rest, opened.start())) and not found.same and not found.each:
            return replace(found, **{"each" if bracket[1] else "same": tuple(bracket[0])})  # type: ignore[arg-type]
    return found


def _lesser(text: str, at: int, last: Measure) -> Measure | None:
    """A smaller unit of the same kind right behind: "1 lb. 4 oz"."""
    space = re.compile(r",?\s+").match(text, at)
    more = measure_at(text, space.end(), spelled=True) if space else None
    smaller = more and more.unit and last.unit and more.unit.kind == last.unit.kind and more.unit.size < last.unit.size
    return more if smaller else None


def _place(line: str) -> tuple[_Measured, str] | None:
    """The measures of a line and the words around them, joined."""
    at = _skip("lead", line, 0)
    first = measure_at(line, at, spelled=True) or _one_spelled(line)
    if first and not _percent_of_item(line, first):
        found = _measured(line, first)
        return found, line[found.end :]
    for gap in re.finditer(r"(?<=[\s:,|.\-–—(\t=])(?=[\d¼½¾⅓⅔⅛⅜⅝⅞])", line):
        last = measure_at(line, gap.start())
        if last is None:
            continue
        before = line[: gap.start()].rstrip(" \t:,|.-–—(=")
        bare = not _patterns()["each"].sub("", line[last.end :]).strip(" .)") and find(before) is not None
        if (last.unit or bare) and before.strip():
            found = _measured(line, last)
            opened = "(" in line[len(before) : gap.start()]
            rest = _patterns()["each"].sub("", line[found.end :])
            rest = rest.lstrip(") ") if opened else rest
            if re.match(r"\s*[-\w]", rest) and rest.strip()[:1].isalpha() and last.unit is None:
                continue
            return found, f"{before}, {rest.strip(' ,|')}" if rest.strip(" ,|.)") else before
    return None


def _one_spelled(line: str) -> Measure | None:
    """A measure whose article was taken for words before a number: "a scant teaspoon"."""
    first = measure_at(line, len(line) - len(line.lstrip()), spelled=True)
    return first if first and first.unit else None


def _percent_of_item(line: str, first: Measure) -> bool:
    """Whether "2% milk" is the name of the milk rather than a baker's percentage."""
    if not first.unit or first.unit.kind != "percent":
        return False
    item = find(line[first.start :].split(",")[0])
    return item is not None and item.role in ("liquid", "dairy")


def _unpacked(rest: str) -> str:
    """The words behind a measure without the pack they name: "12 oz bag chocolate chips", "1-inch piece ginger"."""
    rest = _patterns()["length"].sub("", rest)
    first, _, more = rest.strip().partition(" ")
    unit = unit_of(first) if first.isalpha() and more.strip() else None
    packed = (unit and unit.kind == "count") or (more.strip() and first.lower() in words("lines", "packs"))
    return re.sub(r"^\s*of\s+", "", more) if packed and find(_unbracketed(rest)[0]) is None else rest


def _split(rest: str) -> tuple[str, str]:
    """The name of the ingredient and what is done to it."""
    rest = _unpacked(rest)
    rest = re.sub(r"^\s*(?:of\b|x\b|[-–—:|,.]+)?\s*", "", rest, flags=re.IGNORECASE)
    bare, inside = _unbracketed(rest)
    if not bare.strip(" ,.;") and inside:
        # all of the name stands in a bracket: "2/3 cup (60 g) (rolled oats)"
        bare, inside = inside[0], inside[1:]
    name, tail = _named(bare)
    if not find(name) and (chosen := _one_of_two(name)):
        name = chosen
    if not find(name) and (further := _patterns()["further"].search(name) or _FIGURE_BEHIND.search(name)):
        name = _without_size(name, further.end())
    if not find(name) and (further := _patterns()["further"].search(name) or _FIGURE_BEHIND.search(name)):
        name, tail = name[: further.start()], f"{name[further.start() :]}, {tail}"
    if not find(name):
        signs = (f"{name.lower()} ".find(sign) for sign in words("lines", "cut_at"))
        cut = min((at for at in signs if at > 0), default=len(name))
        name, tail = name[:cut], f"{name[cut:]}, {tail}"
    if done := _DONE_TO_IT.search(name):
        name, tail = name[: done.start()], f"{done[1]}, {tail}"
    return " ".join(name.split()).strip(" .;:*)]"), "; ".join(filter(None, (_tidy(tail), *map(_tidy, inside))))


def _without_size(name: str, at: int) -> str:
    """The name without the weight of one that stands amid its adjectives: boneless 2-3 pound chuck roast."""
    size = measure_at(name, at)
    sized = size and size.unit and size.unit.kind == "mass" and all(word in neutral() for word in stems(name[:at]))
    return f"{name[:at]}{name[size.end :]}" if size and sized else name


def _unbracketed(rest: str) -> tuple[str, list[str]]:
    """The words outside all brackets, and those of every bracket, the innermost first."""
    inside = list[str]()
    while brackets := re.findall(r"[(\[]([^()\[\]]*)[)\]]", rest):
        inside += brackets
        rest = re.sub(r"\s*[(\[][^()\[\]]*[)\]]", " ", rest)
    open_one = re.search(r"\s*[(\[]([^()\[\]]*)$", rest)
    return (rest[: open_one.start()], [*inside, open_one[1]]) if open_one else (rest, inside)


def _named(bare: str) -> tuple[str, str]:
    """The name before the first comma that ends one, and what follows: "boneless, skinless chicken thighs, cubed"."""
    pieces = bare.split(",")
    for end in range(1, len(pieces) + 1):
        name = " ".join(pieces[:end])
        if find(name):
            return name, ",".join(pieces[end:])
        if not all(word in neutral() for word in stems(name)):
            break
    whole = bare.replace(",", " ")
    return (whole, "") if find(whole) else (name, ",".join(pieces[end:]))


def _one_of_two(name: str) -> str | None:
    """The ingredient of which a line leaves the choice: "light or dark brown sugar", "butter or margarine"."""
    name = _OF_SIZES.sub("", name)
    if find(name):
        return name
    first, said, second = name.replace("/", " or ").partition(" or ")
    if not said:
        return None
    counted = re.match(r"(?:about\s+)?[\d¼½¾]+\s+", second)
    if counted and all(word in neutral() for word in stems(first)):
        return second[counted.end() :]
    ends = second.split()
    heads = (" ".join(ends[at:]) for at in range(1, len(ends)))
    shared = (head if head.startswith(first) else f"{first} {head}" for head in heads)
    either = (_patterns()["either"].sub("", name), second)
    return next((told for told in (*shared, first, *either) if find(told)), None)


def _tidy(text: str) -> str:
    tidy = " ".join(text.split()).strip(" ,;.")
    return tidy if tidy.count("(") == tidy.count(")") else tidy.strip("() ")


def _mass(found: _Measured, item: Ingredient) -> tuple[float | None, MassFrom | None]:
    """Mass [g] at the lower end, and what it rests on. Grams that the line states win over any table."""
    first = found.sum[0]
    weighed = first.unit is not None and first.unit.name in ("g", "kg")
    if not weighed and (stated := [m.low * m.unit.size for m in found.same if m.unit and m.unit.kind == "mass"]):
        metric = [m.low * m.unit.size for m in found.same if m.unit and m.unit.name in ("g", "kg")]
        pieces = metric or stated
        return (sum(pieces) if len(pieces) == len(found.sum) else pieces[-1]), "stated"
    if each := [m.low * m.unit.size for m in found.each if m.unit and m.unit.kind == "mass"]:
        return first.low * each[0], "stated"
    masses = [m.mass_g(item) for m in found.sum]
    if any(mass is None for mass in masses):
        other = next((m.mass_g(item) for m in found.same if m.mass_g(item) is not None), None)
        return (other, "density") if other is not None else (None, None)
    total = sum(mass for mass in masses if mass is not None)
    if first.piece is not None:
        return total, "stated"
    kind = first.unit.kind if first.unit else "count"
    return total, "unit" if kind == "mass" else "density" if kind == "volume" else "each"


@lru_cache(maxsize=512)
def read_line(text: str, component: str = "") -> IngredientLine | None:
    """Read one ingredient line.

    text: the line, without its bullet; component: the sub-recipe it stands in
    returns: the line with what was understood; None where it is empty or too long (over 500 characters) to be one

    >>> line = read_line("2 1/4 cups plus 2 tbsp (297 g) all-purpose flour, sifted")
    >>> line.amount, line.unit, line.further[0].value, line.mass_g, line.preparation
    (2.25, 'cup', 2.0, 297.0, 'sifted')
    """
    line = text.strip()
    if not line or len(line) > LONGEST:
        return None
    patterns = _patterns()
    flags = {name: bool(patterns[name].search(line)) for name in ("divided", "optional")}
    bare = _made_plain(line)
    if bare.startswith("(") and bare.find(")") == len(bare) - 1:
        bare = f" {bare[1:-1]} "
    for name in ("divided", "optional", "to_taste"):
        bare = patterns[name].sub(lambda found: " " * len(found[0]), bare)
    placed = _juice(bare) or _place(bare)
    name, preparation = _split(placed[1] if placed else bare)
    known = (placed and _ground(placed[0].sum[0], name, preparation)) or find(name)
    item = known or of_some_make(name) or Ingredient(name)
    fields: dict[str, Any] = {
        "line": line,
        "component": component,
        "item": item.name or name,
        "known": known is not None,
    }
    fields |= {"role": item.role, "preparation": preparation, **flags}
    if placed:
        found = _behind(placed[0], placed[1])
        first = found.sum[0]
        mass, mass_from = _mass(found, item)
        fields |= {"amount": first.low, "amount_high": first.high, "unit": first.unit.name if first.unit else None}
        fields |= {"further": tuple(m.amount(line) for m in found.sum[1:]), "mass_g": mass and round(mass, 3)}
        fields |= {"mass_from": mass_from, "start": first.start, "end": found.end}
        fields |= _joined(fields, item)
    return IngredientLine(**fields)


def _made_plain(line: str) -> str:
    """The line without signs of its page and slips of its scanner, each letter in its place."""
    if (one := _ONE_PACK.match(line)) and _is_pack(one["pack"]):
        line = f"{line[: one.start('sign')]} {line[one.end('sign') :]}"
    plain = _SCANNED.sub(lambda found: "1" if found[0] in "lI" else "l", line.translate(_SIGNS))
    plain = _TWICE.sub(lambda found: " " * len(found[0]), plain)
    return _PLURAL.sub(lambda found: " " * len(found[0]), _TORN_SIZE.sub(" -", plain))


def _is_pack(word: str) -> bool:
    unit = unit_of(word.lower())
    return (unit is not None and unit.kind == "count") or word.lower() in words("lines", "packs")


def _ground(first: Measure, name: str, preparation: str) -> Ingredient | None:
    """What is dried and ground where it comes by the spoon: a teaspoon of ginger or pepper is neither root nor pod."""
    spooned = first.unit is not None and first.unit.name in ("tsp", "tbsp", "pinch", "dash")
    cut_up = {*stems(name), *stems(preparation)} & set(words("lines", "cut_up"))
    spice = find(f"ground {name}") if spooned and not cut_up else None
    return spice if spice and spice.role == "flavouring" else None


def _joined(fields: dict[str, Any], item: Ingredient) -> dict[str, Any]:
    """What stands behind the name and adds to it: "plus 2 tablespoons", "3 eggs plus 2 egg yolks"."""
    said = fields["preparation"]
    joint = _patterns()["joined"].match(said)
    if not joint or not fields["mass_g"]:
        return {}
    again = measure_at(said, joint.end())
    if again and again.unit and not said[again.end :].strip(" ."):
        more_g, added = again.mass_g(item), again.amount(said)
        return _with(fields, more_g or 0.0, added)
    more = read_line(said[joint.end() :])
    if more is None or more.role != fields["role"] or not more.mass_g or more.amount is None:
        return {}
    return _with(fields, more.mass_g, Amount(more.amount, more.unit, more.amount_high, more.line))


def _with(fields: dict[str, Any], more_g: float, added: Amount) -> dict[str, Any]:
    return {"mass_g": round(fields["mass_g"] + more_g, 3), "further": (*fields["further"], added)}


def _juice(line: str) -> tuple[_Measured, str] | None:
    """ "Zest of 1 lemon": the figure counts the fruit."""
    found = _patterns()["juice_of"].match(line)
    first = measure_at(line, found.end(), spelled=True) if found else None
    if not found or not first:
        return None
    measured = _measured(line, first)
    fruit = re.sub(r"s$", "", line[measured.end :].strip())
    return measured, f"{fruit} {found[1].lower()}"
