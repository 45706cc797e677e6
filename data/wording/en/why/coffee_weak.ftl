line =
    Coffee wants water at { $coffee }, and { $at } the boil is { $coffee_boil ->
        [under] under all of that, so it draws too little.
        [inside] inside it, with little to lose on the way to the cup.
       *[above] above it, so the heat is not to blame.
    }
paragraph =
    Hot water draws sweetness and body out of coffee; cooler water leaves them and takes mostly the sour. { $boils }
    The brewing standard is { $coffee } where water meets coffee, and the boil is { $coffee_boil ->
        [under] under all of that. Use water off a full boil, a finer grind, more coffee and more time.
        [inside] inside it. Every second from the kettle costs a little, so use it right off the boil, warm the pot,
            and grind a little finer.
       *[above] above it. Let the kettle stand a moment; if the cup is weak, look at grind and dose.
    } A brewer under pressure, such as an espresso machine or a stove-top pot, minds the elevation less.
equations =
    { $boiling_equation } Brewing band 93.0 °C, 3 °C either way; the boil is { $coffee_sign ->
        [minus] -
       *[plus] +
    }{ $coffee_apart } °C from its middle.
brew-temperature-label = Brewing water, middle of the band
belief-brews-better =
    Coffee is brewed at { $coffee }, { $coffee_boil ->
        [above] and a boil { $at } that is still over that gives no advantage.
        [inside] which is just where water boils { $at }, so it needs water straight off the boil.
       *[under] and { $at } water cannot get that hot, so the cup comes out thinner.
    }
