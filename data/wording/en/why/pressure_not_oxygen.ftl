line =
    It is the air pressure and not the oxygen: { $at } the air presses with { $pressure }, against { $pressure_at_sea } at sea
    level, so water boils at { $boil }.
paragraph =
    Water boils when its steam can push the air back, and it does not matter what that air is made of: pure nitrogen at the same
    pressure would do the same. { $boils } The air is 21 % oxygen at every height; there is less of all of it, which lungs
    and flames notice as want of oxygen, and water as want of pressure.
equations = { $boiling_equation }
belief-oxygen-decides =
    It is the pressure, not the oxygen: { $at } the air presses with { $pressure }, against { $pressure_at_sea } at sea level, so
    water boils at { $boil }.
belief-same-share =
    Air is 21 % oxygen at every height where people cook; there is less of all of it, { $pressure } of pressure { $at } against {
    $pressure_at_sea } at sea level, and the pressure is what moves the boil.
