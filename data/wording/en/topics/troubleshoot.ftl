# $cause and $change are sentences of their own. $how says how what has failed can be used.
cause-and-change = { $cause } { $change }
# of two changes the one that is chosen; $thing is a row of fault_questions.toml, $way whether a foam is whipped less or more
chosen =
    { $thing ->
        [time] Minutes first
        [oven] The heat first
        [leavening] The leavening first
        [sugar] The sugar first
        [flour] The flour first
        [liquid] The liquid first
        [fat] The fat first
        [egg] The eggs first
        [yeast] The yeast first
        [proof] The rise first
        [pan] The pan first
        [mix] The mixing first
       *[whip] { $way ->
            [less] Whip less
            [more] Whip more
           *[none] The whipping first
        }
    }: { SMALL($change) } { $cause }
# where it is asked whether the fat is hotter here
fat-as-set = No, the fat is just as hot as you set it. { $cause } { $change }
blamed =
    { $verdict ->
        [no] Not the elevation, it happens anywhere:
        [may] In part it may be the elevation:
        [low] Hardly the elevation, it is too low for that:
       *[partly] Partly the elevation, and it can be mended:
    } { SMALL($then) }
saved =
    { $verdict ->
        [yes] Yes: { SMALL($how) }
        [yet] Yes, it is only not done: { SMALL($how) }
        [partly] In part: { SMALL($how) }
       *[no] No: { SMALL($how) }
    } Next time: { SMALL($then) }
this-batch =
    { $verdict ->
        [yes] This batch can be saved: { SMALL($how) }
        [yet] Nothing is lost, it is only not done: { SMALL($how) }
        [partly] This batch can be saved in part: { SMALL($how) }
       *[no] This batch cannot be saved: { SMALL($how) }
    }
discard = Do not taste it: throw that jar out, and mend the next batch.
nothing-else = Change nothing else in that batch, and keep a note of how it comes out.
# $changes: a list of what becomes of the amounts of the formula
formula = The whole formula by the tables for { $place }: { $changes }. The rest stays.
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
