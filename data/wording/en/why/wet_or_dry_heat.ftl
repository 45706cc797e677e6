line =
    { $side ->
        [above] What cooks in water or steam suffers, because the boil stops at { $boil } { $at }; roasts, grills and what is
            fried hardly do, because dry heat is as hot as it is set.
       *[other] What cooks in water or steam goes by the boil, { $boil } { $at }; a roast, a grilled steak and what is fried go by
            dry heat, which is as hot as it is set.
    }
paragraph =
    Air pressure decides one thing of a pot: where its water boils. { $boils } An egg, pasta, beans, a braise and anything steamed
    get no hotter than that, so they take longer. An oven, a pan, a grill and frying oil hold no boiling water, so they are as hot
    as anywhere, and meat is done far below the boil. All that dry heat does up high is to dry the outside a little sooner, and
    a batter or a dough rises faster in it.
equations = { $boiling_equation }
