# $first, $last: a gauge and what it matches; $gauges: whether there are one or two of them
headline =
    At { $place } a pressure cooker needs { $first }{ $gauges ->
        [two] , and { $last }
       *[one] { "" }
    }.
matches = { $needed } to match { $gauge } at { $baseline }
# Where the heat inside is asked for.
how-hot = { $here } inside, at { $gauge } on the gauge at { $place }, against { $there } at { $baseline }.
gauge-label = Gauge here for the heat of { $psi } psi
presses-alike = The air presses as at the baseline, so the gauge stays.
presses-less =
    The steam inside is as hot as gauge and air together make it, and the air at { $place } presses { $lost } { $way ->
        [less] less
       *[more] more
    } than at { $baseline }. The gauge has to make that good.
equal-maths = p_gauge here = p_gauge + { $there } − { $here } psi.

inside-label = Inside at { $psi } psi
inside =
    At { $gauge } it is { $inside } inside, { $way ->
        [less] { $lower } less than at sea level
       *[same] as at sea level
    }.
published-label = Published rule adds
published =
    The published rule is 1 psi more for each 2,000 ft, { $psi } psi here{ $longer ->
        [yes] ; where the weight is fixed, { $percent } % more time
       *[no] { "" }
    }.

made-for =
    Never run a cooker above the pressure it is made for, usually 15 psi (103 kPa): where that is not enough, cook
    longer.
fixed-weight = Where the cooker has a fixed weight, keep the weight and lengthen the time.

# Where more time is asked of the cooker and no dish was named.
more-time = { $longer ->
        [yes] { $counted ->
            [yes] About
           *[no] Yes: about
        } { $percent } % more time under pressure at { $place } by the published rule, 5 % for each 1,000 ft above 2,000 ft; slow meat takes about { $meat } %, dried beans up to { $beans } % by their softening. At { $gauge } it is { $here } inside, against { $there } at { $baseline }.
       *[no] No: at { $place } the times of the book hold; the published rule adds 5 % for each 1,000 ft above 2,000 ft. At { $gauge } it is { $here } inside, against { $there } at { $baseline }.
    }

# What an electric cooker holds on its settings, where no other pressure was named.
electric =
    An electric pressure cooker holds about { $low } to { $high } on HIGH, 5 to 7 psi (34 to 48 kPa) on LOW, over the air outside at
    any elevation: { $inside } inside at { $place }, against { $there } at { $baseline }. Above 5,000 ft those that were tested
    did not always get there.
