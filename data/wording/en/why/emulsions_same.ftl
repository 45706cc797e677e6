line =
    An emulsion is held by yolk or mustard and not by air, so mayonnaise is the same { $at } and hollandaise only sits
    over a cooler bath.
paragraph =
    Mayonnaise and vinaigrette are cold drops of fat in water, and no boil comes into it. Hollandaise thickens as yolk
    sets at about { TEMP(149) } and curdles not much higher. { $boils } What stands over the bath ends at about
    { $double_boiler }, { $side ->
        [above] which is gentler than at sea level, if a little slower.
       *[other] so keep the flame low and whisk.
    } { $side ->
        [above] Dry air takes water from a warm sauce, and too little water is what breaks it: keep it covered and
            loosen it with a spoon of warm water.
       *[other] Too little water is what breaks it, so loosen it with a spoon of warm water.
    }
equations = { $boiling_equation }
double-boiler-label = Over a bath, about
