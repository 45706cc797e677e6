line =
    { $side ->
        [above] { CAPITAL($at) } a soft-boiled egg takes { $soft_egg }, against { $soft_egg_at_sea } at sea level,
            because cooler water drives heat to the yolk more slowly.
        [level] A soft-boiled egg takes { $soft_egg } { $at }, and longer the higher you climb, because cooler water
            drives heat in more slowly.
       *[below] { CAPITAL($at) } a soft-boiled egg takes { $soft_egg }, against { $soft_egg_at_sea } at sea level,
            because hotter water drives heat to the yolk faster.
    }
paragraph =
    An egg cooks from the shell inward, and the yolk waits for the heat to arrive. The cooler the water, the weaker
    the push. { $boils } For a large egg from the refrigerator, into water already boiling, that is { $side ->
        [level] { $soft_egg } soft and { $hard_egg } hard.
       *[other] { $soft_egg } soft and { $hard_egg } hard, against { $soft_egg_at_sea } and { $hard_egg_at_sea } at
            sea level.
    } Published kitchen advice is more generous: a three-minute egg may want five at { $eggs_advised }. Try one egg
    with your own pan and note the time.
equations =
    { $boiling_equation } t = 0.451·57^(2/3)·ln(0.76·(4 − { FIXED($boil, 1) })/(63 − { FIXED($boil, 1) })) =
    { $soft_egg_minutes } min soft, and { $hard_egg_minutes } min with 77 °C for hard.
soft-egg-label = Soft-boiled, large, from cold
hard-egg-label = Hard-boiled, large, from cold
caution = For children, the elderly, the pregnant and the sick, cook eggs until white and yolk are firm.
belief-not-on-everest =
    Yolk sets firm by about { TEMP(170) } and white before that, cooler than any boil under the open sky but the very
    highest; it only takes longer.
