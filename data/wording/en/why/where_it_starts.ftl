line =
    Cookbooks start to adjust at { $cakes_show_it } because that is about where most cooks notice; { $place }
    { $books ->
        [adjust] is above the line, so adjust.
        [watch] is in between, so watch the slow things: beans, braises, candy.
       *[keep] is below the line, so cook as the book says.
    }
paragraph =
    The air thins with every step, and nothing special happens at { $cakes_show_it }. It is where most cakes begin
    to show it, so the books begin there. Beans and candy show it from about { $beans_show_it }. { $boils } Whatever
    the line says, some things tell sooner than others: rich cakes before bread, beans before potatoes.
equations = { $boiling_equation }
belief-fine-below =
    Most dishes do not show it there, but beans, slow braises and candy do from about { $beans_show_it }, and canning
    has its own bands from 1,000 ft (305 m).
