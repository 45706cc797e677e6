"""Plots: what their lines and labels hold, read off the figure itself."""

from __future__ import annotations

import re
from pathlib import Path

import numpy
import pytest
from CoolProp.CoolProp import PropsSI
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from typer.testing import CliRunner

from assistant.answering import reply_to
from assistant.cli import create_app
from assistant.printing.drawing import as_files
from assistant.printing.plots import Asked, Shares, drawer, kinds, told
from assistant.printing.plots.range import NoRange
from assistant.printing.recoloured import Palette, _rgb, contrast, recoloured
from assistant.web.pictured import SCHEMES
from rules.errors import UnknownWord
from rules.model import Kitchen, Request
from rules.physics.units import to_c

LODGE_M = 2133.6
CAKE = """Timberfold yellow cake
2 cups flour
1 1/2 cups sugar
2 tsp baking powder
1/2 cup butter
2 eggs
1 cup milk
Bake at 350 F for 30 minutes in two 9-inch cake pans.
"""
SALAD = "Tomato salad\n4 tomatoes\n1 tbsp vinegar\nSlice and serve."


def drawn(kind: str, words: str = "", units: str = "us", *, narrow: bool = False) -> Figure:
    figure = drawer(kind)(Asked(LODGE_M, units, words, narrow=narrow))
    figure.canvas.draw()
    return figure


def said(figure: Figure) -> str:
    axes = figure.axes[0]
    return " ".join([t.get_text() for t in axes.texts] + [axes.get_title(loc="left")])


def test_every_kind_has_a_drawer_and_no_other_word() -> None:
    assert {"boil", "time", "pressure", "dish", "range", "recipe"} == set(kinds())
    with pytest.raises(UnknownWord):
        drawer("smell")


def test_the_curve_of_the_boil_at_1000_hpa() -> None:
    """111 m is where the standard atmosphere has 100,000 Pa; water boils there at 99.61 °C (CoolProp)."""
    line = drawn("boil", units="metric").axes[0].lines[0]
    at = numpy.interp(111, line.get_xdata(), line.get_ydata())
    assert at == pytest.approx(PropsSI("T", "P", 100_000, "Q", 0, "Water") - 273.15, abs=0.02)


def test_the_kitchen_is_marked() -> None:
    assert "7,000 ft (2,130 m): 199 °F (93 °C)" in said(drawn("boil"))
    assert "7,000 ft" in said(drawn("time"))


def test_fifteen_pounds_at_sea_level_is_250_degrees() -> None:
    """Common knowledge of canners: 15 psi is 250 °F (121 °C) at sea level; below it on the plot at any elevation."""
    lines = drawn("pressure").axes[0].lines
    assert to_c(lines[0].get_ydata()[0]) == pytest.approx(121, abs=0.3)
    starts = [line.get_ydata()[0] for line in lines[:6]]
    assert starts == sorted(starts, reverse=True)
    assert all(line.get_ydata()[0] > line.get_ydata()[-1] for line in lines[:6])


def test_lines_are_told_apart_without_colour() -> None:
    for kind in ("time", "pressure"):
        lines = [line for line in drawn(kind).axes[0].lines if len(line.get_xdata()) > 2]
        looks = {(str(line.get_linestyle()), str(line._dash_pattern), line.get_marker()) for line in lines}
        assert len(looks) == len(lines)


def test_beans_slow_down_most() -> None:
    """Quast and da Silva 1977: black beans z 19 °C, steeper than any vegetable."""
    ends = {line.get_label(): line.get_ydata()[-1] for line in drawn("time").axes[0].lines if len(line.get_xdata()) > 2}
    assert max(ends, key=ends.get) == "soaked dried beans"
    assert min(ends.values()) > 1


def test_a_range_is_two_bars_with_the_sea_below() -> None:
    figure = drawn("range", "braise short ribs")
    here, sea = figure.axes[0].patches[:2]
    assert here.get_width() > sea.get_width() > 0
    assert "at sea level" in said(figure)
    with pytest.raises(NoRange, match="braise short ribs"):
        drawn("range", "hello there")


def test_a_recipe_shows_what_changes(tmp_path: Path) -> None:
    path = tmp_path / "cake.txt"
    path.write_text(CAKE, encoding="utf-8")
    axes = drawn("recipe", str(path)).axes[0]
    bars = dict(zip([t.get_text() for t in axes.get_yticklabels()], [p.get_width() for p in axes.patches], strict=True))
    assert bars["baking powder"] < 0 > bars["granulated sugar"]
    path.write_text(SALAD, encoding="utf-8")
    assert "Nothing of this recipe changes" in said(drawn("recipe", str(path)))


def test_the_command(tmp_path: Path) -> None:
    run, app = CliRunner().invoke, create_app(["plot"])
    out = tmp_path / "boil.svg"
    assert run(app, ["plot", "boil", "--at", "7000ft", "--out", str(out)]).exit_code == 0
    assert "Where water boils" in out.read_text(encoding="utf-8")
    assert run(app, ["plot", "boil", "--at", "7000ft", "--out", str(out)]).exit_code == 1
    assert run(app, ["plot", "nothing", "--at", "7000ft"]).exit_code == 2
    missing = run(
        app, ["plot", "recipe", str(tmp_path / "none.txt"), "--at", "7000ft", "--out", str(tmp_path / "r.png")]
    )
    assert missing.exit_code == 1
    assert not (tmp_path / "r.png").exists()


@pytest.mark.parametrize("kind", ["range", "dish"])
@pytest.mark.parametrize("words", ["braise short ribs", "boil eggs", "smoke brisket"])
@pytest.mark.parametrize("narrow", [False, True], ids=["wide", "narrow"])
def test_no_label_of_a_time_runs_off_the_sheet(words: str, kind: str, narrow: bool) -> None:
    assert outside(drawn(kind, words, narrow=narrow)) == []


@pytest.mark.parametrize("kind", ["boil", "time", "pressure"])
@pytest.mark.parametrize("narrow", [False, True], ids=["wide", "narrow"])
@pytest.mark.parametrize("units", ["us", "metric"])
def test_no_label_of_a_place_runs_off_the_sheet(kind: str, narrow: bool, units: str) -> None:
    assert outside(drawn(kind, units=units, narrow=narrow)) == []


def outside(figure: Figure) -> list[str]:
    """The texts of a figure that do not lie within it."""
    # where labels stand is settled when they are drawn
    FigureCanvasAgg(figure).draw()
    axes = figure.axes[0]
    texts = [*axes.texts, *figure.texts, axes.xaxis.label, axes.yaxis.label, *axes.get_yticklabels()]
    boxes = [(text.get_text(), text.get_window_extent()) for text in texts if text.get_text()]
    return [text for text, box in boxes if box.x0 < figure.bbox.x0 or box.x1 > figure.bbox.x1]


def test_a_dish_takes_longer_the_higher() -> None:
    """Common practice: a braise wants half an hour to an hour more for every 3,000 ft."""
    line = next(line for line in drawn("dish", "braise short ribs").axes[0].lines if len(line.get_xdata()) > 2)
    sea, *higher = (float(numpy.interp(feet, line.get_xdata(), line.get_ydata())) for feet in (0, 6000, 9000))
    assert [60 <= higher[0] - sea <= 120, 90 <= higher[1] - sea <= 180] == [True, True]


def test_a_plot_of_a_dish_wants_a_time() -> None:
    with pytest.raises(NoRange):
        drawn("dish", "hello there")


def test_plots_are_told_with_their_figures() -> None:
    """IAPWS R7-97: water boils at 92.87 °C under 781.9 hPa, the air of 7,000 ft (U.S. Standard Atmosphere 1976)."""
    boils = told("boil", Asked(LODGE_M, "metric"))
    assert "93 °C" in boils
    assert "100 °C" in boils
    # common knowledge of canners: 15 psi is 250 °F at sea level
    assert "15 psi: 250 °F" in told("pressure", Asked(LODGE_M, "us"))
    assert "soaked dried beans 2 times" in told("time", Asked(LODGE_M, "us"))
    ribs = told("dish", Asked(LODGE_M, "us", "braise short ribs"))
    here = reply_to("how long to braise short ribs", kitchen=Kitchen(elevation_m=LODGE_M)).headline
    assert re.findall(r"7,000 ft \(2,130 m\): ([^(]+) \(", ribs)[0] in here
    bars = told("range", Asked(LODGE_M, "us", "braise short ribs"))
    assert set(re.findall(r"\d h(?: \d+ min)?", bars)) < set(re.findall(r"\d h(?: \d+ min)?", ribs))


def test_a_recipe_is_told_with_what_changes() -> None:
    shares = Shares("Yellow cake", "layer cake", 0.0, (("baking powder", 0.75), ("egg", 1.12)))
    assert told("recipe", Asked(LODGE_M, "us", shares=shares)).endswith("baking powder 25 % less, egg 12 % more.")
    same = Shares("Salad", "other", 0.0, ())
    assert "Nothing of this recipe changes" in told("recipe", Asked(LODGE_M, "us", shares=same))


@pytest.mark.parametrize("palette", SCHEMES.values(), ids=SCHEMES)
def test_every_colour_is_seen_on_its_paper(palette: Palette) -> None:
    """WCAG 2.1, 1.4.3 and 1.4.11: 4.5 to 1 for text, 3 to 1 for what a drawing is understood by."""
    svg = as_files([drawn("pressure"), drawn("time")], Path("plot.svg"))
    for content in svg.values():
        text = recoloured(content, palette).decode()
        strokes = set(re.findall(r"(?:stroke|fill): (#[0-9a-f]{6})", text)) - {palette.paper}
        inks = {colour for colour in strokes if max(_rgb(colour)) - min(_rgb(colour)) > 0.2}
        assert len(inks) >= 5
        assert [colour for colour in inks if contrast(_rgb(colour), _rgb(palette.paper)) < 4.4] == []
        assert palette.paper in text


def test_a_recipe_without_a_name_has_a_title() -> None:
    unnamed = Request(topic="convert_recipe", recipe=CAKE.partition("\n")[2], elevation_m=LODGE_M)
    figure = drawer("recipe")(Asked(LODGE_M, "us", question=unnamed))
    assert "Layer cake: what changes" in said(figure)
