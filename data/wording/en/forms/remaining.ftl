label = Still to go
# $counted: from when the time in all counts
to-go = { $stage ->
        [soon] Any time now, { $most } more at the most:
        [now] About { $left } more, { $most } at the most, and taste from now on:
       *[later] About { $left } more, { $most } at the most, and taste after { $taste }:
    } { $all } in all for { $doing } at { $place }, counted from { $counted ->
        [boil] when it came to the boil
        [steam] when the steam was up
        [pressure] when it was up to pressure
        [oven] when it went into the hot oven
        [crock] when the crock was switched on
       *[heat] when it went on the heat
    }.
past = It should be done: { $all } in all for { $doing } at { $place }, counted from { $counted ->
        [boil] when it came to the boil
        [steam] when the steam was up
        [pressure] when it was up to pressure
        [oven] when it went into the hot oven
        [crock] when the crock was switched on
       *[heat] when it went on the heat
    }, and yours has had { $had }.
reason = { $food ->
        [bean] If it is still hard, the beans are old, the water is hard, or something sour went in early: bring it to a full boil with ¼ tsp of baking soda for each pound (450 g) of beans and taste every 15 min, or go under pressure.
        [meat] If it is still tough, the liquid stood under a simmer, or the pot was open: cover it tight, bring the liquid to a steady simmer and try a fork every 20 min.
        [roast] If it is not there yet, the oven or the meat was colder than it seemed: go by the thermometer in the thickest part and look every 10 min.
        [root] If it is still hard, the pot was not at a full boil or there is acid in it: boil it hard under a lid and try it every 5 min.
        [grain] If it is still hard in the middle, it ran out of water: add a splash of boiling water, cover it, and give it 10 min on low and 10 min off the heat.
       *[other] If it is not done, it was not as hot as it looked: bring it back to full heat, covered, and look every 10 min.
    }
under-pressure = About { $time } at { $gauge }.
by-factor = No tested time is known for { $doing }: take { $factor } times what it takes at { $baseline }, at { $place }, and count off the { $had } it has had.
