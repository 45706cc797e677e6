line =
    The oven stays at { $braise_oven } for a braise { $at } because the pot is held by its liquid, not by the oven
    air.
paragraph =
    An oven has one job in a braise: to keep the liquid at a bare simmer. { CAPITAL($at) } that is about { $simmer },
    and { $braise_oven } is more than enough to hold it there. A hotter oven cannot lift it past the boil. It only
    makes the pot boil hard, which dries the edges, clouds the liquid and drives off water. { $side ->
        [above] So give a braise more time high up, not more heat.
       *[other] The same goes for any elevation.
    } If it does more than murmur, turn the oven down.
equations =
    Oven { FIXED($braise_oven, 0) } °C against a ceiling of { FIXED($boil, 1) } °C in the pot:
    { $braise_oven_to_spare } °C to spare.
oven-label = Oven
belief-turn-up =
    The oven stays at { $braise_oven }: the pot cannot pass its boil, { $boil } { $at }, whatever the oven says.
