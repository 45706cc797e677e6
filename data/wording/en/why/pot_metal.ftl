line =
    The metal of a pot decides how soon and how evenly it heats, never how hot: { $at } water boils at { $boil } in all of
    them, and a heavy pot with a lid loses least.
paragraph =
    Copper and aluminium spread heat quickly, steel and clay slowly, and heavy iron holds it; on one burner that is worth a
    minute or two to the boil. { $boils } After that the air decides. { $side ->
        [above] What pays most is a thick bottom and a lid that fits, since the pot is on the fire longer and loses more
            water.
       *[other] A thick bottom and a lid that fits do more than the metal.
    } A thin camp pot boils soonest and scorches soonest, so stir it and keep the flame low.
equations = { $boiling_equation }
belief-boils-hotter =
    The pot decides how soon and how evenly it heats, never how hot: { $at } water boils at { $boil } in all of them.
belief-boils-sooner =
    A pot that leads heat well, copper or aluminium, is worth a minute or two to the boil, and no more heat after it: { $at }
    water boils at { $boil } in all of them.
belief-cancels =
    No open pot changes where water boils, { $boil } { $at }: the metal only holds and spreads heat, and just a lid that seals
    with pressure makes it hotter.
