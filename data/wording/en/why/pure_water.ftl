line =
    Distilled or from the tap, water boils at { $boil } { $at }: what tap water holds raises it by less than a hundredth of a
    degree.
paragraph =
    Anything dissolved raises the boil, but it takes a great deal: the 0.3 g of minerals in a litre of hard tap water raise it
    by 0.003 °C (0.006 °F). { $boils } Very clean water in a smooth cup may overheat in a microwave and boil up at a touch; that
    is a scald and no hotter boil: put a spoon in first.
equations = { $boiling_equation } ΔT = 0.512·2·0.3/100 = 0.003 °C for hard tap water.
belief-boils-elsewhere =
    The minerals of tap water raise its boil by less than a hundredth of a degree, so it boils at { $boil } { $at } like distilled
    water.
