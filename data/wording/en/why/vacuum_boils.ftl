line =
    A vacuum pump does what climbing does, only much more: with { $vacuum } left in the chamber water boils at
    { $vacuum_boils }.
paragraph =
    Water boils when the air no longer presses hard enough to hold its steam back. { $boils } In a chamber sealer
    hardly any air is left, so anything warmer than { $vacuum_boils } boils in the bag. Seal food cold: chilled to
    fridge temperature it stays quiet, and nothing spits into the pump. The same boil is put to use in vacuum cooling,
    where steam carries the heat away in minutes. { $side ->
        [above] A pump reaches the same vacuum high up as anywhere; only a gauge that counts from the outside air
            shows less.
       *[other] A pump reaches the same vacuum anywhere.
    }
equations = { $boiling_equation } T_sat({ GROUPED($vacuum, 0) } Pa) = { FIXED($vacuum_boils, 1) } °C.
vacuum-boils-label = Boils at { $vacuum } at
belief-boils-cold =
    With { $vacuum } left in the chamber water boils at { $vacuum_boils }, and is no hotter for it: it bubbles and cooks nothing.
