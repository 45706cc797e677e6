line =
    Browning and caramel are chemistry of the dry food and go by its own temperature, from about { TEMP(285) } and
    { TEMP(320) }, at every elevation.
paragraph =
    Only what depends on boiling water shifts. { $boils } Soft ball, gel point and the like are amounts of water and
    move with the boil; by the caramel stage the water is gone, so that number stays. Crusts brown by their own heat,
    once they are dry. { $side ->
        [above] They dry sooner in thin air, so bread and cakes may colour early though the oven is the same. Go by
            colour, and tent with foil when the outside runs ahead.
       *[other] Go by colour.
    }
equations = { $boiling_equation }
belief-browns-lower =
    Nearly dry sugar browns from about { TEMP(320) } at every elevation, and crusts from about { TEMP(285) }; only the watery
    stages, soft ball to hard crack, move down with the boil.
