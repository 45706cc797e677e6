line =
    A roast hardly changes { $at } because the oven is as hot as you set it and the meat is done far below the boil.
paragraph =
    An oven at { $roasting_oven } is that hot at any height, and the middle of a roast is done far below the boil: a
    joint of beef, lamb or pork at { $medium_roast } or so, a bird at { TEMP(165) }. { $boils } That sets a limit
    only to the wet surface, until it dries and browns. { $side ->
        [above] The air has { $oven_air_percent } % of its sea-level weight, so it carries a little less heat and
            dries the outside sooner; some guidance allows up to a quarter more time.
       *[other] So the recipe's time holds.
    } Keep the oven where it is, put in a thermometer, and take the roast out by the temperature of its middle.
equations = Density of air as hot as at sea level = pressure here / pressure there = { $oven_air }.
belief-longer =
    Roasts go by the oven, which is as hot as ever, so plan the usual time and at most a little over; the thermometer
    decides.
