# $start: from which end of the time given to start, longest or shortest, or anywhere
# within it; $doing: what is done to the dish

no-temperature =
    A microwave oven has no temperature to set; wet food in it stops at { $boil } at { $place }.
takes =
    { CAPITAL($time) } for { $doing } at { $place }{ $start ->
        [longest] : start from the longest time given, { $base } at { $baseline }.
        [shortest] : start just under the shortest time given, { $base } at { $baseline }.
       *[anywhere] , as at { $baseline }.
    }

popcorn-step = Stay beside it and stop the oven when pops come two seconds apart, whatever the clock says.
step-as-given = Cover it, stir or turn it halfway, and let it stand 2 min.
step =
    Set { $time }, { $start ->
        [longest] the longest time given
       *[shortest] just under the shortest time
    }. Cover it, stir or turn it halfway, let it stand 2 min, then add half a minute at a time.

same-power = The oven gives the same power anywhere, and water boils at { $boil } here, as the package expects.
advice =
    Published advice for high kitchens: { $start ->
        [longest]
            meat, poultry, pasta and rice take the longest time given, since they cook at their own boil, { $boil } here,
            which is cooler.
       *[shortest]
            start just under the shortest time given, since the food boils at { $boil } here, sooner than at sea level,
            and loses its water faster.
    }

uneven =
    A microwave oven heats unevenly: bring every part to { $core }, turn it halfway, and let it stand covered 2 min
    before measuring.
egg-bursts = Never heat an egg in its shell, or a whole yolk unpricked: it bursts, often in the face.
deep-dish = Use a dish twice as deep as the food: it boils sooner and climbs higher in thin air.
cup-erupts =
    A still cup can be hotter than its boil and erupt when it is moved: leave a wooden spoon in it, and let it stand a
    minute.
