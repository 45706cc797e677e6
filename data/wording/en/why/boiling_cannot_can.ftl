line =
    The spores of botulism live through boiling water, and { $at } that is { $boil }, so only the { $canner_needs } of
    a pressure canner kills them in a low-acid jar.
paragraph =
    A spore is a seed that stands heat which kills every living germ. At the boil it would take many hours to be sure
    of it, and no home test has shown how many. { $boils } { $side ->
        [above] The cooler boil makes it worse, not better.
       *[other] Even a sea-level boil is far too cool.
    } A pressure canner brings the jar to { $canner_needs }, where they die in minutes. Acid food is different: in
    fruit, pickles and acidified tomatoes the spores cannot grow, so a boiling-water bath is enough.
equations =
    { $boiling_equation } Needed: { FIXED($canner_needs, 1) } °C, { GROUPED($canner_needs_pressure, 0) } Pa in all.
needed-temperature-label = Needed for low-acid food
caution = { tested-recipes }
belief-boiling-longer =
    No boil kills the spores of botulism for certain, however long it lasts; low-acid jars need { $canner_needs }
    under pressure.
