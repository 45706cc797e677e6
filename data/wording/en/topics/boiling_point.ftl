headline =
    Water boils at { $here } at { $place }{ $by ->
        [barometer] { " " }by your barometer
       *[map] { "" }
    }{ $moved ->
        [yes] , against { $there } at { $baseline }
       *[no] { "" }
    }.

# $said: the boil that the asker states; $apart: how far it is off, too $way
stated = { $verdict ->
        [yes] Yes: { $said } is right for { $place }, where water boils at { $here } in standard air.
        [nearly] Not quite: water boils at { $here } at { $place } in standard air, so { $said } is { $apart } too { $way }.
       *[no] No: water boils at { $here } at { $place }, not at { $said }, which is { $apart } too { $way }.
    }
weather-label = For each 10 hPa (0.3 inHg) of weather
# $celsius and $fahrenheit: the same difference in either
weather =
    Weather moves it too: 10 hPa (0.3 inHg) up or down on the barometer is { $celsius } °C ({ $fahrenheit } °F) up or
    down. A stormy day can take off a full degree.
weather-read =
    This is for the pressure you read. 10 hPa (0.3 inHg) up or down moves it { $celsius } °C ({ $fahrenheit } °F); the
    standard air of { $place } gives { $standard }.
weather-maths = T_sat({ $over } Pa) = { $high } °C, T_sat({ $under } Pa) = { $low } °C.

thermometer-label = Your thermometer then reads
thermometer =
    Your thermometer is { $off } { $way ->
        [high] high
       *[low] low
    }, so a full boil reads { $reading } on it.
rule-of-thumb =
    The rule of thumb, 1 °F lower for each 500 ft, gives { $by_thumb }; the true slope is a little less, 0.9 °F (0.5 °C)
    for each 500 ft.
no-hotter = Expect every boiled, steamed or simmered food to take longer, and no flame to change that.
