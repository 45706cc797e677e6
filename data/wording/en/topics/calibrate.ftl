expected = At { $place } a good thermometer reads { $boil } in boiling water.
expected-label = Boiling water should read
expected-because =
    Water boils at { $boil } at { $place } { $by ->
        [barometer] for the pressure you read
       *[map] in standard air
    }.
expected-maths = T_sat({ $pressure } Pa) = { $boil } °C.
weather-moves = Weather moves that by { $swing } or so.

# $way: whether the thermometer reads too high or too low
reading-label = You read
too-high = Thermometer reads too high by
off-by = Thermometer off by
right = Your thermometer is right: { $reading } is a full boil at { $place }.
wrong =
    Your thermometer reads { $size } too { $way ->
        [high] high
       *[low] low
    }: boiling water at { $place } is { $boil }.
correct =
    { $way ->
        [high] Take { $size } off
       *[low] Add { $size } to
    } every reading near the boil.
far-off =
    That is far off: check the elevation, that the water is at a full rolling boil, and that the tip does not touch the
    pot.

cooks-as-at = You cook as at
# $doubted: whether it was asked if the thermometer is broken
by-boil =
    { $doubted ->
        [yes] Not broken if your kitchen is near { $found }, where water boils at { $boil }; much lower down it reads too low.
       *[no] Water that boils at { $boil } cooks as at { $found }.
    }
by-boil-because =
    In standard air water boils so at that elevation. Weather of 10 hPa (0.3 inHg) moves it some 90 m (300 ft), and a
    thermometer 1 °C (2 °F) off moves it 300 m (1,000 ft), so check the thermometer in melting ice first.
by-barometer = Air at { $pressure } cooks as at { $found }: water boils at { $boil }.
by-barometer-because =
    A barometer at { $pressure } in the kitchen itself is the air of { $found } on a standard day, whatever the map says.
    A weather report will not do: it is reduced to sea level.
boil-test =
    Boil a deep pot of plain water hard for a minute, hold the tip in the middle, clear of the pot, and read when it
    stands.
ice-test = Then crushed ice with a little water, stirred: it must read 32 °F (0 °C) at every elevation.

report =
    { $report } is a weather report's figure, reduced to sea level: at { $place } the air presses with { $pressure }
    today, and water boils at { $boil }.
station-label = Pressure at the place itself
canning-by-map = For canning go by the elevation on a map, never by the weather.
report-because =
    Weather services add the weight of the air between the station and the sea, so that maps can be compared. A barometer
    that hangs in a kitchen at { $place } and is not set for the weather reads about { $pressure }.
report-maths = p = { $report }·p_std(z)/101,325 = { $here } Pa.

deep-low-label = A deep low is worth a climb of
deep-low =
    A deep low, { $low } under the usual, is worth a climb of { $climb } and takes { $fall } off the boil; a strong high
    gives about as much back.
deep-low-maths = dz = { $climb } m for { $low } Pa.
