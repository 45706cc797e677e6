line =
    A wet surface spends its heat on drying, so in a smoker at { $smoker } it settles at about { $damp } { $at }, the
    wet bulb, until it is dry.
paragraph =
    Water that turns to vapour takes heat with it. A wet surface cools until as much heat comes in as drying takes
    away, and that temperature is the wet bulb of the air around it. { $side ->
        [above] Vapour leaves more easily in thin air, so the balance lies lower: about { $damp } { $at } in a smoker
            at { $smoker }.
       *[other] In a smoker at { $smoker } it lies at about { $damp } { $at }.
    } That is the stall of a brisket, the cool crust of a wet loaf, and why a fan dries food. Wrap, add steam, or let
    the surface dry, and the temperature climbs again.
equations =
    Heat balance of a wet surface in smoke as damp as at sea level: { FIXED($damp, 1) } °C in air of
    { FIXED($smoker, 0) } °C.
damp-label = A wet surface settles at
