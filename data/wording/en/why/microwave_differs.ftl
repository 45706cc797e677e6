line =
    A microwave oven heats the water in the food, and { $at } that stops at { $boil }{ $side ->
        [above] , so food steams sooner and dries sooner.
        [level] , as the package expects.
       *[below] .
    }
paragraph =
    The oven gives the same power at any height. It warms the water in the food, and wet food cannot pass the boil.
    { $boils } { $side ->
        [above] So cups and soups boil over sooner and food dries sooner: start just under the shortest time on the
            package. Meat, poultry, pasta and rice are the other way about: they have to cook at that cooler boil,
            so take the longest time given.
        [level] So the times on the package hold. Higher up, quick things dry sooner and pasta, rice and meat take
            longer.
       *[below] So the times on the package hold.
    } Cover the food, stir it, let it stand two minutes, and check meat in several places.
equations = { $boiling_equation }
belief-weaker =
    The oven gives the same power everywhere; what changes is that the water in the food boils off at { $boil }
    { $at } and dries it sooner.
belief-unaffected =
    The oven itself gives the same power everywhere, but the water in the food boils off at { $boil } { $at }, so quick things
    dry sooner and meat, rice and pasta take longer.
