change-label = Oven change
to-label = Oven here
to = Set the oven to { $now } instead of { $was }.
to-headline = Set the oven to { $now } instead of { $was } for { $baked } at { $place }.
by =
    Set the oven { $by } { $way ->
        [hotter] hotter
       *[cooler] cooler
    } than the recipe says.
by-headline =
    Set the oven { $by } { $way ->
        [hotter] hotter
       *[cooler] cooler
    } than the recipe says for { $baked } at { $place }.
usual = Without a recipe that is { $setting }.
at-most = about { $about }, at most { $most },
degrees =
    { $units ->
        [us] { $fahrenheit } °F ({ $celsius } °C)
       *[metric] { $celsius } °C ({ $fahrenheit } °F)
    }
span = { $low } to { $high }

time-to = Baking time here
time-change = Change of baking time
time =
    Bake { $now } instead of { $was } at { $place }, in the { $oven ->
        [hotter] hotter
       *[cooler] cooler
    } oven.
time-because =
    With the { $oven ->
        [hotter] hotter
       *[cooler] cooler
    } oven the bake is about { $percent } % { $pace ->
        [shorter] shorter
       *[longer] longer
    }. Test before you take it out.
look-in =
    Look in when four fifths of the baking time is up: it comes out about { $percent } % { $pace ->
        [shorter] shorter
       *[longer] longer
    }.
more-time = Allow about { $percent } % more baking time.
