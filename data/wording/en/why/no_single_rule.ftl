line =
    { $side ->
        [above] Each food minds the cooler boil in its own measure: { $at } pasta takes { $pace_of_pasta }, potatoes
            { $pace_of_potatoes }, beans { $pace_of_beans }.
        [level] Each food minds a cooler boil in its own measure; at sea level all keep their usual times.
       *[below] Each food minds the hotter boil in its own measure: pasta takes { $pace_of_pasta }, potatoes
            { $pace_of_potatoes }, beans { $pace_of_beans }.
    }
paragraph =
    What has to happen differs: starch swells, pectin lets go, collagen melts, protein sets, and each depends on heat
    in its own way. { $boils } { $side ->
        [level] Higher up they drift apart.
       *[other] Pasta takes { $pace_of_pasta }, potatoes { $pace_of_potatoes }, beans { $pace_of_beans }.
    } Roasts, grills and fried food hardly mind at all, since no boil holds them. A single percentage is right for one
    food and wrong for the next, and it grows with the elevation besides.
equations = { $boiling_equation } Pasta: { $rate_of_pasta } Potatoes: { $rate_of_potatoes } Beans: { $rate_of_beans }
pasta-beside-others-label = Time against sea level, pasta
potatoes-beside-others-label = Time against sea level, potatoes
beans-beside-others-label = Time against sea level, dried beans
belief-flat =
    { $side ->
        [level] At sea level nothing is to be added, and higher up each food takes its own share.
       *[other] It depends on the food and grows with the elevation: { $at } pasta takes { $pace_of_pasta }, potatoes {
            $pace_of_potatoes }, and tough cuts in a covered braise { $pace_of_tough_cuts }, whatever the oven says.
    }
belief-share-per-step =
    { $side ->
        [above] Such a share is right for one food at a time: 5 % for each 1,000 ft is the printed rule of pressure cookers; in an open
            pot { $at } pasta takes { $pace_of_pasta }, potatoes { $pace_of_potatoes }, beans { $pace_of_beans }.
       *[other] Such a share is right for one food at a time: 5 % for each 1,000 ft above 2,000 ft is the printed rule of pressure
            cookers, and in an open pot beans need more than pasta.
    }
