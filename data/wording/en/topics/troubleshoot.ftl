# $cause and $change are sentences of their own. $how says how what has failed can be used.
cause-and-change = { $cause } { $change }
saved =
    { $verdict ->
        [yes] Yes: { SMALL($how) }
        [partly] In part: { SMALL($how) }
       *[no] No: { SMALL($how) }
    } Next time: { SMALL($then) }
this-batch =
    { $verdict ->
        [yes] This batch can be saved: { SMALL($how) }
        [partly] This batch can be saved in part: { SMALL($how) }
       *[no] This batch cannot be saved: { SMALL($how) }
    }
discard = Do not taste it: throw that jar out, and mend the next batch.
nothing-else = Change nothing else in that batch, and keep a note of how it comes out.
if-not = If that is not it, { SMALL($change) } { $cause }
after-that = After that, { SMALL($change) } { $cause }
where = What elevation are you at? It decides how much to change.

which-fault = What is wrong with the { $food }? It { $faults }, or something else?

# what a figure is of: $what is the kind of change, $item the ingredient
of =
    { $what ->
        [oven] Oven
        [sugar_temp] Sugar, at the end
        [fat_temp] Hot fat
        [time] Time
        [proof] Rising time
        [pressure] Under pressure, 15 psi
        [temperature] Water
       *[other] { CAPITAL($item) }
    }
of-amount = { $of } for { $was }
against = { $of } against what it was
change-of = Change of { SMALL($of) }

taken-for = No such dish is known to me, so this is for one kind: { $dish }. Say what it is like, and I go by that.
one-at-a-time =
    One change a batch, in the published order: leavening, sugar, liquid, then the rest. simmerline batch note keeps the log
    and goes on from it.
unknown = That fault is not among those I can mend yet.
describe = Say what it looks like and how it feels to cut: did it sink, spread, stay hard, dry out?
