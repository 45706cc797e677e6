# what was changed of a plan, said over the list
moved =
    { $way ->
        [earlier] Service is { $time } earlier, and so is every start.
       *[later] Service is { $time } later, and so is every start.
    }
# $lines: by how much each dish goes on later or earlier
other-place = Against { $was }, at { $here }: { $lines }.
start-moved =
    { $food } { $way ->
        [later] { $time } later
        [earlier] { $time } earlier
       *[same] at the same time
    }
same-service = Still served at { $time }; say so if that is another time there.
# a second seating: $lines are the dishes with when each is begun once more
second = Second seating at { $time }, begun again: { $lines }. The first stays as it is.
again-at = { $food } at { $time }
# $time: when the roast comes out; $others: what is hotter than it
one-oven = One oven: { $food } comes out to rest at { $time }; turn the oven to { $heat } then, and { $others } finish hot while it rests.
dropped = Without { $food }.
soaked-already = The time of { $food } was that of a soaked pot already, so it stays.
meatless = { $count } of them eat no meat, so meat and fish are counted for { $others }.
first = First on: { $food }.
# $time: from now on; $soon: whether that is at once
next = Next on: { $food }, { $soon ->
        [yes] now.
       *[no] in { $time }.
    }
all-on = All of it should be on by now.
what-time = What time is it now? By that and the reading I can tell whether it will be done.
not-in-yet = By the list it is not in yet: say when it went in, as "in since 11:30", and what it reads.
