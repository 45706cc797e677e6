# what was changed of a plan, said over the list
moved =
    { $way ->
        [earlier] Service is { $time } earlier, and so is every start.
       *[later] Service is { $time } later, and so is every start.
    }
other-place = Counted for { $here } now, where it was { $was }.
dropped = Without { $food }.
first = First on: { $food }.
# $time: from now on
next = Next on: { $food }, in { $time }.
all-on = All of it should be on by now.
what-time = What time is it now? By that and the reading I can tell whether it will be done.
not-in-yet = By the list it is not in yet: say when it went in, as "in since 11:30", and what it reads.
