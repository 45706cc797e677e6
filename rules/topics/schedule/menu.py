"""Several dishes that land together: when each is fired, the earliest first."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from rules.book import Case, Part, rule
from rules.foods.dishes import dishes
from rules.model import Figure, Request
from rules.said import Words, duration, listed, sentences
from rules.topics.schedule.stages import Stage, stages

say = sentences("topics/schedule")

# stages that go on by themselves long before the fire
COLD = ("soak", "rise")


@dataclass(frozen=True, slots=True)
class Firing:
    """A dish to be begun: at_min before service; step: what to do with it"""

    food: str
    at_min: float
    step: Words


def is_menu(request: Request) -> bool:
    """Whether several dishes are to land together."""
    return len(request.dishes) > 1


@rule("schedule.menu", "common-practice")
def menu(case: Case) -> Part | None:
    """A line for each dish, the earliest first: when it is fired, and before that soaked or mixed."""
    if not is_menu(case.request):
        return None
    order = firing_order(case.request)
    fired = [one for one in order if one.step is not None]
    return Part(
        headline=say(
            "menu",
            lines=listed((say("menu-line", food=f.food, time=duration(f.at_min)) for f in fired), "semicolons"),
            place=case.place,
        ),
        figures=tuple(Figure(f"at_{n}", f.food, f.at_min, "min") for n, f in enumerate(order, 1)),
        steps=tuple(say("step", when=say("before-service", time=duration(f.at_min)), step=f.step) for f in order),
        because=say("menu-because"),
    )


def firing_order(request: Request) -> tuple[Firing, ...]:
    """Every beginning of every dish, the earliest first."""
    found = (firing for name in request.dishes for firing in firings(of_dish(request, name)))
    return tuple(sorted(found, key=lambda firing: -firing.at_min))


def of_dish(request: Request, name: str) -> Request:
    """The request for one dish of the menu; a method that was said holds for the dishes that are cooked so."""
    one = dishes()[name]
    method = request.method if request.method in one.methods else None
    return replace(request, dish=name, dish_class=one.dish_class, method=method, dishes=(), time_min=None)


def firings(request: Request) -> Iterator[Firing]:
    """When a dish is soaked or mixed, and when it is fired."""
    work, food = stages(request), request.dish or ""
    before = [sum(stage.plan_min for stage in work[i:]) for i in range(len(work))]
    cold = [(stage, at) for stage, at in zip(work, before, strict=True) if stage.id in COLD]
    hot = [(stage, at) for stage, at in zip(work, before, strict=True) if stage.id not in COLD]
    for stage, at in cold:
        yield Firing(food, at, say("of-dish", food=food, step=stage.step))
    if hot:
        yield Firing(food, hot[0][1], say("fire", food=food, step=hot[0][0].step, time=duration(cook_min(work))))


def cook_min(work: tuple[Stage, ...]) -> float:
    """What is planned for the cooking itself [min]."""
    return next((stage.plan_min for stage in work if stage.id == "cook"), 0.0)
