line =
    { $side ->
        [above] Potatoes take { $pace_of_potatoes } { $at } because the boil is only { $boil } and they soften by
            heat, not by bubbling.
        [level] Potatoes keep their usual time { $at }; higher up they take longer because the boil is cooler.
       *[below] Potatoes take { $pace_of_potatoes } { $at } because the boil is a little hotter than at sea level.
    }
paragraph =
    Heat has to reach the middle of a potato, and then starch and cell walls have to give way. Cutting it smaller
    shortens the first part only. { $boils } { $side ->
        [level] So the usual time holds.
       *[other] So expect potatoes to take { $pace_of_potatoes }.
    } Start them in cold water, keep the lid on and test with a knife. In the oven they change much less, because
    the oven is as hot as you set it; only the wet middle stops at the boiling point.
equations = { $boiling_equation } { $rate_of_potatoes }
time-factor-of-potatoes-label = Time against sea level, potatoes
