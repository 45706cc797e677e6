# Questions about the boil. $place says "at 7,000 ft (2,130 m)" or "at Timberfold Lodge, 7,000 ft (2,130 m)".

point = At what temperature does plain water boil { $place }?
point-why =
    Water boils at { $boil } { $place }: the air presses with { $pressure } there, against { $sea } at sea level, and steam
    gets away sooner.

fall = How much cooler than at sea level does water boil { $place }?
fall-why =
    Water boils at { $boil } { $place }, { $drop } under sea level's. The boil falls a little under 2 °F for each 1,000 ft,
    1 °C for each 300 m.

elevation =
    A cook on the road boils plain water and a true thermometer reads { $reading } in it. About how high is that kitchen?
    Answer in { $units ->
        [us] feet
       *[metric] metres
    }.
elevation-counts = within a tenth
elevation-why =
    Standard air boils water at { $reading } at about { $elevation }. A thermometer 2 °F (1 °C) off would move that by 1,000
    ft (300 m), so check it in melting ice first.

# $way is high or low.
thermometer =
    Your thermometer reads { $reading } in water at a full boil { $place }. How much too { $way ->
        [high] high
       *[low] low
    } does it read?
thermometer-why =
    A full boil { $place } is { $boil }, so the thermometer reads { $off } too { $way ->
        [high] high. Take that off
       *[low] low. Add that to
    } every reading near the boil, or mend it.

ice = What must a true thermometer read in a glass of melting ice { $place }?
ice-why =
    Melting ice is { $ice } at every elevation, while the boil { $place } stands at { $boil }. That is why ice finds the error
    of a thermometer and the boil only checks it.

harder =
    A trainee { $place } turns the flame up under an open pot { $pot ->
        [potatoes] that already boils, to cook the potatoes hotter
       *[stock] of stock at a full boil, to get it back to { $sea }
    }. Will that work?
harder-why =
    No. An open pot stops at { $boil } { $place } however hard it boils: more flame makes more steam, not more heat in the
    water. A pressure cooker is the way to get hotter.

salt = You salt the pasta water { $place }, { $salt } g to the litre. What does that do to its boil?
salt-nothing = nothing a cook could notice
salt-restores = it brings back the sea-level boil
salt-hotter = it boils { $by } hotter
salt-cooler = it boils { $by } cooler
salt-why =
    Salted as for pasta, { $salt } g to the litre, water boils a mere { $rise_f } °F ({ $rise_c } °C) hotter. The elevation
    took { $drop }. Salt is for the taste.

weather = A deep low comes in with a storm { $place }. What does the boil do?
weather-cooler = it gets a little cooler
weather-hotter = it gets a little hotter
weather-stays = it stays just as it was
weather-why =
    A low of { $low } under the usual takes { $drop } off the boil { $place }, from { $usual } to { $under_it }. Less weight of
    air, cooler boil: it is as if the kitchen had climbed.

hottest-first = Put these kitchens in order of their boiling water, hottest first.
harbour = a harbour kitchen at { $elevation }
hut = a hut on the pass at { $elevation }
kitchen = { $name } at { $elevation }
boil-in = { $boil } in { $kitchen }
hottest-first-why = The boil falls all the way up: { $kitchens }.

steam = Is the steam in a lidded steamer { $place } hotter than water at the boil there?
steam-why =
    No. Steam over an open pot is as hot as the boil, { $boil } { $place }. Only under pressure does it get hotter.

pressure-cooker = A pressure cooker holds { $gauge } on its gauge { $place }. How hot is it inside?
pressure-cooker-why =
    The gauge reads what the cooker adds to the air outside. At { $gauge } the steam inside is { $inside } { $place }, against
    { $at_sea } at sea level.

same-pressure =
    A cooker is run at { $sea } at sea level. What must the gauge read to be just as hot inside { $place }? Answer in
    { $units ->
        [us] psi
       *[metric] psi or kPa
    }.
same-pressure-counts = within half a pound (3.4 kPa)
same-pressure-why =
    The air outside gives { $less } psi less { $place }, so the gauge must read { $gauge } to be as hot inside. That is half a
    pound for each 1,000 ft. Never run a cooker over the pressure it was made for: cook longer instead.

two-hundred = Can an open pot of soup be kept at { $target } { $place }?
two-hundred-why =
    { $can ->
        [yes] Yes. Water boils at { $boil } { $place }, over { $target };
       *[no] No. Water boils at { $boil } { $place }, under { $target };
    } from about { $edge } up no open pot gets there. Over { $hot } the food is held safely all the same.
