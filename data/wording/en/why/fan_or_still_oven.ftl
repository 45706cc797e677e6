line =
    Still air for sponges, choux, custards and meringues, which a fan dries and lifts askew; the fan for trays of cookies, rolls
    and puff pastry, set 25 °F (14 °C) cooler.
paragraph =
    A fan brings heat to the surface faster and dries it sooner, and a soft batter skins over before it has risen. { $side ->
        [above] { CAPITAL($at) } the air weighs { $oven_air_percent } % of sea level's, so the fan helps a little less and dries
            a little more.
       *[other] Higher up the fan helps a little less and dries a little more.
    } Where it cannot be turned off, take the 25 °F (14 °C) off and look five minutes early.
equations = Heat brought by moving air goes with its density, at one speed of the fan.
