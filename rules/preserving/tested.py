"""How printed times are told: by style, pack and jar, in as few words as they need."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from rules.model import Caution, Quantity, Request
from rules.preserving import jars
from rules.preserving.printed import Recipe, recipe_of, unprinted_pack
from rules.preserving.times_here import Time
from rules.preserving.vessel import BOILING_WATER, called
from rules.said import Measure, Said, Words, listed, measure, number, sentences, together

Way = tuple[str, tuple[str, ...]]
Minutes = tuple[tuple[tuple[str, ...], float], ...]
RECIPES = "preserving/recipes"
say = sentences("preserving/tested")


def is_one(times: Sequence[Time]) -> bool:
    """Whether all that can be meant takes one time."""
    return len({time.most_min for time in times}) == 1


def packed_food(request: Request, times: Sequence[Time]) -> str | Said:
    """The food as it is packed, where one style and pack are meant: raw-pack peaches, crushed tomatoes."""
    styles, packs = {time.style for time in times}, {time.pack for time in times}
    food = called(request)
    if len(styles) == 1 and (style := next(iter(styles))):
        food = say("styled", style=style, food=food)
    if len(packs) == 1 and packs & set(request.packing):
        food = say("packed", pack=next(iter(packs)), food=food)
    return food


def jar_names(sizes: Iterable[str]) -> Words:
    """Jars by name: pints, half-pints or pints."""
    return listed([say("jar", size=size) for size in sizes], "or")


def asked_jars(request: Request, sizes: Iterable[str]) -> Words:
    """The jars as the cook named them, where it was one: 4 oz jars; else the printed sizes."""
    if len(request.jars) != 1:
        return jar_names(sizes)
    jar = request.jars[0]
    return jar_names((jars.NAMED[jar.value, jar.unit],)) if jars.by_name(jar) else say("jar-of", jar=of_jar(jar))


def of_jar(jar: Quantity) -> Measure:
    """What a jar holds, as the cook said it."""
    return measure(jar.value, jar.unit)


def odd_jar(request: Request) -> Quantity | None:
    """The first jar that takes the time of a printed size of another name."""
    return next((jar for jar in request.jars if not jars.by_name(jar)), None)


def each(times: Sequence[Time]) -> Words:
    """Every time that can be meant: hot pack, pints 30 min, quarts 35 min; raw pack, pints 35 min, quarts 40 min."""
    ways = grouped(times)
    plain = len(ways) == 1
    return listed([_way(way, minutes, plain) for way, minutes in ways], "semicolons")


def grouped(times: Sequence[Time]) -> list[tuple[tuple[Way, ...], Minutes]]:
    """Styles and packs that take the same minutes, each with these.

    >>> row = Time("", "hot", "pint", 20, 30, 30, False), Time("", "raw", "pint", 20, 30, 30, False)
    >>> grouped(row)
    [((('', ('hot', 'raw')),), ((('pint',), 30),))]
    """
    by_way: dict[tuple[str, str], Minutes] = {}
    for style, pack in dict.fromkeys((time.style, time.pack) for time in times):
        own = {t.jar: t.most_min for t in times if (t.style, t.pack) == (style, pack)}
        by_way[style, pack] = tuple(
            (tuple(jar for jar in own if own[jar] == minutes), minutes) for minutes in dict.fromkeys(own.values())
        )
    packs: dict[tuple[str, Minutes], tuple[str, ...]] = {}
    for (style, pack), minutes in by_way.items():
        packs[style, minutes] = (*packs.get((style, minutes), ()), pack)
    ways: dict[Minutes, tuple[Way, ...]] = {}
    for (style, minutes), heard in packs.items():
        ways[minutes] = (*ways.get(minutes, ()), (style, heard))
    return [(way, minutes) for minutes, way in ways.items()]


def _way(ways: tuple[Way, ...], minutes: Minutes, plain: bool) -> Words:
    times = listed([say("jars-take", jars=jar_names(sizes), time=number(t)) for sizes, t in minutes], "commas")
    styles, packs = [style for style, _ in ways if style], ways[0][1]
    if styles:
        return say("of-way", way=listed([say("style", style=style) for style in styles], "or"), times=times)
    pack = say("pack", pack="either" if len(packs) > 1 else packs[0])
    return times if plain else say("of-way", way=pack, times=times)


def notes(request: Request, times: Sequence[Time], canner: str = BOILING_WATER) -> Words:
    """What must be known beside the time: a jar that takes the time of another, a pack that is not printed."""
    other = next(((jar, size) for jar in request.jars if (size := takes_of(jar, times)) is not None), None)
    jar = None
    if other:
        own = jars.NAMED.get((other[0].value, other[0].unit), "other")
        jar = say("jar-as", own=own, jar=of_jar(other[0]), size=other[1])
    pack = unprinted_pack(request, canner)
    return together(jar, say("pack-not-printed", pack=pack, food=called(request)) if pack else None)


def takes_of(jar: Quantity, times: Sequence[Time]) -> str | None:
    """The printed size whose time a jar takes, where it is called otherwise."""
    size, sizes = jars.size_of(jar), tuple(time.jar for time in times)
    fits = jars.fitting(size, sizes) if size else None
    return fits if fits and (fits != size or not jars.by_name(jar)) else None


def holds_for(request: Request, times: Sequence[Time]) -> Caution | None:
    """That the time is of one tested recipe, by its name, with its headspace."""
    recipe = recipe_of(request)
    if recipe is None:
        return None
    memory = ("from-memory",) if recipe.memory or any(time.memory for time in times) else ()
    text = say(
        "holds-for",
        recipe=name_of(recipe),
        guide=recipe.guide or "none",
        headspace=headspace(recipe),
    )
    return Caution("warn", text, ("usda-aib-539", *memory))


def name_of(recipe: Recipe) -> Said:
    """The name of a tested recipe as it is printed."""
    return Said(RECIPES, recipe.process.replace(" ", "-"))


def headspace(recipe: Recipe) -> Said:
    """The headspace of a recipe in both units."""
    return say("headspace", inches=measure(recipe.headspace_in, "in"), cm=number(recipe.headspace_in * 2.54, 1))
