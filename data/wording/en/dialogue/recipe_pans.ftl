# A pan named with an amount of the recipe.

pan =
    { $shape ->
        [deep] A deep pan, filled no more than half: begin testing at the time of the step and go by a clean skewer, up to 10 min longer; foil over a top that browns first.
        [flat] A flat pan holds the batter shallower: begin testing at two thirds of the time of the step.
       *[small] In small moulds, filled half, it is done far sooner: begin testing at 12 min.
    }
