line =
    { $side ->
        [above] Water boils at { $boil } { $at } because less air presses down on it.
        [level] Water boils at { $boil } { $at }, and cooler the higher you climb, because less air presses on it.
       *[below] Water boils at { $boil } { $at }, hotter than at sea level, because more air presses down on it.
    }
paragraph =
    Water boils when its steam can push back the air above it. Air has weight, and the higher you stand the less of
    it is left above you. { CAPITAL($at) } the air presses with { $pressure }{ $side ->
        [level] .
       *[other] , against { $pressure_at_sea } at sea level.
    } So water boils at { $boil }{ $side ->
        [above] , { $drop } under sea level.
        [level] .
       *[below] , { $drop } over sea level.
    } Each { $thousand_feet } of climb takes off about { $thousand_feet_take_off }. Once it boils, more heat only
    makes more steam.
equations = { $boiling_equation }
belief-same-everywhere = It boils at { $boil } { $at }, because that goes by the air pressure.
belief-time-makes-up =
    Food that softens only takes longer in water of { $boil }, but no time at the boil makes low-acid food in jars safe, and
    very high up beans soften only very slowly.
