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
    the push. { $boils } For an egg of middle size from the refrigerator, into water already boiling, that is { $side ->
        [level] { $soft_egg } soft and { $hard_egg } hard.
       *[other] { $soft_egg } soft and { $hard_egg } hard, against { $soft_egg_at_sea } and { $hard_egg_at_sea } at
            sea level.
    } Published kitchen advice is more generous: a three-minute egg may want five at { $eggs_advised }. Try one egg
    with your own pan and note the time.
equations =
    { $boiling_equation } The usual minutes at sea level, times what ln(0.76·(4 − T)/(63 − T)) becomes from 100 °C to
    { FIXED($boil, 1) } °C: { $soft_egg_minutes } min soft, and { $hard_egg_minutes } min with 77 °C for hard.
soft-egg-label = Soft-boiled, from cold
hard-egg-label = Hard-boiled, from cold
caution = For children, the elderly, the pregnant and the sick, cook eggs until white and yolk are firm.
belief-not-on-everest =
    Yolk sets firm by about { TEMP(170) } and white before that, cooler than any boil under the open sky but the very
    highest; it only takes longer.
