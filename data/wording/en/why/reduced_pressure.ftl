line =
    A weather report gives pressure as if every town stood at sea level; { $at } the pot feels the real one,
    { $pressure }.
paragraph =
    Forecasters want to compare towns, so they add or take away a column of air until every station reads as if it
    stood at the sea. That shows highs and lows, but it hides the elevation. { CAPITAL($at) } standard air presses
    with { $standard_pressure }, while the report would say about { $pressure_at_sea }. { $side ->
        [level] Near sea level the two agree.
       *[other] Take the report at its word and you would expect the boil at { $boil_at_sea }; it is at { $boil }.
    } For cooking use a barometer's own reading, called station pressure, or simply boil water and read the
    thermometer.
equations =
    p_station = p_report·p({ GROUPED($elevation, 0) } m)/p(0) = 101,325·{ $standard_share } =
    { GROUPED($standard_pressure, 0) } Pa. T_sat({ GROUPED($pressure, 0) } Pa) = { FIXED($boil, 2) } °C.
station-pressure-label = Air pressure at the place
