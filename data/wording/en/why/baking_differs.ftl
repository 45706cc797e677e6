line =
    { $side ->
        [above] Baking feels thin air three ways { $at }: the same gas takes { $gas_ratio } times the room, dough
            dries about { $drying_percent } % faster, and the inside stops at a boil of { $boil }.
        [level] Baking goes by the book { $at }; in thin air gas swells more, dough dries sooner and the inside stays
            cooler.
       *[below] Baking goes nearly by the book { $at }: gas swells a little less, and the boil that holds the inside
            is { $boil }.
    }
paragraph =
    A batter has to rise and set at the same moment. { $gas_swells } { $side ->
        [above] So it rises too far before it sets, unless there is less leavening. Moisture leaves sooner and makes
            the rest richer, which weakens the crumb: hence a little more liquid and flour, and less sugar. The inside
            stops at the boil, so cakes are given a hotter oven to set in time.
        [level] That is what recipes are written for, with the inside held at { $boil }.
       *[below] That is close to what recipes are written for.
    } Cakes show it first, cookies and pies least.
equations = { $gas_equation } { $drying_equation }
