line =
    Poaching hardly changes { $at } because its water is held at { $poaching }, under the boil, by you and not by
    the air.
paragraph =
    Fish and chicken poach in water at { $poaching }, where a thermometer, not a bubble, is the guide. { $boils }
    { $poaching_fits ->
        [yes] That leaves { $poaching_room } between the two, so the food takes its usual time.
       *[no] That is about the top of the range, so keep to the cooler part of it.
    } { $side ->
        [above] The trap is the look of the water: high up it shivers and bubbles at lower readings, so the old
            signs mean cooler water.
        [level] Higher up the same signs mean cooler water.
       *[below] The signs mean slightly hotter water.
    } Use a thermometer in the water and in the food. The safe temperatures in the middle stay as they are.
equations =
    { $boiling_equation } Room above the poaching range = { FIXED($boil, 1) } − 82 = { FIXED($poaching_room, 1) }
    °C.
