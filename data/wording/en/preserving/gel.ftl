label = Gel point
boil-label = Water boils at
jam = jam
headline = { CAPITAL($food) } sets at about { $temperature } at { $place }.
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
