"""A recipe before and after: the amounts that change, each as a share of what was written."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from assistant.printing.plots import COLOURS, Asked, Shares
from assistant.printing.sheet import TICK_PT, sheet
from assistant.recipes.errors import NoRecipe
from assistant.replies.one_line import clean
from assistant.replies.sentences import worded
from rules.model import Answer
from rules.said import Said, elevation, listed, number, sentences

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from rules.recipes.convert import Converted

# A line that moves by less than this share is as it was.
LEAST_SHARE = 0.005
# how long a name may be, and how much room it has beside the bars [mm]
LONGEST_NAME, SHORT_NAME = 34, 16
NAMES_MM, NARROW_NAMES_MM = 60.0, 36.0
say = sentences("printing/plots")


def draw(asked: Asked) -> Figure:
    """Bars from what was written to what is to be used, for the recipe in the file that the words name.

    raises: OSError where there is no such file; RecipeError where it holds no recipe
    """
    from matplotlib.ticker import MaxNLocator

    shares = _shares(asked)
    there = elevation(shares.from_elevation_m)
    note = worded(say("recipe-note", there=there, style=shares.style), asked.units)
    names_mm, longest = (NARROW_NAMES_MM, SHORT_NAME) if asked.narrow else (NAMES_MM, LONGEST_NAME)
    title = worded(say("recipe", title=shares.title), asked.units)
    figure, axes = sheet(asked, title, note, names_mm if shares.moved else None)
    if not shares.moved:
        axes.text(0.5, 0.5, worded(say("recipe-as-it-is"), asked.units), transform=axes.transAxes, ha="center", size=13)
        axes.set_axis_off()
        return figure
    moved = shares.moved[::-1]
    for level, (_, ratio) in enumerate(moved):
        share = (ratio - 1) * 100
        axes.barh(level, share, height=0.5, color=COLOURS[1 if share > 0 else 2], hatch="" if share > 0 else "//")
        axes.annotate(
            f" {share:+.0f} % ", (share, level), va="center", ha="left" if share > 0 else "right", size=TICK_PT
        )
    axes.set_yticks(range(len(moved)), [_short(name, longest) for name, _ in moved], size=TICK_PT, parse_math=False)
    axes.axvline(0, color="black", linewidth=1.2)
    most = max(abs(ratio - 1) for _, ratio in moved) * (240 if asked.narrow else 130)
    axes.set_xlim(-most, most)
    axes.xaxis.set_major_locator(MaxNLocator(3 if asked.narrow else 8))
    axes.xaxis.set_major_formatter(lambda value, _: f"{value:+.0f} %" if value else "0")
    return figure


def told(asked: Asked) -> str:
    """Each amount that changes, and by how much.

    raises: as draw does
    """
    shares = _shares(asked)
    lines = listed((_told(name, ratio) for name, ratio in shares.moved), "commas")
    title = worded(say("recipe", title=shares.title), asked.units)
    return worded(say("recipe-told", title=title, lines=lines) if shares.moved else say("recipe-as-it-is"), asked.units)


def shares_of(done: Converted, title: str = "") -> Shares:
    """What becomes of the amounts of a recipe. title: where it has none of its own"""
    style = done.style.replace("_", " ")
    moved = tuple((to.line.item, to.ratio) for to in done.ingredients if abs(to.ratio - 1) > LEAST_SHARE)
    named = clean(done.recipe.title) or title or worded(say("recipe-of", style=style), "us")
    return Shares(named, style, done.from_elevation_m, moved)


def _shares(asked: Asked) -> Shares:
    from assistant.recipes.converting import convert_recipe
    from assistant.recipes.read import bytes_of
    from assistant.recipes.recipe_answer import convert

    if asked.shares:
        return asked.shares
    if asked.question:
        found = convert(asked.question)
        if isinstance(found, Answer):
            raise NoRecipe("the recipe", "it cannot be converted as it stands", "Say what is missing")
        return shares_of(found, asked.question.dish or "")
    path = Path(asked.words)
    done = convert_recipe(bytes_of(path), to_elevation_m=asked.elevation_m, units=asked.units, name=path.name)
    return shares_of(done, path.stem)


def _told(name: str, ratio: float) -> Said:
    way = "less" if ratio < 1 else "more"
    return say("recipe-line", name=name, way=way, share=number(abs(ratio - 1) * 100, 0))


def _short(name: str, longest: int) -> str:
    return name if len(name) <= longest else f"{name[: longest - 1]}…"
