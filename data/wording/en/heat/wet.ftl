heat =
    { $of ->
        [water] the water
        [steam] the steam
        [steam_inside] the steam inside
        [crock] the crock
       *[liquid] the liquid
    }
same-heat = { CAPITAL($heat) } stands at { $temp } here as at { $baseline }, so the time stays.
other-heat =
    { CAPITAL($heat) } is { $drop } { $way ->
        [cooler] cooler
       *[hotter] hotter
    } than at { $baseline }, and cooking takes { $pace } at that heat.

# To stand after "takes". $times and $half: how many times as long, and whether half a time more.
pace =
    { $way ->
        [same] as long
        [less] about { $percent } % less time
        [more] about { $percent } % longer
       *[times] about { $half ->
            [yes] { $times }½ times
           *[no] { $times ->
                [2] twice
                [3] three times
                [4] four times
                [5] five times
               *[other] { $times } times
            }
        } as long
    }
maths = Factor = 10^(({ $there } − { $here })/z) with z = { $z } K ({ $z_low }–{ $z_high } K): ×{ $factor }.
# Where a published rule gives the factor and the rate of softening only widens the range.
maths-published = Factor by the published rule: ×{ $factor }. The range takes in 10^(({ $there } − { $here })/z) with z = { $z } K ({ $z_low }–{ $z_high } K).
work-from-yours = Work from the time you know at { $baseline }.

# $varies is what a class of data/lexicon/classes.toml says its times range over.
range =
    It goes by { $varies }{ $way ->
        [cooler] , and how strongly the cooler heat tells on the food
        [hotter] , and how strongly the hotter heat tells on the food
       *[same] { "" }
    }.
range-of-yours =
    The range around the { $base } you gave is how strongly the { $way ->
        [cooler] cooler
       *[hotter] hotter
    } heat tells on the food.

published-label = Published rule adds, for each 1,000 ft
published =
    Extension tests on boiled foods found 4 to 11 % more time for each 1,000 ft, by the food. By its
    softening rate it takes { $pace } here, for each 1,000 ft { $relation ->
        [inside] inside that
        [under] under that
       *[above] above that
    }.

extra-liquid-label = Extra liquid to start with
extra-liquid-step = Start with about { $extra } more liquid than the recipe says.
extra-liquid =
    The longer time boils off about { $extra } more, reckoned for { $lid ->
        [covered] a covered
       *[open] an open
    } pot of { $cm } cm ({ $inches } in).

threshold-headline =
    { CAPITAL($food) } will soften only very slowly in an open pot at { $place }{ $poison ->
        [yes] , and a boil this cool is not sure to destroy their natural poison
       *[no] { "" }
    }: { $oven ->
        [yes] pressure-cook them tender first, then bake.
       *[no] use a pressure cooker.
    }
threshold-caution =
    Where water boils below { $least }, { $food } soften very slowly in an open pot. The time
    given is what the softening rate leads to; old beans may never get there. Use a pressure cooker.
threshold =
    Under { $least } the skins and walls of dried beans hold out, and even a full boil here is cooler than that.

kidney-beans-cool-boil =
    Never serve dry kidney beans or their kin from an open pot here: a boil of { $boil } at { $place } is not sure to destroy
    their natural poison, and beans that are heated short of a real boil can get more poisonous than raw ones. Soak them and
    pressure-cook them until soft, or use canned ones.

rice-step =
    Soak the rice 20 to 30 min first, and let it stand covered 10 min off the heat before you fluff it.
rice =
    A grain needs its middle wet before it can soften. A soak does that without heat, so the pot, or a rice cooker that
    stops as soon as it is dry, comes out less firm. Cooks at elevation often add only a tenth to the time: after a soak
    and a rest that may do, so taste a grain from then on.

boil-beans-first =
    { $soaked ->
        [yes] Pour the soaking water away,
       *[no] Soak them at least { $soak } h, pour the water away,
    } and begin with { $least } min at a full boil in fresh water at the very least, { $full } min by FDA.
boil-beans-apart =
    { $soaked ->
        [yes] Dry beans in it: pour the soaking water away
       *[no] Dry beans in it: soak them at least { $soak } h, pour the water away
    } and boil them hard in fresh water before they go in, { $least } min at the very least, { $full } min by FDA. Canned
    ones go in as they are.
beans-in-it =
    Dry kidney, white, black or pinto beans hold a lectin, a natural poison that only a hard boil destroys: never put them in
    unboiled, nor into a slow cooker.
kidney-beans =
    Beans of this kind, kidney beans above all, carry a natural poison until they have boiled: soak them, pour the water
    away, and boil hard in fresh water, { $full } min by FDA, { $least } min at the very least by extension
    advice{ $boil ->
        [cool] ; where water boils this cool take the longer
       *[usual] { "" }
    }, before any gentler cooking. Never start them in a slow cooker.
