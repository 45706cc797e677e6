band-label = Printed band begins at
process-label = Process time here
of-that-label = Of that, for the elevation
add-label = Add for the elevation
add-long-label = Add to a process of 20 min or more
add-short-label = Add to a process of 15 min or less

# $verdict: whether the printed time will do, where that was asked
process =
    { $verdict ->
        [yes] Yes, { $base } is enough: process
        [no] No, { $base } is not enough here: process
       *[none] Process
    } { $food } for { $time } { $vessel ->
        [steam] in open steam
       *[boiling_water] in boiling water
    } at { $place }{ $way ->
        [longer] : { $base } by the recipe and { $more } for the elevation.
       *[same] , as the recipe says.
    }
tell-me =
    Tell me { $named ->
        [yes] the time
       *[no] the food, and the time
    } that its tested recipe prints for 0–1,000 ft with the jar size, and I give the time here. If it prints a column for
    your elevation, use that and add nothing.
added =
    { $named ->
        [yes] At { $place } { $way ->
            [nothing] process for the time your tested recipe for { $food } prints for 0–1,000 ft; nothing is added.
            [same] add { $most } to the time your tested recipe for { $food } prints for 0–1,000 ft.
           *[by_length]
                add { $most } to a tested process for { $food } of 20 min or more, { $least } to one of 15 min or less.
        }
       *[no] Only if you have a tested recipe for an acid food: at { $place } { $way ->
            [nothing] process for the time it prints for 0–1,000 ft; nothing is added.
            [same] add { $most } to the time it prints for 0–1,000 ft.
           *[by_length] add { $most } to a tested process of 20 min or more, { $least } to one of 15 min or less.
        }
    }

because =
    Water boils at { $boil } here, so jars need longer to get the same kill. The USDA guide prints the band { $band },
    { $more }.
differ =
    Utah State's tables split that band and print { $band }, { $more }. The two differ; the longer is given.
agree = Utah State's { $band } agrees.
plus =
    { $way ->
        [nothing] nothing more
       *[more] { $time } more
    }

start-steam =
    Vent until the steam reads { $boil }, the boil here, then start the clock; it must hold to the end.
# depth of the water: a process of this length may take it either way, must have it deep, or is not known yet
start-boil =
    Start the clock at a full rolling boil, { $boil } here, lid on, { $depth ->
        [deep] 2 in (5 cm) of water over the jars, since it is over { $deep_over }.
        [unknown]
            1 to 2 in (2.5 to 5 cm) of water over the jars, 2 in (5 cm) where the process is over { $deep_over }.
       *[either] 1 to 2 in (2.5 to 5 cm) of water over the jars.
    }
start-again = If the boil stops, bring it back and start the time again from nothing.
sterile-jars =
    The recipe's time is under 10 min: fill sterile jars, boiled empty for { $boiled }, or process clean hot jars for
    { $clean } instead.

lids-covered = The lids must stay covered to the end, and a long boil takes more water off.
acid =
    It stands on the border of acid, about pH 4.6. Below that botulism spores cannot grow, so with its acid boiling water
    is enough.
acid-by-recipe =
    The recipe's vinegar, 5 % acid, or its bottled lemon or lime juice is what makes it safe: never less of it, never
    weaker, never more vegetables to the same acid.
acid-by-fermenting = The acid that makes a ferment safe comes of its salt and its time.
steam = A steam canner takes the times of boiling water for tested acid recipes, { $limit } at most with the elevation.
steam-acid-only =
    An atmospheric steam canner is for acid foods only, pH 4.6 or less. Heat the jars first and do not open it while the
    clock runs.
