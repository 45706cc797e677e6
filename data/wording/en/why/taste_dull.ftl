line =
    { $side ->
        [above] Thin, dry air dries the nose and carries less aroma, so food tastes a little flatter { $at }, where
            the air presses with { $pressure }.
       *[other] Food tastes { $at } as it was meant to, at an air pressure of { $pressure }; in thin, dry air noses
            dry out and it seems flatter.
    }
paragraph =
    Most of what we call taste is smell, and smell needs moist noses and aromas that stay over the plate. { $side ->
        [above] Dry air dulls the nose, and hot food gives off its aroma sooner, so salt and sweetness seem weaker
            while sour and savoury hold up.
       *[other] Both are at home at this elevation.
    } The water is cooler as well, so coffee, tea and stocks give less. Season at the end and taste on the plate, lift
    with acid, herbs, toasted spice and umami before more salt. Newcomers need a few days and plenty to drink before
    they can judge.
equations = Air pressure: { GROUPED($pressure, 0) } Pa.
belief-blander = Dry noses and cooler water both take a little off, so season at the end and on the plate.
