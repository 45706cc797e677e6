line =
    Humidity does not move the boil, { $boil } { $at }; it decides how fast flour, dough and cut food take up or lose
    water.
paragraph =
    Water boils by how hard the air presses, and damp air presses as hard as dry. { $boils } What humidity does is
    speed or slow the drying of every open surface, and { $side ->
        [above] thin air adds about { $drying_percent } % to that by itself.
        [level] at sea level the weather alone decides it.
       *[below] denser air takes about { $drying_percent } % off it.
    } In dry air flour holds less water, dough skins over, meringue and candy stay crisp; in damp air candy turns
    sticky and crusts go soft. Sugar work is best done on a dry day. Adjust dough by feel and keep everything covered.
equations = { $drying_equation }
belief-lowers-boil =
    Water boils by air pressure, and damp air presses as hard as dry: it stays at { $boil } { $at }.
