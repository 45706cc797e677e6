headline =
    Follow the label and your doctor; WHO mixes powder with boiled water no cooler than { $hot }. { $kitchen ->
        [placed] The boil, { $boil } at { $place },
       *[anywhere] The boil
    } is hotter than that wherever people live, so the temperature does not change.
boil-headline =
    Boil the water hard for { $time } at { $place }, cool it no longer than 30 min, and mix the powder while it is still
    { $hot } or hotter.
boil-first = Where the water itself is in doubt, boil it hard for { $time } at { $place } first.
because =
    Agencies differ on how hot the mixing water should be, and on whether to boil it at all where tap water is safe.
measure =
    Water cools slower or faster with the vessel, not with the elevation: measure it, and test a drop on the wrist. For a
    newborn, a premature or an ill baby ask about sterile ready-to-feed formula.
