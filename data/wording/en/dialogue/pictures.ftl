# Pictures of what is talked of. $kind: plan, recipe, range, or a plot of the place

nothing-yet =
    { $kind ->
        [plan] There is no plan yet to draw: tell me the dishes, and when they are served.
        [recipe] There is no recipe yet to draw: paste one, and I show it before and after.
       *[other] Of which dish? Ask me how long it takes, then say "show me".
    }
where = Where is the kitchen? Tell me the elevation or a town, then say "show me".
only-in-chat =
    I draw only in the chat on your own machine, simmerline chat{ $kind ->
        [plan] ; or: simmerline schedule MENU --out plan.svg.
        [recipe] ; or: simmerline plot recipe FILE.
        [range] ; or: simmerline plot range { $dish }.
       *[other] ; or: simmerline plot { $kind }.
    }
