line =
    Gravity is only { $gravity_less } % less { $at }, which nothing in a kitchen notices; it is the air pressure, { $pressure },
    that changes.
paragraph =
    Gravity falls with the square of the way to the middle of the earth, and a mountain is a small part of that: {
    $gravity_less } % { $at }. The air presses with { $pressure } against { $pressure_at_sea } at sea level, so gas takes up {
    $gas_ratio } times the room. { $boils }
equations = { $gas_equation }
belief-weaker =
    It is the air pressure, not gravity: gravity is only { $gravity_less } % less { $at }, while the air presses with { $pressure }
    against { $pressure_at_sea } and lets the same gas take up { $gas_ratio } times the room.
