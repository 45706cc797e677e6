not-converted =
    A recipe for canning is not converted: its { $pressed ->
        [yes] times and pressures stay
       *[no] process times stay
    } as written. A tested recipe's own table decides at { $place }: { $band } Ask for it with the time your tested recipe
    prints: simmerline ask "{ $question }".
none-printed = none is printed above { $ceiling } ft.
gauge = { $psi } psi on a { $kind ->
        [dial] dial
       *[weighted] weighted
    } gauge
band-of-gauges = the printed band { $band } has { $gauges } for low-acid food.
band-of-times = the printed band { $band } adds { $added }.
nothing = nothing
one-time = { $time }
two-times = { $long } to a process of 20 min or more and { $short } to a shorter one
question-of-pressure = pressure-can { $food } at { $place }
question-of-time = process { $food } in a water bath at { $place }, the tested recipe says { $minutes } minutes
sea-level = sea level
feet = { $feet } ft
metres = { $metres } m
the-jars = the jars
