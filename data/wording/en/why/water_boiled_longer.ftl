line =
    Boil drinking water for { $boil_time } { $at }{ $boil_time_grows ->
        [yes] { "" } instead of { $boil_time_at_sea }, since a cooler boil kills germs more slowly and the
            advice keeps a margin.
       *[no] ; higher up the advice is longer, since a cooler boil kills germs more slowly.
    }
paragraph =
    Germs in water die by heat and time, and most are gone before it boils at all. { $boils } { $side ->
        [above] That still kills them, only a little more slowly, so most agencies add time as a margin.
       *[other] That kills them with plenty to spare.
    } They differ on how much: { $at } { $agencies }, and the World Health Organization only a full rolling boil.
    Where they differ, take the longest. Start counting when stirring no longer stops the bubbles.
equations = { $boiling_equation }
boil-time-label = Full rolling boil
caution =
    Where a boil-water order stands, follow the local authority. Boiling kills germs; it does not take out fuel,
    metals or salts.
