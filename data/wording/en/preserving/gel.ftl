label = Gel point
boil-label = Water boils at
jam = jam
# Where no elevation was given.
anywhere =
    { CAPITAL($food) } sets { $rise } above the boil of your own water, wherever that is: { $sea } at sea level, about
    2 °F (1 °C) less for each 1,000 ft. What elevation are you at? Then I give the figure, and the minutes for the jars.
headline = { CAPITAL($food) } sets at about { $temperature } at { $place }.
# Where it is asked if it cooks longer.
headline-time =
    About as long: jam is done when enough water has left, and that goes by the burner and the pan. { CAPITAL($food) } sets at
    about { $temperature } at { $place }, so stop by that and not by the minutes or the sea-level reading.
beside = While it cooks it sets at about { $temperature } here, { $rise } over the boil of water.
jars-after = Then fill sterile jars and process them in boiling water: { $each }.
thermometer =
    Boil water first and read your thermometer in it: the gel point is 8 °F (4.5 °C) above that reading, so an error of
    the thermometer cancels.
tests =
    Start testing a degree or two early. Sheet test: two drops run together and fall as one from a cool spoon. Cold
    plate: a drop wrinkles when pushed. Take the pan off the heat while you test.
because =
    A syrup is ready to set near 65 % sugar, and that boils { $rise } over water: water boils at { $boil } here.
printed = The USDA table prints { $temperature } for { $elevation_ft } ft.
laboratory =
    The laboratory figure for 65 °Brix is { $rise }. With added pectin go by the packet's minutes, not by the thermometer.
maths = { $boil } + { $rise } = { $here } °C.
