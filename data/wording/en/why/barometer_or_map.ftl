line =
    The sign gives the height and a barometer today's air, which is what cooks: { $barometer ->
        [read] uncorrected, { $pressure } is the air of { $cooks_as_at } and boils water at { $boil }.
       *[none] uncorrected, it reads about { $pressure } at { $place }, where water boils at { $boil }.
    }
paragraph =
    Pressure altitude is where standard air would press as the barometer says. A swing of { $weather_swing } in the weather
    moves it by about { $weather_climb } and the sign by nothing, so the two seldom agree: by the map water boils at {
    $boil_by_map }. For pasta and stews the
    difference is nothing; for candy and jam go by the air of the day, or boil water and read the thermometer. A barometer
    set to the weather report reads as if it hung at the sea, and will not do.
equations = { $boiling_equation }
station-pressure-label = Air pressure in the kitchen
caution = For canning go by the elevation on the map, never by the weather.
