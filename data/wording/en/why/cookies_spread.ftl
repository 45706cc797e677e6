line =
    { $side ->
        [above] Cookies spread { $at } because the gas pushes them out before flour and egg have set.
        [level] Cookies that spread { $at } are too warm, too sweet, too fat or short of flour.
       *[below] Cookies that spread { $at } are too warm, too sweet, too fat or short of flour; the elevation is not
            to blame.
    }
paragraph =
    In the oven the fat melts and the sugar turns to syrup, and the cookie flows until flour and egg set.
    { $gas_swells } { $side ->
        [above] So it is lifted and pushed out sooner, then sinks flat. Take away a little sugar, fat and soda, and
            add a spoon or two of flour.
       *[other] So if it runs, chill the dough and measure sugar, fat and flour again.
    } A slightly hotter oven sets the edge sooner. Many cookie recipes need no change at all, so bake a test tray
    first.
equations = { $gas_equation }
