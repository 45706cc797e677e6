line =
    Syrup boils hotter than water because sugar holds the water back: at 80 % sugar it boils at
    { $syrup_of_80_boils } { $at }.
paragraph =
    Sugar takes the place of water at the surface, so the syrup must get hotter before it boils. { $boils } A light
    syrup, 20 % sugar, adds only { $syrup_of_20_apart }; at 80 % it is { $syrup_of_80_apart }. That distance above
    water is the same at every elevation, which is why a candy thermometer can tell how much water is left.
    { $side ->
        [above] High up you count it from the cooler boil.
        [level] Higher up you count it from the cooler boil.
       *[below] Below sea level you count it from the hotter boil.
    } A spoon of sugar in the pasta water does nothing you could measure.
equations =
    { $boiling_equation } Syrup of 80 %: { FIXED($boil, 2) } + { FIXED($syrup_of_80_apart, 1) } =
    { FIXED($syrup_of_80_boils, 1) } °C.
syrup-boils-label = Syrup of 80 % sugar boils at
belief-raises-boil =
    It does in a heavy syrup, { $syrup_of_80_apart } at 80 % sugar, but a spoonful in a pot raises it by nothing you
    could measure.
belief-lowers =
    Sugar raises the boil and never lowers it: a light syrup, 20 % sugar, by { $syrup_of_20_apart }, one of 80 % by {
    $syrup_of_80_apart }, at every elevation.
