line =
    Dark chocolate is worked at about { $tempered } at every elevation, because its fat crystals go by their own
    temperature and hold no water.
paragraph =
    Tempering is melting cocoa butter and letting the right crystals form, and air pressure has no part in it. Melt,
    cool and rewarm to the figures of your chocolate, by a thermometer. { $boils } { $side ->
        [above] The bain-marie under it is cooler, which only makes scorching less likely.
       *[other] The bain-marie under it is as hot as ever.
    } Dry mountain kitchens are kind to chocolate, since damp is what makes it seize and bloom. Ganache is as it was
    too, as long as the cream is brought to the boil.
equations = { $boiling_equation }
tempered-label = Dark chocolate is worked at about
belief-melts-lower =
    Cocoa butter goes by its own temperature, so dark chocolate is worked at about { $tempered } anywhere.
