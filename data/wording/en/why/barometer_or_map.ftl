line =
    A barometer tells how hard the air presses today, the sign only how high the town stands. Cook by the barometer if it
    is not corrected to sea level{ $barometer ->
        [read] : { $pressure } is the air of { $cooks_as_at } and boils water at { $boil }, where { $place } on the map
            gives { $boil_by_map }.
       *[none] ; at { $place } it should read about { $pressure }, and water boils at { $boil }.
    }
paragraph =
    Pressure altitude is where standard air would press as the barometer says. A swing of { $weather_swing } in the weather
    moves it by about { $weather_climb } and the sign by nothing, so the two seldom agree. For pasta and stews the
    difference is nothing; for candy and jam go by the air of the day, or boil water and read the thermometer. A barometer
    set to the weather report reads as if it hung at the sea, and will not do.
equations = { $boiling_equation }
station-pressure-label = Air pressure in the kitchen
caution = For canning go by the elevation on the map, never by the weather.
