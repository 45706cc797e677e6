"""Bake adjust: one thing in a bake changed for the elevation, or the whole set of changes for its kind.

The subject is an ingredient by name ("baking powder") or one of SUBJECTS ("oven", "proof"); without one all are given.
The dish class decides how much of the published change applies; without one the tables for cakes do.
"""

from __future__ import annotations

from collections.abc import Callable

from rules.baking import bands, components, eggs, leavening, liquid, oven, pan, sugar, yeast
from rules.baking import flour as flour_component
from rules.baking.bands import Span
from rules.baking.batch import Batch, noted, percent, towards
from rules.baking.parts import pantry, part_of
from rules.baking.rounding import in_unit, measure, same_measure
from rules.baking.styles import is_a, style_of
from rules.book import Case, Part, Rule, rule
from rules.model import Caution, Figure
from rules.physics import air
from rules.physics.units import round_to
from rules.recipe import Recipe
from rules.recipes.steps import scaled_min, shifted_c
from rules.said import Words
from rules.say import duration, duration_span, number

COMPONENT_OF = {
    "powder": "leavening", "soda": "leavening", "sugar": "sugar", "icing_sugar": "sugar", "syrup": "sugar",
    "liquid": "liquid", "sour_liquid": "liquid", "flour": "flour", "starch": "flour", "egg": "egg",
    "white": "foam", "yolk": "egg", "fat": "fat", "salt": "salt", "yeast": "yeast", "starter": "proof",
}  # fmt: skip
SUBJECTS = (
    "leavening", "yeast", "sugar", "liquid", "flour", "egg", "fat", "salt", "oven", "time", "proof", "pan", "foam",
)  # fmt: skip
YEASTED = ("yeast", "proof")
USUAL = {
    "leavening": (1.0, "tsp"), "yeast": (2.25, "tsp"), "sugar": (1.0, "cup"), "liquid": (1.0, "cup"),
    "flour": (2.5, "cup"), "fat": (1.0, "cup"),
}  # fmt: skip
USUAL_METRIC = {
    "leavening": (5.0, "g"), "yeast": (7.0, "g"), "sugar": (200.0, "g"), "liquid": (250.0, "ml"),
    "flour": (300.0, "g"), "fat": (200.0, "g"),
}  # fmt: skip
USUAL_NAME = {
    "leavening": "baking powder",
    "yeast": "yeast",
    "sugar": "sugar",
    "liquid": "liquid",
    "flour": "flour",
    "fat": "fat",
}
LEXICON_NAME = {
    "sugar": "granulated sugar",
    "liquid": "water",
    "flour": "all-purpose flour",
    "fat": "butter",
    "yeast": "instant yeast",
}
FINE = ("leavening", "yeast")


def asked(case: Case) -> str | None:
    """The component that is asked about; None for all of them.

    A subject that plays no part in a formula counts as none. A temperature without a subject is the oven's, a time
    without one is a rise or a bake.
    """
    request = case.request
    if request.subject in SUBJECTS:
        return request.subject
    if request.subject and (component := COMPONENT_OF.get(part_of(request.subject).name)):
        return component
    if request.temperature_c is not None:
        return "oven"
    if request.time_min is not None:
        return (
            "proof"
            if request.dish_class in (None, "general", "yeast_bread", "pizza", "laminated", "flatbread")
            else "time"
        )
    return None


def style(case: Case) -> str:
    """The style whose share of the published change applies."""
    if case.request.dish_class in (None, "general") and asked(case) in YEASTED:
        return "yeast_bread"
    name = style_of(case.dish_class)
    if is_a(name, "baked"):
        return name
    # "an egg more in my cake" is heard as a dish of eggs
    return "layer_cake" if case.request.dish_class in (None, "egg") else "other"


def batch(case: Case) -> Batch:
    """The two places and the style, without a recipe."""
    request = case.request
    here_m = request.elevation_m
    if here_m is None:
        here_m = air.elevation_m(case.here.pressure_pa)
    return Batch.of(Recipe(), style(case), case.there.elevation_m, here_m, request.units)


def wanted(case: Case, component: str) -> bool:
    """Whether this component is asked about, or all are and the style has advice on it."""
    one = asked(case)
    return one == component if one else components.share(style(case), component) is not None


def baked(case: Case) -> str:
    """What is baked, in words."""
    if case.request.dish and case.request.dish_class != "egg":
        return case.request.dish
    return {"yeast_bread": "a yeast dough", "layer_cake": "a cake"}.get(style(case), style(case).replace("_", " "))


def _stays(case: Case, component: str, noun: str) -> Part | None:
    """A component the style leaves alone, or has no advice on: said only where it was asked about."""
    if asked(case) != component:
        return None
    part = components.share(style(case), component)
    no_advice = f"No published advice changes it for {baked(case)}."
    reason = noted(part) if part and part.note else no_advice
    them = "them" if noun == "eggs" else "it"
    return Part(
        headline=f"Leave the {noun} as the recipe has {them} for {baked(case)} at {case.place}.",
        because=reason,
        sources=(part.source,) if part else ("common-practice",),
    )


def _amount(case: Case, component: str) -> tuple[float, str, bool]:
    """The amount to change: the cook's own, or a round one to show the change on; and whether it is the cook's own."""
    said, one = case.request.quantity, asked(case)
    if said is not None and one == component and in_unit(1.0, said.unit, said.unit) and said.unit not in ("", "piece"):
        return said.value, said.unit, True
    usual = USUAL if case.request.units == "us" else USUAL_METRIC
    return *usual[component], False


def _name(case: Case, component: str) -> str:
    subject = case.request.subject
    named = subject is not None and subject not in SUBJECTS and COMPONENT_OF.get(part_of(subject).name) == component
    return str(subject) if named else USUAL_NAME[component]


def _both(amount: float, unit: str, name: str, component: str, *, grams: bool = True) -> str:
    """An amount with its weight beside it, where the lexicon knows the weight."""
    text = measure(amount, unit)
    row = pantry().get(name) or pantry().get(LEXICON_NAME.get(component, ""), {})
    spoons = in_unit(amount, unit, "tsp")
    if not grams or spoons is None or not row:
        return text
    each = (
        row.get("tsp_g")
        if spoons < 6 and row.get("tsp_g")
        else row["grams_per_cup"] / 48
        if "grams_per_cup" in row
        else None
    )
    if each is None:
        return text
    mass = spoons * each
    return f"{text} ({number(mass, 1 if mass < 10 else 0)} g)"


def amount_part(case: Case, component: str, because: Callable[[Batch], Words]) -> Part | None:
    """What becomes of an amount of one component."""
    if not wanted(case, component):
        return None
    share, work = components.share(style(case), component), batch(case)
    if share is None or not share.value:
        return _stays(case, component, _name(case, component))
    if not work.expects(component):
        return _no_need(case, component)
    ratio, (amount, unit, own) = work.ratio(component), _amount(case, component)
    fine, name = component in FINE, _name(case, component)
    base, to_unit = same_measure(amount, unit, fine=fine)
    if to_unit is None:
        return None
    to, low, high = (towards(base, r, to_unit, fine=fine) for r in (ratio.value, ratio.low, ratio.high))
    low, high = min(low, to), max(high, to)
    figures = (
        Figure(f"{component}_to", f"{name.capitalize()} for {measure(amount, unit)}", to, to_unit, low, high),
        Figure(f"{component}_change", f"Change of {name}", *_percents(ratio)),
    )
    way = "less" if ratio.value < 1 else "more"
    now, was = _both(to, to_unit, name, component), measure(amount, unit)
    span = "" if low == high else f", anywhere from {measure(low, to_unit, high=high)}"
    if abs(to - base) < 1e-9:
        line = f"Keep the {was} of {name} at {case.place}: the change is smaller than a cook can measure{span}."
        headline = line
    elif own:
        line = f"Use {now} of {name} instead of {was} at {case.place}{span}."
        headline = line
    else:
        line = f"{name.capitalize()}: {now} for every {was} in the recipe{span}."
        headline = (
            f"Use about {percent(ratio.value)} {way} {name} for {baked(case)} at {case.place}: {now} for {was}{span}."
        )
    told = asked(case) == component
    return Part(
        figures=figures,
        steps=() if told else (line,),
        because=because(work),
        headline=headline if told else "",
        cautions=_beyond(case, component),
        sources=components.sources(style(case), component),
    )


def _percents(ratio: Span) -> tuple[float, str, float, float]:
    value, low, high = (round(100 * (x - 1), 1) + 0.0 for x in (ratio.value, ratio.low, ratio.high))
    return value, "percent", low, high


def _no_need(case: Case, component: str) -> Part | None:
    if asked(case) != component:
        return None
    return Part(
        headline=f"Nothing to change at {case.place}: the published tables begin at {case.say.elevation(914.4)}.",
        because="Below that the air is dense enough that a recipe needs no adjustment.",
        sources=bands.sources(component) if component in bands.TABLES else ("uwyo-altitude-adjusters",),
    )


def _beyond(case: Case, component: str) -> tuple[Caution, ...]:
    top = bands.highest_m(component)
    if batch(case).to_m <= top * 1.001:
        return ()
    text = (
        f"The published table ends at {case.say.elevation(top)}; its last step is held above it. Bake a small trial "
        "first."
    )
    return (Caution("note", text, bands.sources(component)[:1]),)


@rule("bake_adjust.leavening", "uwyo-altitude-adjusters", "usu-faq-204", "csu-cakes-2002")
def leavening_rule(case: Case) -> Part | None:
    """Baking powder or soda here."""
    part = amount_part(case, "leavening", lambda b: leavening.why(b, b.ratio("leavening")))
    if part is None or not part.figures or not case.request.subject or part_of(case.request.subject).name != "soda":
        return part
    note = (
        "Never go below 1/2 tsp of soda (2.3 g) for each cup (240 ml) of buttermilk or sour milk: its acid needs "
        "that much."
    )
    return Part(
        figures=part.figures, steps=(*part.steps, note), because=part.because, headline=part.headline,
        cautions=part.cautions, sources=(*part.sources, "csu-high-altitude-food-prep"),
    )  # fmt: skip


@rule("bake_adjust.yeast", "common-practice", "uwyo-altitude-adjusters")
def yeast_rule(case: Case) -> Part | None:
    """Yeast here."""
    return amount_part(case, "yeast", yeast.why)


@rule("bake_adjust.sugar", "uwyo-altitude-adjusters", "usu-faq-204")
def sugar_rule(case: Case) -> Part | None:
    """Sugar here."""
    return amount_part(case, "sugar", sugar.why)


@rule("bake_adjust.liquid", "uwyo-altitude-adjusters", "usu-faq-204")
def liquid_rule(case: Case) -> Part | None:
    """Liquid here."""
    return amount_part(case, "liquid", liquid.why)


@rule("bake_adjust.flour", "common-practice")
def flour_rule(case: Case) -> Part | None:
    """Flour here."""
    return amount_part(case, "flour", flour_component.why)


@rule("bake_adjust.fat", "csu-high-altitude-food-prep")
def fat_rule(case: Case) -> Part | None:
    """Butter or other fat here."""
    from rules.baking import fat

    return amount_part(case, "fat", fat.why)


@rule("bake_adjust.egg", "csu-high-altitude-food-prep")
def egg_rule(case: Case) -> Part | None:
    """Eggs here: a size larger."""
    if not wanted(case, "egg"):
        return None
    share, work = components.share(style(case), "egg"), batch(case)
    if share is None or not share.value:
        return _stays(case, "egg", "eggs")
    if not work.expects("egg"):
        return _no_need(case, "egg")
    said = case.request.quantity
    count = int(said.value) if said and asked(case) == "egg" and said.value >= 1 else 3
    ratio = work.ratio("egg")
    to_count, size, mass_g = eggs.nearest(count * eggs.sizes()["large"] * ratio.value, count)
    line = f"For {count} large eggs use {to_count} {size} ({number(mass_g, 0)} g without shells)."
    return Part(
        figures=(
            Figure("egg_to", f"Egg for {count} large", mass_g, "g"),
            Figure("egg_change", "Change of egg", *_percents(ratio)),
        ),
        steps=() if asked(case) == "egg" else (line,),
        because=eggs.why(work, ratio.value),
        headline=f"{line[:-1]}, at {case.place}." if asked(case) == "egg" else "",
        sources=components.sources(style(case), "egg"),
    )


@rule("bake_adjust.salt", "common-practice")
def salt_rule(case: Case) -> Part | None:
    """Salt: it stays."""
    if asked(case) != "salt":
        return None
    return Part(
        headline=f"Leave the salt as the recipe has it at {case.place}.",
        because="Salt is weighed against the flour, and seasoned by taste; the air does not change what it does.",
    )


@rule("bake_adjust.oven", "uwyo-altitude-adjusters")
def oven_rule(case: Case) -> Part | None:
    """The oven setting here."""
    if not wanted(case, "oven"):
        return None
    work = batch(case)
    moved = oven.shift(work)
    if moved is None and components.share(style(case), "oven") is not None:
        return _no_need(case, "oven")
    if moved is None or moved.shift is None or moved.shift.stays:
        return _stays(case, "oven", "oven")
    return _oven_part(case, work, moved.shift.span, moved.sources)


def _oven_part(case: Case, work: Batch, span: Span, source_ids: tuple[str, ...]) -> Part:
    base = case.request.temperature_c
    ends_f = [round_to(k * 1.8, 5) for k in (span.value, span.low, span.high)]
    way = "hotter" if span.value > 0 else "cooler"
    low_f, high_f = sorted(abs(f) for f in ends_f[1:])
    by = _degrees_more(case, abs(ends_f[0]), low_f, high_f)
    kelvin = Figure("oven_change", "Oven change", round(span.value, 1), "K", round(span.low, 1), round(span.high, 1))
    told = asked(case) == "oven"
    if base is None:
        line = f"Set the oven {by} {way} than the recipe says."
        head = f"{line[:-1]} for {baked(case)} at {case.place}."
        return Part(
            figures=(kelvin,), steps=() if told else (line,), because=oven.why(work), headline=head if told else "",
            sources=source_ids,
        )  # fmt: skip
    unit, size = ("degF", 5.0) if case.request.units == "us" else ("degC", 2.0)
    to, low, high = (shifted_c(base, k, unit, size) for k in (span.value, span.low, span.high))
    figure = Figure("oven_to", "Oven here", round(to, 1), "degC", round(min(low, to), 1), round(max(high, to), 1))
    line = f"Set the oven to {case.say.oven(to)} instead of {case.say.oven(base)}."
    return Part(
        figures=(figure, kelvin), steps=() if told else (line,), because=oven.why(work),
        headline=f"{line[:-1]} for {baked(case)} at {case.place}." if told else "", sources=source_ids,
    )  # fmt: skip


def _degrees_more(case: Case, value_f: float, low_f: float, high_f: float) -> str:
    """15 to 25 °F (8 to 14 °C); about 10, at most 25 where the range begins at nothing."""
    if not low_f:
        return f"about {_degrees(case, value_f, value_f)}, at most {_degrees(case, high_f, high_f)},"
    return _degrees(case, low_f, high_f)


def _degrees(case: Case, low_f: float, high_f: float) -> str:
    us = number(low_f) if low_f == high_f else f"{number(low_f)} to {number(high_f)}"
    ends = [number(round_to(f / 1.8, 1)) for f in (low_f, high_f)]
    both = (f"{us} °F", f"{' to '.join(dict.fromkeys(ends))} °C")
    first, second = both if case.request.units == "us" else both[::-1]
    return f"{first} ({second})"


@rule("bake_adjust.time", "egg-producers-cakes")
def time_rule(case: Case) -> Part | None:
    """The baking time here."""
    if not wanted(case, "time"):
        return None
    share, work = components.share(style(case), "time"), batch(case)
    if share is None or not share.value:
        return _stays(case, "time", "baking time")
    if not work.expects("time"):
        return _no_need(case, "time")
    ratio, base = work.ratio("time"), case.request.time_min
    way = "shorter" if ratio.value < 1 else "longer"
    change = Figure("time_change", "Change of baking time", *_percents(ratio))
    because = (
        f"With the {'hotter' if work.up else 'cooler'} oven the bake is about {percent(ratio.value)} {way}. Test "
        "before you take it out."
    )
    if base is None or asked(case) != "time":
        line = f"Look in when four fifths of the baking time is up: it comes out about {percent(ratio.value)} {way}."
        line = line if work.up else f"Allow about {percent(ratio.value)} more baking time."
        told = asked(case) == "time"
        return Part(figures=(change,), steps=() if told else (line,), because=because, headline=line if told else "")
    high = case.request.time_high_min or base
    to_low, to_high = scaled_min(base, ratio.value), scaled_min(high, ratio.value)
    figure = Figure("time_to", "Baking time here", (to_low + to_high) / 2, "min", to_low, to_high)
    line = (
        f"Bake {duration_span(to_low, to_high)} instead of {duration_span(base, high)} at {case.place}, in the "
        f"{'hotter' if work.up else 'cooler'} oven."
    )
    return Part(figures=(figure, change), because=because, headline=line)


@rule("bake_adjust.proof", "uwyo-altitude-adjusters", "usu-faq-204", "computed")
def proof_rule(case: Case) -> Part | None:
    """How fast a dough rises here, and what to do about it."""
    if not wanted(case, "proof"):
        return None
    work, time_min = batch(case), case.request.time_min
    thin = number(1 / work.pressure_ratio)
    ratio = yeast.proof_ratio(work)
    steps = (
        "Let the dough rise only until it has doubled, then punch it down; press a finger in, and if the dent stays "
        "it is ready.",
        "For more flavour punch it down and let it double once more before shaping, or keep it overnight in the "
        "refrigerator.",
    )
    because = (
        f"The gas in a dough takes {thin} times the room at {case.place} that it takes at {case.baseline}, so the "
        "same dough "
        f"doubles in about {percent(work.pressure_ratio)} {'less' if work.up else 'more'} time with the same yeast."
    )
    change = Figure("proof_change", "Change of rising time", *_percents(ratio))
    if time_min is None or asked(case) != "proof":
        head = (
            f"Start looking at the dough at {percent(ratio.low)} {'less' if work.up else 'more'} than the recipe's "
            f"time at {case.place}; stop when it has doubled."
        )
        return Part(figures=(change,), steps=steps, because=because, headline=head if asked(case) == "proof" else "")
    return _risen(case, work, time_min, steps, because, change)


def _risen(case: Case, work: Batch, time_min: float, steps: tuple[str, ...], because: str, change: Figure) -> Part:
    there = time_min / work.pressure_ratio
    less = work.ratio("yeast")
    low, to = (scaled_min(time_min, r) for r in (work.pressure_ratio, yeast.proof_ratio(work).value))
    head = (
        f"A dough that doubles in {duration(time_min)} at {case.place} would take about {duration(there)} at "
        f"{case.baseline}: "
        f"use about {percent(less.value)} less yeast, and stop it when it has just doubled."
        if work.up and less.value < 1
        else f"A dough that doubles in {duration(time_min)} here takes about {duration(there)} at {case.baseline}; "
        "go by its size."
    )
    recipe = f"If {duration(time_min)} is the recipe's time for {case.baseline}, start looking after {duration(low)}."
    return Part(
        figures=(
            Figure("proof_baseline", f"The same dough at {case.baseline}", round(there, 1), "min"),
            Figure("proof_to", "A recipe's time of that length, here", to, "min", low, time_min),
            Figure("yeast_change", "Change of yeast", *_percents(less)),
            change,
        ),
        steps=(recipe, *steps),
        because=because,
        headline=head,
    )


@rule("bake_adjust.pan", "egg-producers-cakes")
def pan_rule(case: Case) -> Part | None:
    """How full to fill the pan."""
    if asked(case) not in (None, "pan") or components.share(style(case), "fill") is None:
        return _stays(case, "pan", "fill of the pan") if asked(case) == "pan" else None
    work = batch(case)
    there, here = pan.fill(work, work.from_m), pan.fill(work, work.to_m)
    if abs(there - here) < 0.02:
        return _no_need(case, "pan")
    full = "half" if here < there else "two thirds"
    return Part(
        figures=(Figure("pan_fill", "Fill of the pan", round(here, 2), "factor", sea_level=round(pan.USUAL_FILL, 2)),),
        steps=() if asked(case) == "pan" else (f"Fill the pan {full} full.",),
        because=pan.why(work),
        headline=f"Fill the pan {full} full for {baked(case)} at {case.place}." if asked(case) == "pan" else "",
    )


@rule("bake_adjust.foam", "csu-high-altitude-food-prep", "nmsu-circular-293")
def foam_rule(case: Case) -> Part | None:
    """How far to whip egg whites."""
    if asked(case) != "foam" and not (asked(case) is None and style(case) in ("foam_cake", "souffle")):
        return None
    work = batch(case)
    if work.to_m < 914.4:
        return _no_need(case, "foam")
    return Part(
        steps=() if asked(case) == "foam" else ("Beat egg whites only to soft peaks that just fold over.",),
        because=f"The air beaten in swells {number(1 / work.pressure_ratio)} times as far in the oven here as at "
        f"{case.baseline}; "
        "a stiff foam has no stretch left and bursts.",
        headline=f"Beat the whites only to soft peaks that just fold over, at {case.place}."
        if asked(case) == "foam"
        else "",
    )


@rule("bake_adjust.set", "uwyo-altitude-adjusters")
def whole_set(case: Case) -> Part | None:
    """The headline and the order of work where nothing in particular was asked."""
    work = batch(case)
    if asked(case) is not None or not work.expects("leavening"):
        return _no_need_at_all(case) if asked(case) is None else None
    parts = [
        text for text in (_short(work, c) for c in ("leavening", "yeast", "sugar", "liquid", "flour", "oven")) if text
    ]
    listed = (
        ", ".join(parts[:-1]) + (" and " if len(parts) > 1 else "") + parts[-1] if parts else "hardly anything changes"
    )
    note = (
        "Change one thing at a time, in this order: leavening, sugar, liquid, then the rest. Keep a note of each batch."
    )
    return Part(
        headline=f"For {baked(case)} at {case.place}: {listed}.",
        cautions=(Caution("note", note, ("uwyo-altitude-adjusters",)),),
    )


def _no_need_at_all(case: Case) -> Part:
    return Part(
        headline=f"Bake as written at {case.place}: the published tables begin at {case.say.elevation(914.4)}.",
        because="Below that the air is dense enough that a recipe needs no adjustment.",
    )


def _short(work: Batch, component: str) -> str:
    share = components.share(work.style, component)
    if share is None or not share.value:
        return ""
    if component == "oven":
        k = components.difference(work.style, "oven", work.from_m, work.to_m).value
        us, metric = f"{number(round_to(abs(k), 5))} °F", f"{number(round_to(abs(k) / 1.8, 1))} °C"
        both = f"{us} ({metric})" if work.units == "us" else f"{metric} ({us})"
        return f"an oven {both} {'hotter' if k > 0 else 'cooler'}"
    ratio = work.ratio(component).value
    return f"{percent(ratio)} {'less' if ratio < 1 else 'more'} {component}"


NEEDS = ("elevation",)
RULES: tuple[Rule, ...] = (
    whole_set, leavening_rule, yeast_rule, sugar_rule, liquid_rule, flour_rule, egg_rule, fat_rule, salt_rule,
    oven_rule, time_rule, proof_rule, pan_rule, foam_rule,
)  # fmt: skip
