line =
    { $side ->
        [level] A moka pot runs as it should { $at }: its water boils at { $boil }.
       *[other] A moka pot is pushed by its steam, and { $at } its water boils at only { $boil }: it rises sooner, cooler
            and with more steam behind it, so it sputters early.
    } Use a low flame, fill it with hot water, and take it off at the first gurgle.
paragraph =
    The steam in the bottom pushes the water through the coffee as soon as it is a little stronger than the air outside.
    { CAPITAL($at) } the air pushes back less, so that happens early; the last of the water boils off as steam and sputters.
    Grind a little finer and fill the basket to the brim for the cooler water. If it leaks at the waist or nothing comes
    at all, look at the gasket and the valve: that would be a fault.
equations = { $boiling_equation }
belief-broken = A moka pot that sputters sooner the higher you go is doing what thin air makes it do; a low flame, hot water, and off at the first gurgle.
