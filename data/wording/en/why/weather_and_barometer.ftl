line =
    Water boils cooler in a low because the air presses less: { $weather_swing } less on the barometer takes off
    { $weather_fall } { $at }, like a climb of { $weather_climb }.
paragraph =
    The elevation sets where water usually boils, and the weather moves it from day to day. { $boils }
    { $barometer ->
        [read] That is by your barometer.
       *[none] That is for standard air.
    } A drop of { $weather_swing } lowers it by { $weather_fall }, about as much as climbing { $weather_climb }.
    { $side ->
        [above] For pasta and stews that is nothing against what the elevation has already taken.
       *[other] For pasta and stews that is nothing.
    } For candy a stormy week can cost a degree or two, so boil plain water with your thermometer the same day and
    count from there.
equations =
    { $boiling_equation } T_sat(p) − T_sat(p − { GROUPED($weather_swing, 0) } Pa) = { FIXED($weather_fall, 2) } °C.
weather-drop-label = 10 hPa less takes off
belief-lowers-boil =
    A storm lowers the boil, but only by { $weather_fall } or so for { $weather_swing } on the barometer.
belief-as-much =
    { $weather_swing } on the barometer moves the boil by only { $weather_fall }, like a climb of { $weather_climb }; a storm
    seldom makes more than two or three times that.
