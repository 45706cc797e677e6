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
not-in-yet = By the list it is not in yet, or only just: say when it went in, as "in since 11:30", and what it reads.
# guests who eat otherwise
well-done = Well done: give their portion of { $food } its own time back in a hot oven till the thickest part reads { TEMP(160) }; the rest of the joint keeps to its own.
wheat = Coeliac: not for them as commonly made, for the wheat flour in it: { $foods }. Make theirs with cornflour or gluten-free flour, or leave it off the plate.
wheat-maybe = Read the labels and the recipe of { $foods }: flour may be in it.
no-wheat-known = Coeliac: none of these has wheat flour as commonly made; gravy, stock cubes and ready sauces often have.
wheat-apart = Cook theirs apart: clean pans, spoons and boards, fresh water and fat, on the shelf over anything floured, and plated first. Gravy, stock cubes and ready sauces need a gluten-free label.
# $span: least and most; $time: when it goes on
parboil-again = { CAPITAL($food) }: parboil { $span }, from { $time }, then drain and let it steam dry.
no-menu = Which menu? Tell me the dishes, or paste it with a dish a line, and for how many: short ribs 40 %, polenta, green beans.
# a menu that was pasted; $lines: its dishes
read = The menu as I read it: { $lines }. Say "order it", or when it is served.
read-line =
    { $food }{ $told ->
        [count] { " " }for { $count }
        [share] { " " }for { $count } %
       *[no] { "" }
    }
covers-now = Now for { $count }.
