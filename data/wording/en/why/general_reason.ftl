line =
    { $side ->
        [above] The general reason: less air presses on everything { $at }, so water boils at only { $boil }, and what
            cooks in it cooks more slowly.
        [level] The general reason is air pressure, which is that of the cookbooks { $at }: water boils at { $boil }.
       *[below] The general reason: more air presses on everything { $at }, so water boils at { $boil }, and what
            cooks in it cooks a little faster.
    }
paragraph =
    Three things come of thinner air. Water boils cooler, so what is boiled, simmered, braised or steamed takes
    longer; ovens, pans and oil are as hot as ever. Moisture leaves sooner, so dough, cakes and roasts dry out. Gas
    swells more, so batters and foams rise too far and fall. { CAPITAL($at) } the air presses with { $pressure } and
    water boils at { $boil }. Tell me the dish and what you saw, and I can be more exact.
equations = { $boiling_equation }
