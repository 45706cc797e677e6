line =
    A sauce reduces about as fast { $at } as anywhere, because at a full boil the burner sets the pace, not the air.
paragraph =
    To reduce is to boil water away, and each spoonful takes a fixed amount of heat. { $boils } { $side ->
        [above] The heat to boil it away is greater by { $heat_of_boil_apart } %, which is nothing; a gas burner
            that has gone weak matters more. What does change is the temperature: flour and starch thicken a little
            later, and a sauce that has to cook as well as reduce needs more time and more liquid.
        [level] The pace depends on the burner and the width of the pan. Higher up the sauce is cooler while it
            reduces, so starch thickens later.
       *[below] The heat to boil it away is less by { $heat_of_boil_apart } %, which is nothing.
    } Judge by the spoon, and salt at the end.
equations =
    r = { $heat_of_boil } kJ/kg here, { $heat_of_boil_at_sea } kJ/kg at sea level; 1.5 kW into the pan drives off
    { $boiled_off_by_1500_w } and { $boiled_off_by_1500_w_at_sea } kg an hour.
boil-away-label = Boiled away in an hour by 1.5 kW
belief-faster =
    It comes to the boil a little sooner, but from there the burner drives the water off, and each spoonful takes as much heat {
    $at } as anywhere: on the same heat into the pan it reduces in about the same time.
