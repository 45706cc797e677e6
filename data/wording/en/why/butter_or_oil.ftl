line =
    Oil for a cake that is to stay moist in dry air; butter where its flavour or a creamed crumb counts.
paragraph =
    { $side ->
        [above] { CAPITAL($at) } a surface dries about { $drying_percent } % faster than at sea level.
       *[other] Higher up a surface dries faster.
    } Oil stays liquid in the crumb, so it eats softer on the second day. It carries no air, though, so such a cake
    lives by its powder and eggs. To swap, take four fifths of the weight of the butter in oil, and add 1–2 tbsp of milk a cup
    of butter for the water that butter brings.
equations = { $drying_equation }
