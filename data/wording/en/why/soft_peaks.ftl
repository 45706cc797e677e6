line =
    { $side ->
        [above] Whites are whipped only to soft peaks { $at } because their bubbles swell more in the oven and need
            walls that can still stretch.
        [level] Whites may go to the peak the recipe says { $at }; higher up they stop at soft, to leave room to
            swell.
       *[below] Whites may go to the peak the recipe says { $at }; they swell a little less in the oven than at sea
            level.
    }
paragraph =
    In the oven a foam swells twice over: its air warms, and steam from the whites joins it. Steam needs the same
    heat anywhere, but thinner air holds it back less. { CAPITAL($at) } the bubbles grow to about { $foam_swells }
    times their size by { $foam_warm }{ $side ->
        [level] .
       *[other] , against { $foam_swells_at_sea } at sea level.
    } Whites beaten stiff are stretched already, so they burst and the cake falls. { $side ->
        [above] Stop at soft, glossy peaks that bend over. Fold gently, bake at once, and fill the pan only halfway.
       *[other] Stop at the peak the recipe asks for, fold gently and bake at once.
    }
equations =
    V/V0 = (p − p_s(20 °C))/(p − p_s(70 °C))·343/293 with p = { GROUPED($pressure, 0) } Pa, p_s = { $steam_at_20 }
    and { $steam_at_70 } Pa: { $foam_ratio }, at sea level { $foam_ratio_at_sea }.
foam-swelling-label = A foam swells, by { $foam_warm }
