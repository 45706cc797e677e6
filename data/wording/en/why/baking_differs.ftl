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
        [above] So it rises too far before it sets, unless there is less leavening. Moisture leaves sooner, so there
            is less water and more sugar and fat in what remains, which weakens the crumb: hence a little more liquid
            and flour, and less sugar. The wet inside gets no hotter than the boil, so cakes are given a hotter oven
            to set in time.
        [level] That is what recipes are written for.
       *[below] That is close to what recipes are written for.
    } Cakes show it first, then quick breads and yeast dough, cookies and pies least. Change one thing at a time, and
    write down what came of it.
equations = { $gas_equation } { $drying_equation }
