label = Boil before tasting
headline = Boil home-canned vegetables, meat and fish for { $time } at { $place } before anyone tastes them.
boil = Tip it into a saucepan, stir, bring it to a full boil and count { $time }, lid on.
smell = Then look and smell. Any doubt, and it goes out, unopened jars of the same batch too.
because =
    Botulism toxin, unlike its spores, is destroyed by boiling: 10 min below 1,000 ft and one minute more for each further
    1,000 ft, since water boils at { $boil } here.
spoiled =
    A jar with a bulging lid, a leak, a spurt or an off smell is not boiled and not tasted: throw it out, bagged, out of
    reach of people and animals.
second-guard =
    Boiling is a second guard, for jars that may have been processed wrongly. It does not make up for wrong canning.
