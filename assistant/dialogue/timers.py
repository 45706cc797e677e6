"""Timers in conversation: set, ask after, lengthen, stop; several at once, each named after its dish.

Everything here is worked out from what is handed in: the request, the timers there are, and the time. obey and rings
are the two that read and write the store.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from assistant.dialogue.timer import Timer
from assistant.planning.clock import clock, stretch
from assistant.planning.schedule import down_to_step
from assistant.planning.serving import before, serving
from assistant.replies.sentences import worded
from rules.model import Request, Units
from rules.said import Join, Words, duration_span, listed, sentences, yes

if TYPE_CHECKING:
    from assistant.store.database import Store

say = sentences("dialogue/timers")

SHORTEST_MIN, LONGEST_MIN = 1 / 60, 7 * 24 * 60
ALIKE = 80


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """What comes of a request about timers: the reply, and what is to be changed.

    missing: `time` where the reply asks for how long; changed: timers with their new end
    """

    text: str
    missing: tuple[str, ...] = ()
    new: Timer | None = None
    changed: tuple[Timer, ...] = ()
    gone: tuple[Timer, ...] = ()


def obey(store: Store, request: Request, now: datetime, conversation: str = "") -> Outcome:
    """Decide, and change the store accordingly.

    raises: StoreError
    """
    from assistant.store import timers as kept

    outcome = decide(request, kept.of_conversation(store, conversation), now, conversation)
    if outcome.new:
        kept.add(store, outcome.new)
    for timer in outcome.changed:
        kept.move_end(store, timer.id, timer.ends_at)
    if outcome.gone:
        kept.remove(store, [timer.id for timer in outcome.gone])
    return outcome


def rings(store: Store, now: datetime, conversation: str | None = None) -> tuple[str, ...]:
    """What to announce now: timers that have run out since it was last asked, also while nobody was there.

    raises: StoreError
    """
    from assistant.store import timers as kept

    over = kept.due(store, now, conversation)
    ours = kept.announce(store, [timer.id for timer in over]) if over else ()
    return tuple(ended(timer, now) for timer in over if timer.id in ours)


def decide(request: Request, timers: Sequence[Timer], now: datetime, conversation: str = "") -> Outcome:
    """What a request about timers comes to. Those that have rung are forgotten when the next one is set."""
    what = request.timer_action or "set"
    name = request.timer_name
    running = tuple(timer for timer in timers if not timer.rang or timer.ends_at > now)
    if what == "set" or (what == "extend" and not timers):
        return setting(request, name, timers, now, conversation)
    if what == "fire":
        return firing(request, timers, now, conversation)
    if what == "follow":
        return following(request, timers, now)
    if what == "each":
        own = matching(name, request.dish, running) if name or request.dish else ()
        own = tuple(timer for timer in own if timer.dish == request.dish)
        return (
            Outcome(text=left(own[0], now, request.units)) if own else setting(request, name, timers, now, conversation)
        )
    if what in ("move", "change"):
        return put_right(request, running, timers, now, conversation)
    if not timers or not (running or name or what == "extend"):
        return Outcome(text=_worded(say("none-running")), gone=tuple(timers))
    if what == "stop_all":
        return Outcome(text=_worded(say("stopped", names=names(running or timers, "and"))), gone=tuple(timers))
    meant = matching(name, request.dish, timers if name else running or timers)
    if what == "left" and (not name or len(meant) > 1):
        asked = meant if name else running
        return Outcome(text=" ".join(left(timer, now, request.units) for timer in asked))
    if len(meant) != 1:
        known = names(meant or timers, "or")
        asks = say("unknown-which", name=name, names=known) if name and not meant else say("which", names=known)
        return Outcome(text=_worded(asks))
    timer = meant[0]
    if what == "stop":
        return Outcome(text=_worded(say("stopped", names=timer.name)), gone=(timer,))
    if what == "extend":
        return extending(request, timer, now)
    return Outcome(text=left(timer, now, request.units))


def setting(request: Request, spoken: str, timers: Sequence[Timer], now: datetime, conversation: str) -> Outcome:
    """A new timer, or the question how long."""
    name = spoken or request.dish or unnamed()
    if request.time_min is None:
        asks = say("how-long") if name == unnamed() else say("how-long-for", name=name)
        return Outcome(text=_worded(asks), missing=("time",))
    if not SHORTEST_MIN <= request.time_min <= LONGEST_MIN:
        return Outcome(text=_worded(say("out-of-range")), missing=("time",))
    length = timedelta(minutes=request.time_min)
    over = tuple(timer for timer in timers if timer.rang and timer.ends_at <= now)
    timer = Timer(
        name=free_name(name, [timer for timer in timers if timer not in over]),
        dish=request.dish,
        starts_at=now,
        ends_at=later(now, length),
        conversation=conversation,
    )
    end, ends = "early" if request.time_high_min else "only", clock(timer.ends_at, request.units)
    # the range is written once: 11 to 15 min
    span = worded(duration_span(request.time_min, request.time_high_min or request.time_min), request.units)
    if timer.name == unnamed():
        told = say("set", length=stretch(length), end=end, span=span, ends=ends)
    else:
        told = say("set-for", name=timer.name, length=stretch(length), end=end, span=span, ends=ends)
    return Outcome(text=_worded(told), new=timer, gone=over)


def firing(request: Request, timers: Sequence[Timer], now: datetime, conversation: str) -> Outcome:
    """A timer that rings when a dish of a plan is to be begun; one that should be on already is told, and rings not."""
    served = serving(f"{request.service_day or ''} {request.service_time or ''}", now)
    # as the list of the plan tells it
    ends = down_to_step(before(served, request.left_min or 0.0))
    over = tuple(timer for timer in timers if timer.rang and timer.ends_at <= now)
    name = free_name(
        _worded(say("start-of", dish=request.timer_name)), [timer for timer in timers if timer not in over]
    )
    if ends <= now:
        return Outcome(text=_worded(say("on-already", dish=request.timer_name)), gone=over)
    if ends - now > timedelta(minutes=LONGEST_MIN):
        return Outcome(text=_worded(say("too-far", dish=request.timer_name)), gone=over)
    timer = Timer(name=name, dish=request.dish, starts_at=now, ends_at=ends, conversation=conversation)
    return Outcome(text=rings_at(timer, now, request.units), new=timer, gone=over)


def rings_at(timer: Timer, now: datetime, units: Units) -> str:
    """When the timer of a plan rings."""
    ends = timer.ends_at.astimezone(now.tzinfo)
    day = "" if ends.date() == now.date() else say("weekday", day=ends.weekday())
    left = "" if day else stretch(ends - now)
    return _worded(say("rings-at", name=timer.name, ends=clock(ends, units), left=left, day=day, other=yes(day)))


def following(request: Request, timers: Sequence[Timer], now: datetime) -> Outcome:
    """The timers of a plan after it was changed: they ring when their dishes are to be begun now.

    request: the service, and in `menu` each beginning of each dish, the earliest first; `left_min` None for a dish that
    is off the plan. Without a time of service nobody knows when, and they run on as they are.
    """
    running = tuple(timer for timer in timers if not timer.rang and timer.ends_at > now)
    by_dish: dict[str, list[Request]] = {}
    for begun in request.menu:
        by_dish.setdefault(begun.timer_name, []).append(begun)
    moves = [
        move for dish, begun in by_dish.items() for move in _of_dish(dish, begun, request, of_start(dish, running), now)
    ]
    if not moves:
        return Outcome(text="")
    changed = tuple(move.timer for move in moves if move.to)
    opens = [_worded(say("follow"))] if changed else []
    return Outcome(
        text=" ".join([*opens, *(move.told for move in moves)]), changed=changed,
        gone=tuple(move.timer for move in moves if not move.to),
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class Move:
    """What becomes of a timer of a plan. timer: with its new end where it has one; told: that in words"""

    timer: Timer
    to: datetime | None
    told: str


def of_start(dish: str, timers: Sequence[Timer]) -> tuple[Timer, ...]:
    """The timers for the beginnings of a dish, the earliest first."""
    name = _worded(say("start-of", dish=dish))
    own = (timer for timer in timers if timer.name == name or timer.name.rpartition(" ")[0] == name)
    return tuple(sorted(own, key=lambda timer: timer.ends_at))


def _of_dish(
    dish: str, begun: Sequence[Request], plan: Request, timers: tuple[Timer, ...], now: datetime
) -> Iterator[Move]:
    """What becomes of the timers of one dish; those that have rung were for its first beginnings."""
    off = [one for one in begun if one.left_min is None]
    if off or not timers:
        yield from (Move(timer, None, _worded(say("off-the-plan", dish=dish))) for timer in timers)
        return
    served = serving(f"{plan.service_day or ''} {plan.service_time or ''}", now)
    ends = [down_to_step(before(served, one.left_min or 0.0)) for one in begun]
    spare = max(len(timers) - len(ends), 0)
    for timer, end in zip(timers[spare:], ends[-len(timers) :], strict=True):
        if end <= now:
            yield Move(timer, None, _worded(say("on-now", dish=dish)))
        elif end - now > timedelta(minutes=LONGEST_MIN):
            yield Move(timer, None, _worded(say("too-far", dish=dish)))
        elif end != timer.ends_at:
            moved = replace(timer, ends_at=end)
            yield Move(moved, end, rings_at(moved, now, plan.units))
    yield from (Move(timer, None, _worded(say("stopped", names=timer.name))) for timer in timers[:spare])


def put_right(
    request: Request, running: Sequence[Timer], timers: Sequence[Timer], now: datetime, conversation: str
) -> Outcome:
    """The timer that was set last, for another dish or to another length from now."""
    name = request.timer_name
    if request.timer_action == "change":
        meant = matching(name, request.dish, running)
        old = meant[-1:] or tuple(running[-1:])
    else:
        old = tuple(running[-1:])
    left = [timer for timer in timers if timer not in old]
    outcome = setting(request, name, left, now, conversation)
    if outcome.new is None or request.timer_action == "change" or not old:
        return replace(outcome, gone=(*outcome.gone, *(old if outcome.new else ())))
    stopped = _worded(say("stopped", names=old[0].name))
    return replace(outcome, text=f"{stopped} {outcome.text}", gone=(*outcome.gone, *old))


def extending(request: Request, timer: Timer, now: datetime) -> Outcome:
    """A timer made longer; one that has run out runs on from now."""
    if request.time_min is None:
        return Outcome(text=_worded(say("how-much-longer", name=timer.name)), missing=("time",))
    if not SHORTEST_MIN <= request.time_min <= LONGEST_MIN:
        return Outcome(text=_worded(say("more-out-of-range")), missing=("time",))
    changed = replace(timer, ends_at=later(max(timer.ends_at, now), timedelta(minutes=request.time_min)), rang=False)
    ends = clock(changed.ends_at.astimezone(now.tzinfo), request.units)
    told = say("left-now", name=timer.name, left=stretch(changed.ends_at - now), ends=ends)
    return Outcome(text=_worded(told), changed=(changed,))


def left(timer: Timer, now: datetime, units: Units) -> str:
    """How long a timer has left, or how long ago it ended."""
    if timer.ends_at <= now:
        return ended(timer, now)
    ends = clock(timer.ends_at.astimezone(now.tzinfo), units)
    return _worded(say("left", name=timer.name, left=stretch(timer.ends_at - now), ends=ends))


def ended(timer: Timer, now: datetime) -> str:
    """That a timer has run out."""
    since = now - timer.ends_at
    if since < timedelta(minutes=1):
        return _worded(say("up") if timer.name == unnamed() else say("up-for", name=timer.name))
    ago = stretch(since)
    return _worded(say("ended", ago=ago) if timer.name == unnamed() else say("ended-for", name=timer.name, ago=ago))


def matching(name: str, dish: str | None, timers: Sequence[Timer]) -> tuple[Timer, ...]:
    """The timers that a name may mean: the only one where no name is said; else by name, by its words, by dish."""
    from rapidfuzz import fuzz

    if not name:
        by_dish = tuple(t for t in timers if dish and t.dish == dish)
        return by_dish or (tuple(timers) if len(timers) == 1 else ())
    words = set(name.split())
    ways = (
        [t for t in timers if t.name == name],
        [t for t in timers if words <= set(t.name.split()) or set(t.name.split()) <= words],
        [t for t in timers if dish and t.dish == dish],
        [t for t in timers if fuzz.ratio(t.name, name) >= ALIKE],
    )
    return next((tuple(found) for found in ways if found), ())


def free_name(name: str, timers: Sequence[Timer]) -> str:
    """The name, with a number behind it where a timer has it already."""
    taken = {timer.name for timer in timers}
    return next(n for n in (name, *(f"{name} {i}" for i in range(2, len(taken) + 3))) if n not in taken)


def names(timers: Sequence[Timer], link: Join) -> Words:
    """Names in a row: beans, eggs and rice."""
    return listed((timer.name for timer in timers), link)


def unnamed() -> str:
    """What a timer is called that the cook gave no name."""
    return _worded(say("unnamed"))


def _worded(words: Words) -> str:
    """Words in which no quantity depends on the asker's units."""
    return worded(words, "us")


def later(moment: datetime, length: timedelta) -> datetime:
    """The moment so much later by the stopwatch, in its own time zone, across a change of the clocks too."""
    return (moment.astimezone(UTC) + length).astimezone(moment.tzinfo)
