line =
    { $side ->
        [above] A pot needs more water { $at } mostly because it has to simmer longer, not because it boils harder.
        [level] A pot needs the recipe's water { $at }; higher up it needs more, because it has to simmer longer.
       *[below] A pot needs no extra water { $at }: it simmers no longer than at sea level.
    }
paragraph =
    At a bare simmer two things cancel. Vapour spreads faster through thin air, but the cooler liquid gives off less
    of it. { CAPITAL($at) } an open pot 11 in (28 cm) across loses about { $open_loss } an hour, and at sea level
    { $open_loss_at_sea }. { $side ->
        [above] Water boils cooler there, so the food takes longer, and the longer simmer is where the water goes.
        [level] So the recipe's time and water hold.
       *[below] So the food takes a little less time and the recipe's water is enough.
    } At a rolling boil the burner alone decides, so turn it down and cover the pot.
equations =
    Carrier: rate = 0.089·p_steam/r·(p_sea/p_here); on 0.06 m² { FIXED($open_loss, 0) } ml an hour here,
    { FIXED($open_loss_at_sea, 0) } ml at sea level.
open-loss-beside-sea-level-label = Lost in an hour, open
