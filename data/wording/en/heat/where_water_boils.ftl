label = Water boils at
because =
    Water boils at { $boil } at { $place }{ $way ->
        [under] , { $drop } under sea level
        [over] , { $drop } over sea level
       *[same] { "" }
    }, because the air presses on it with { $pressure }. No open pot gets hotter than that, however hard it boils.
maths = p = 101,325·(1 − { $elevation }/44,331)^5.2559 = { $pressure } Pa; T_sat(p) = { $boil } °C.
boils-alike = Water boils here as at { $baseline }, so the time stays.
