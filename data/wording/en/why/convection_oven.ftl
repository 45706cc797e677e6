line =
    { $side ->
        [above] A fan oven is as hot as it is set { $at }, but each breath of its air weighs only { $oven_air_percent }
            % of sea level and carries that much less heat, so the fan helps a little less.
        [level] A fan oven works { $at } as it says on the dial; in thinner air the fan helps a little less.
       *[below] A fan oven works { $at } as it says on the dial, in slightly denser air.
    }
paragraph =
    The thermostat keeps the temperature, whatever the air weighs. { $side ->
        [above] The air { $at } weighs { $oven_air_percent } % of what it does at sea level, so a fan brings a bit less
            heat to the food in a minute, and dries its surface sooner.
        [level] Moving air brings heat to the food faster than still air.
       *[below] The air { $at } weighs { $oven_air_percent } % of what it does at sea level, so a fan brings a bit more
            heat.
    } Most of the heat in an oven still comes by radiation from its walls, so the difference is a few minutes. Keep
    the usual rule of 25 °F (15 °C) less than in a still oven, and look early. For cakes that need setting fast, still
    air at the full temperature is often kinder.
equations = Density of air as hot as at sea level = pressure here / pressure there = { $oven_air }; heat brought by moving air goes with about its 0.8th power.
belief-no-change =
    It is as hot as it is set, but thin air carries a little less heat, and what is wet inside the food still boils
    cooler.
belief-dries-more =
    Moving air dries a surface sooner at any height, and thin air lets its vapour go { $side ->
        [above] about { $drying_percent } % faster on top of that
       *[other] at its usual pace
    } { $at }: cover what should stay moist, or set the fan lower.
