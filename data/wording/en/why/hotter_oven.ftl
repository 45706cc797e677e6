line =
    { $side ->
        [above] A hotter oven sets the crumb { $at } before the gas has run away with it.
        [level] The recipe's oven is right { $at }; it is turned up only higher up, where gas swells faster.
       *[below] The recipe's oven is right { $at }; it is turned up only above sea level, where gas swells more.
    }
paragraph =
    An oven is as hot as you set it at any height; what changes is the race inside the cake. { $gas_swells }
    { $side ->
        [above] So from about { $cakes_show_it } up bakers add { $oven_raised_least } to { $oven_raised_most } to
            the oven, so that the crumb sets before the bubbles burst.
        [level] Higher up bakers add { $oven_raised_least } to { $oven_raised_most } to set the crumb sooner.
       *[below] So there is nothing to hurry.
    } It is done sooner too, so look at it early. In glass or dark pans add less, and roasts, braises and custards
    get no extra heat at all.
equations = { $gas_equation }
belief-always =
    Cakes and muffins gain by { $oven_raised_least } to { $oven_raised_most } more; bread, cookies, pies and roasts
    mostly stay as written.
belief-lower =
    Nothing is baked cooler for the elevation: roasts, braises, bread and pies keep their oven, and cakes and muffins are given
    { $oven_raised_least } to { $oven_raised_most } more.
