line =
    Meat only has to reach { $safe_poultry } inside, and the boil { $at } is { $boil }, so there are still
    { $safe_margin } to spare.
paragraph =
    Heat flows into the meat for as long as the water is hotter than its middle. { $boils } { $side ->
        [above] That is { $safe_margin } over what poultry needs, against { $safe_margin_at_sea } at sea level, so the
            middle gets there, only a little later.
       *[other] That is { $safe_margin } over what poultry needs, so the middle gets there in its usual time.
    } What meat cannot do in an open pot is pass the boil itself. Go by a thermometer in the thickest part: the safe
    readings are the same everywhere.
equations =
    { $boiling_equation } Room over poultry's limit = { FIXED($boil, 1) } − 73.9 = { FIXED($safe_margin, 1) } °C.
safe-margin-label = The boil is over poultry's limit by
caution =
    Eat by the thermometer, not by the clock: { $safe_poultry } inside for poultry, { $safe_ground_meat } for minced
    meat.
belief-never-reaches =
    The boil is { $boil } { $at }, still { $safe_margin } over the { $safe_poultry } that poultry needs.
