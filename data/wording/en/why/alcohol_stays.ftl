line =
    Alcohol does not boil off at once because it is mixed with water: wine boils at { $wine_boils } { $at }, and
    both leave together.
paragraph =
    Pure alcohol would boil at { $alcohol_boils } { $at }, but in the pot it is mixed with water, and a mixture
    boils somewhere between. Wine starts at { $wine_boils } and its steam carries both; the weaker it gets, the
    slower the rest leaves. In published trials 40 % was left after 15 minutes of simmering, 25 % after an hour and
    5 % after two and a half. { $side ->
        [above] Altitude changes little in that, since alcohol and water both boil lower together; go by time, not
            by temperature.
       *[other] Go by time, not by temperature.
    } A wide pan and stirring help, and flaming leaves about three quarters of it in the dish.
equations =
    Wine, 10% alcohol by mass, at { GROUPED($pressure, 0) } Pa: { FIXED($wine_boils, 1) } °C; pure alcohol
    { FIXED($alcohol_boils, 1) } °C; water { FIXED($boil, 1) } °C.
wine-boils-label = Wine starts to boil at
caution =
    Some alcohol stays in every dish cooked with it. For guests who avoid it for health, faith or recovery, cook
    without.
belief-burns-off =
    It leaves together with the water and no sooner than at sea level: after an hour of simmering a quarter is still
    there.
