"""How much water or stock a dish takes: the usual ratio, and what more of it goes off here."""

from __future__ import annotations

from rules.amounts import liquid, packs
from rules.amounts.liquid import ABSORBED, BREWED, MORE_PER_1000_FT, PLENTY, Needed
from rules.amounts.portion import millilitres, portion
from rules.book import Case, Part, rule
from rules.model import Figure, Request
from rules.physics.units import ML_PER_CUP
from rules.said import Measure, Said, Words, bulk, number, sentences, together, volume
from rules.said import liquid as poured
from rules.topics.order.pans import in_pans
from rules.topics.order.words import bought, served_so

say = sentences("topics/liquid")

# more than this of it is worth a word [ml], and as a share of the whole
LEAST_EXTRA_ML, LEAST_SHARE = 20.0, 0.02
# how near to what is wanted a ratio is as good as it
CLOSE = 0.97
# questions that ask for the difference
ASKS_MORE = ("more", "changes")
# liquids by the name of the ingredient that was asked about
NAMED = ("water", "stock", "wine", "milk", "coconut milk", "beer")


def noticed(amount: Needed) -> bool:
    """Whether it takes a noticeable amount more here."""
    return amount.extra_ml >= max(LEAST_EXTRA_ML, LEAST_SHARE * amount.sea_ml)


def of_what(case: Case, amount: Needed) -> Said:
    """What the liquid is for: 9 lb of dry white rice, 80 portions as a side; each cup of it; 1 kg of short ribs."""
    request = case.request
    ml = millilitres(request.quantity)
    return say(
        "for-what",
        kind="cup" if by_cup(request, amount) else "guests" if request.portions and not request.quantity else "amount",
        amount=volume(ml) if ml is not None else bulk(amount.of_g),
        bought=bought(request),
        guests=number(request.portions or 0, 0),
        served=served_so(request),
    )


def by_cup(request: Request, amount: Needed) -> bool:
    """Whether it is told by the cup: of what goes by cups, where no amount was said."""
    return bool(amount.ratio.g_per_cup) and request.quantity is None and not request.portions


def asked_liquid(request: Request, amount: Needed) -> str:
    """What the liquid is called: as it was asked for, else what is usual."""
    return request.subject if request.subject in NAMED else amount.ratio.liquid


def shown(case: Case, amount: Needed, ml: float) -> Measure:
    """An amount of liquid: by the cup where the dish goes by the cup."""
    return volume(ml) if by_cup(case.request, amount) else poured(ml)


@rule("liquid.amount", "common-practice", "afrs-tm-10-412")
def amount(case: Case) -> Part | None:
    """The liquid of the dish: at sea level, and how much more here."""
    found = liquid.needed(case)
    if found is None:
        return None
    more = case.moved and noticed(found)
    asked = any(form in ASKS_MORE for form in case.request.forms[:1])
    way = "alone" if found.ratio.way in (PLENTY, BREWED) or not case.moved else "more" if more else "same"
    name = asked_liquid(case.request, found)
    here, sea, extra = shown(case, found, found.here_ml), shown(case, found, found.sea_ml), poured(found.extra_ml)
    what, place, percent = of_what(case, found), case.place, number(found.extra_ml / found.sea_ml * 100, 0)
    if asked and more:
        told = say("extra", extra=extra, liquid=name, place=place, percent=percent, all=here, what=what)
    else:
        told = say("total", told=way, all=here, liquid=name, what=what, place=place, sea=sea, extra=extra)
    return Part(
        headline=together(verdict(case, found), told, panned(case, found)),
        figures=tuple(figures(case, found, name, more)),
        because=why(case, found),
        sources=tuple(dict.fromkeys((found.ratio.source, "common-practice"))),
    )


def panned(case: Case, found: Needed) -> Words:
    """How many pans the dish fills, where it was asked so."""
    cooked_g = found.of_g * portion(case.request.dish, case.dish_class).yields
    return in_pans(case.request, cooked_g) if case.request.portions else ""


def verdict(case: Case, found: Needed) -> Words:
    """Whether the cook's own ratio does here, where one was said."""
    own = case.request.liquid_per
    if own is None or not found.ratio.g_per_cup:
        return ""
    per_cup = found.ratio.g_per_cup / ML_PER_CUP / found.of_g
    least, wanted, most = ((ml + found.extra_ml) * per_cup for ml in (found.low_ml, found.sea_ml, found.high_ml))
    word = "short" if own < (least + wanted) / 2 * CLOSE else "yes" if own <= most / CLOSE else "more"
    return say("verdict", verdict=word, own=number(own, 2))


def figures(case: Case, found: Needed, name: str, more: bool) -> list[Figure]:
    """All of it with its range, how much more that is, and a pan's share where pans were asked about."""
    low, high = ((end + found.extra_ml) / 1000 for end in (found.low_ml, found.high_ml))
    sea = found.sea_ml / 1000 if case.moved and more else None
    told = [Figure("liquid", say("liquid-label", liquid=name), found.here_ml / 1000, "l", low, high, sea)]
    if more:
        told.append(Figure("extra_liquid", say("extra-label"), found.extra_ml / 1000, "l"))
    if case.request.quantity is None and case.request.portions:
        told.append(Figure("dry", say("amount-label", bought=bought(case.request)), found.of_g / 1000, "kg"))
    return told


def why(case: Case, found: Needed) -> Words:
    """What becomes of the liquid, and why it is more here or not."""
    reason = say(
        "why",
        way=found.ratio.way,
        steamed="yes" if liquid.vessel(case.request) == "steam" else "no",
        percent=number(MORE_PER_1000_FT * 100, 1),
        large="yes" if found.of_g >= liquid.LARGE_G else "no",
        moved="yes" if case.moved else "no",
    )
    return together(reason, "" if case.moved else say("no-elevation", way=found.ratio.way))


@rule("liquid.a_pan", "common-practice")
def a_pan(case: Case) -> Part | None:
    """What goes to a full-size pan, where pans were asked about."""
    request, found = case.request, liquid.needed(case)
    if found is None or found.ratio.way != ABSORBED or request.quantity is not None:
        return None
    asked = {name for name in request.counted_in if name.startswith("pan")}
    told = []
    for pan in packs.pans():
        if pan.id not in asked and not (asked == {"pan"} and pan.inches < 4):
            continue
        dry_g = packs.pan_holds_raw_g(pan, request.dish, case.dish_class)
        label = say("pan-label", inches=number(pan.inches, 1), dry=bulk(dry_g), food=case.food)
        told.append(Figure(f"liquid_{pan.id}", label, found.here_ml / found.of_g * dry_g / 1000, "l"))
    return Part(figures=tuple(told)) if told else None


@rule("liquid.step", "common-practice")
def step(case: Case) -> Part | None:
    """How to go by it in the pot."""
    found = liquid.needed(case)
    if found is None:
        return None
    return Part(steps=(say("step", way=found.ratio.way, moved="yes" if case.moved else "no"),))


@rule("liquid.unknown", "ashrae-applications", "common-practice")
def unknown(case: Case) -> Part | None:
    """A dish without a usual ratio: as the recipe has it, and what a longer simmer boils off."""
    if liquid.needed(case) is not None:
        return None
    return Part(headline=say("unknown", food=case.food), because=say("unknown-because"))


def needs(request: Request) -> tuple[str, ...]:
    """The dish; the elevation where the difference is asked for."""
    known = request.dish or request.dish_class or any(u.kind == "dish" for u in request.unused)
    place = ("elevation",) if any(form in ASKS_MORE for form in request.forms[:1]) else ()
    return place if known else ("dish", *place)


RULES = (amount, a_pan, step, unknown)
