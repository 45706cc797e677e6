# $length, $left and $ago are stretches of time, $ends is a time of day.

# what a timer is called that the cook gave no name
unnamed = timer
# timers of a plan; $day: the day on which it rings, where $other says that it is not today
start-of = start of { $dish }
rings-at = Timer for the { $name }: { $ends }{ $other ->
        [yes] { " " }on { $day }
       *[no] , in { $left }
    }.
on-already = { CAPITAL($dish) } should be on already: no timer.
# timers of a plan that was changed
follow = The timers move with it.
off-the-plan = { CAPITAL($dish) } is off the plan: its timer is stopped.
on-now = { CAPITAL($dish) } should be on by now: its timer is stopped.
too-far = { CAPITAL($dish) } is more than a week off: no timer.
weekday =
    { $day ->
        [0] Monday
        [1] Tuesday
        [2] Wednesday
        [3] Thursday
        [4] Friday
        [5] Saturday
       *[6] Sunday
    }
none-running = No timer is running.
stopped = Stopped: { $names }.
which = Which one: { $names }?
unknown-which = There is no timer for { $name }. Which one: { $names }?

how-long = For how long?
how-long-for = How long for the { $name }?
how-much-longer = How much longer for the { $name }?
out-of-range = A timer can run from a second to a week. For how long?
more-out-of-range = A timer can run from a second to a week. How much longer?

# $end is `early` where the timer runs to the early end of a range of times, which is $span
set = Timer set: { $length }{ $end ->
        [early] , the early end of { $span }
       *[only] { "" }
    }, until { $ends }.{ $end ->
        [early] {" "}Test it then.
       *[only] { "" }
    }
set-for = Timer for the { $name } set: { $length }{ $end ->
        [early] , the early end of { $span }
       *[only] { "" }
    }, until { $ends }.{ $end ->
        [early] {" "}Test it then.
       *[only] { "" }
    }
left-now = { CAPITAL($name) }: { $left } left now, until { $ends }.
left = { CAPITAL($name) }: { $left } left, until { $ends }.
up = The timer is up.
up-for = The timer for the { $name } is up.
ended = The timer ended { $ago } ago.
ended-for = The timer for the { $name } ended { $ago } ago.
