"""A recipe before and after: the amounts that change, each as a share of what was written."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from assistant.printing.plots import COLOURS, Asked
from assistant.printing.sheet import TICK_PT, sheet
from assistant.recipes.errors import NoRecipe
from assistant.replies.sentences import worded
from rules.model import Answer
from rules.said import Words, elevation, sentences

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from rules.recipes.convert import Converted
    from rules.recipes.lines import LineTo

# A line that moves by less than this share is as it was.
LEAST_SHARE = 0.005
LONGEST_NAME = 34
say = sentences("printing/plots")


def draw(asked: Asked) -> Figure:
    """Bars from what was written to what is to be used, for the recipe in the file that the words name.

    raises: OSError where there is no such file; RecipeError where it holds no recipe
    """
    done = _converted(asked)
    moved = [to for to in done.ingredients if abs(to.ratio - 1) > LEAST_SHARE]
    style = done.style.replace("_", " ")
    note = worded(say("recipe-note", there=elevation(done.from_elevation_m), style=style), asked.units)
    figure, axes = sheet(worded(say("recipe", title=_title(asked, done)), asked.units), note)
    if not moved:
        axes.text(0.5, 0.5, worded(say("recipe-as-it-is"), asked.units), transform=axes.transAxes, ha="center", size=13)
        axes.set_axis_off()
        return figure
    axes.set_position((0.30, 0.17, 0.62, 0.7))
    for level, to in enumerate(reversed(moved)):
        share = (to.ratio - 1) * 100
        axes.barh(level, share, height=0.5, color=COLOURS[1 if share > 0 else 2], hatch="" if share > 0 else "//")
        axes.annotate(
            f" {share:+.0f} % ", (share, level), va="center", ha="left" if share > 0 else "right", size=TICK_PT
        )
    axes.set_yticks(range(len(moved)), [_name(to) for to in reversed(moved)], size=TICK_PT)
    axes.axvline(0, color="black", linewidth=1.2)
    most = max(abs(to.ratio - 1) for to in moved) * 130
    axes.set_xlim(-most, most)
    axes.xaxis.set_major_formatter(lambda value, _: f"{value:+.0f} %" if value else "0")
    return figure


def _converted(asked: Asked) -> Converted:
    from assistant.recipes.converting import convert_recipe
    from assistant.recipes.read import bytes_of
    from assistant.recipes.recipe_answer import convert

    if asked.question:
        found = convert(asked.question)
        if isinstance(found, Answer):
            raise NoRecipe("the recipe", "it cannot be converted as it stands", "Say what is missing")
        return found
    path = Path(asked.words)
    return convert_recipe(bytes_of(path), to_elevation_m=asked.elevation_m, units=asked.units, name=path.name)


def _title(asked: Asked, done: Converted) -> Words:
    """What the recipe is called; one without a name by its dish, or by its style."""
    dish = asked.question.dish if asked.question else ""
    return done.recipe.title or dish or Path(asked.words).stem or say("recipe-of", style=done.style.replace("_", " "))


def _name(to: LineTo) -> str:
    name = to.line.item
    return name if len(name) <= LONGEST_NAME else f"{name[: LONGEST_NAME - 1]}…"
