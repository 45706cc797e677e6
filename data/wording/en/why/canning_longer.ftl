line =
    { $side ->
        [above] Jars in boiling water heat to only { $boil } { $at }, so they need the longer time printed for that
            elevation.
        [level] Jars in boiling water heat to { $boil } { $at }, which is what the shortest printed time counts on.
       *[below] Jars in boiling water heat to { $boil } { $at }, so the time printed for the lowest elevations
            holds.
    }
paragraph =
    A boiling-water canner kills what would spoil the jar by heat and time together, and its heat is the boiling
    point. { $boils } { $side ->
        [above] Less heat has to be made up by more time, and the tested tables print how much, by bands of
            elevation.
        [level] The tested tables start from there and add time by bands of elevation.
       *[below] The tested tables start from sea level and never take time away.
    } Take the time from the band you stand in, even if you stand just inside it. The bath is for acid food only:
    fruit, jam, pickles, tomatoes with added acid. Vegetables and meat need pressure at every elevation.
equations = { $boiling_equation }
caution = { tested-recipes }
