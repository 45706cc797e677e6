line =
    An oven is held at its temperature by its thermostat, so 350 °F (177 °C) is just as hot { $at }; what changes is
    the food's own water.
paragraph =
    The thermostat heats until its sensor is warm enough, whatever the air weighs. { $side ->
        [above] The air in it is thinner, { $oven_air_percent } % of sea level, so it carries a little less heat, but
            most comes by radiation from the walls. A gas oven may take longer to get hot, because its burner has less
            oxygen.
        [level] Most of the heat comes by radiation from the walls.
       *[below] The air in it is a little denser, { $oven_air_percent } % of sea level, and most heat comes by
            radiation from the walls.
    } { $boils } That is where the wet inside of cakes, casseroles and roasts is held, so cakes are given a hotter
    oven to set in time, and casseroles more minutes. If an oven is really cool, that is the oven: hang a thermometer
    in it.
equations = Density of air as hot as at sea level = pressure here / pressure there = { $oven_air }.
belief-runs-cooler = The thermostat holds what is set, at any elevation.
belief-recalibrate =
    An oven thermometer and a thermostat go by warmth and not by the air, so they read the same { $at }; only the boiling test of
    a probe changes, and ice water is 32 °F (0 °C) everywhere.
