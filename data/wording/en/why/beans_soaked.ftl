line =
    { $side ->
        [above] Soaked beans start half done: they need no time to take up water, which counts { $at }, where they
            take { $pace_of_beans } as it is.
       *[other] Soaked beans start half done: they need no time to take up water, and they cook evenly from skin to
            middle.
    }
paragraph =
    A dry bean has to drink before it can soften, and hot water gets through its skin no faster than cold water
    overnight. Soaked, it cooks in about two thirds of the time, and skin and middle are done together. { $boils } {
    $side ->
        [above] { $beans_soften ->
            [no] In an open pot there beans soften only very slowly, soaked or not, so soak them and use a pressure
                cooker.
           *[yes] The time saved grows with the time it takes, so the higher the kitchen, the more a soak is worth.
        }
       *[other] A soak saves the better part of an hour.
    } Salt in the soak, about a tablespoon to a quart (15 g a litre), softens the skins. Lentils and split peas are
    thin enough to do without.
equations = { $boiling_equation } { $rate_of_beans }
belief-useless = A soak takes about a third off the time, and { $at } that is more minutes than anywhere lower.
