"""How soon plain water boils: the heat it takes here, at the pace of a kettle, a hob and a camp stove."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat import fuel
from rules.heat.where_water_boils import boiling_point
from rules.model import Figure
from rules.safety.subjects.fuel import litres, of_two
from rules.said import duration, number, sentences, temp, yes

say = sentences("safety/subjects/to_the_boil")

# what reaches the water [kW]: an electric kettle, a kitchen hob, a camp stove out of the wind
PACES = {"kettle": 2.0, "hob": 1.3, "camp": 0.9}
# from so many litres on: a boiling pan of 12 kW, a big gas ring, an induction plate of 3.5 kW
BIG_L = 12.0
BIG_PACES = {"kettle": 11.0, "hob": 3.0, "camp": 4.5}


@rule("to_the_boil.soon", "computed", "common-practice")
def soon(case: Case) -> Part:
    """Minutes to the boil for so many litres, or for one."""
    amount = litres(case.request) or 1.0
    kj = fuel.boil_kj_l(case.here) * amount
    less = (1 - fuel.boil_kj_l(case.here) / fuel.boil_kj_l(case.there)) * 100
    times = {pace: kj / kw / 60 for pace, kw in (BIG_PACES if amount >= BIG_L else PACES).items()}
    return Part(
        headline=say(
            "headline",
            verdict=verdict(case, less),
            litres=number(amount, 1),
            one=yes(amount == 1),
            big=yes(amount >= BIG_L),
            place=case.place,
            camp=duration(times["camp"]),
            hob=duration(times["hob"]),
            kettle=duration(times["kettle"]),
            less=number(abs(round(less)), 0),
            way="less" if less > 1 else "more" if less < -1 else "same",
            baseline=case.baseline,
            boil=temp(case.here.boiling_c),
        ),
        figures=tuple(
            Figure(f"to_boil_{pace}", say("label", pace=pace, big=yes(amount >= BIG_L)), minutes, "min")
            for pace, minutes in times.items()
        ),
        steps=(say("lid"), say("to-drink")),
        because=say("why"),
    )


def verdict(case: Case, less: float) -> str:
    """Whether it goes the way that was asked: yes or no; none where nothing was."""
    asked = {"shorter": less > 1, "longer": less < -1}.get(case.request.asked_way or "")
    return "none" if asked is None else yes(asked)


NEEDS: tuple[str, ...] = ()
settled = of_two
RULES = (soon, boiling_point)
