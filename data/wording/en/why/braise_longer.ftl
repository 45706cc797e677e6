line =
    { $side ->
        [above] A braise takes { $pace_of_tough_cuts } { $at } because its liquid simmers at only { $simmer }, and
            collagen melts more slowly there.
        [level] A braise keeps its usual time { $at }; higher up its liquid simmers cooler and collagen melts more
            slowly.
       *[below] A braise takes { $pace_of_tough_cuts } { $at } because its liquid simmers a little hotter.
    }
paragraph =
    A tough cut is tender when its collagen has turned to gelatin, and that takes heat and time together. { $boils }
    A braise stands a few degrees under that, at about { $simmer }. { $side ->
        [above] So the { $braise_time_at_sea } of sea level become { $braise_time }; the range is wide because no
            two cuts are alike. The meat can never get hotter than its liquid, whatever the oven says.
        [level] So { $braise_time_at_sea } is the usual time.
       *[below] So the { $braise_time_at_sea } of sea level become { $braise_time }.
    } { $side ->
        [above] Keep the lid on, start with a little more liquid and go by the fork, or let a pressure cooker take
            the elevation out of it.
       *[other] Keep the lid on and go by the fork.
    }
equations = { $boiling_equation } { $rate_of_tough_cuts }
time-factor-of-tough-cuts-label = Time against sea level, tough cuts
