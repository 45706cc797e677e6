line =
    { $side ->
        [above] Fat is turned down { $at } because the middle of the food cooks at a cooler boil, and at full heat
            the crust would be brown long before it is done.
        [level] Fat keeps its usual temperature { $at }; it is turned down higher up, where the middle cooks more
            slowly.
       *[below] Fat keeps its usual temperature { $at }; it is turned down only above sea level.
    }
paragraph =
    Frying is two jobs at once: the fat browns the outside while the water in the food boils and cooks the middle.
    Fat is as hot as you set it, anywhere. { $boils } { $side ->
        [above] So the middle cooks cooler and more slowly, while the crust browns at the old pace.
        [level] So both jobs finish together, as the recipe expects.
       *[below] So the middle is done a touch sooner, if anything.
    } Published advice takes the fat down about { $fat_step } for every
    { $thousand_feet } and fries a little longer{ $side ->
        [above] { $fat_advice ->
                [beyond] ; it was written for kitchens up to about { $fat_advice_ends }, so higher than that go by a
                    test piece.
               *[within] : { $doughnut_fat_at_sea } doughnuts go to { $doughnut_fat } { $at }.
            }
        [level] { "" } higher up.
       *[below] { "" } above sea level.
    } Check the middle of the first piece, and meat with a thermometer.
equations =
    Fat = { FIXED($doughnut_fat_at_sea, 1) } − { FIXED($fat_step, 2) }·{ FIXED($fat_advised, 0) }/304.8 =
    { FIXED($doughnut_fat, 1) } °C{ $fat_advice ->
        [beyond] , as far as the advice goes, { GROUPED($fat_advice_ends, 0) } m.
       *[within] .
    }
fat-temperature-label = Fat for doughnuts
caution =
    Never fill a fryer past half, never leave it, keep water away, and smother a fire with a lid, never with water.
