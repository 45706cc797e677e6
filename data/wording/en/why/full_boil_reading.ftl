line =
    Water at a full rolling boil reads { $boil } { $at }{ $side ->
        [above] , so a thermometer that stops short of the sea-level figure is not broken.
        [level] ; a lower reading there would point to the thermometer, and higher up to the elevation.
       *[below] , a little over the sea-level figure.
    }
paragraph =
    A full boil means big bubbles that stirring cannot stop. It happens at whatever temperature the air allows. For
    standard air that is { $boil } { $at }. { $reading_given ->
        [yes] A true reading of { $reading } at a full boil belongs to about { $reading_belongs_to }. Weather
       *[no] Weather
    } moves it by about { $weather_rise } for every { $weather_swing }. If the reading is further off than a degree or
    two, test the thermometer in crushed ice and water, where it must read { $ice }.
equations =
    { $boiling_equation } T_sat(p + { FIXED($weather_swing, 0) } Pa) − T_sat(p) = { FIXED($weather_rise, 2) } °C.
