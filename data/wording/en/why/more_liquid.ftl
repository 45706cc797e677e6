line =
    { $side ->
        [above] Batter wants more liquid { $at } because the flour starts drier and water leaves about
            { $drying_percent } % faster.
        [level] The recipe's liquid is right { $at }; higher up flour is drier and water leaves faster.
       *[below] The recipe's liquid is right { $at }; water leaves a little more slowly than at sea level.
    }
paragraph =
    Water goes two ways: into the flour before baking and into the air during it. { $side ->
        [above] In dry mountain air the flour has given up some of its own water and takes that back from the dough.
            In the oven, vapour gets away about { $drying_percent } % faster { $at }. The tested tables add one to
            four tablespoons of liquid to each cup, more the higher you are.
        [level] { CAPITAL($at) } flour and oven behave as the recipe expects, unless the weather is very dry. Higher
            up the tested tables add one to four tablespoons of liquid to each cup.
       *[below] { CAPITAL($at) } the air is no thinner than the recipe expects, but in a dry desert flour still
            takes more water.
    } An extra egg or a larger one is liquid too, and strengthens the crumb. Add by feel: hold some back, and stop
    when the batter looks as it should.
equations = { $drying_equation }
