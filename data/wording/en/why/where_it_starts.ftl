line =
    There is no hard line: most cookbooks begin at { $cakes_show_it }, canning at { $canning_starts }; at { $place } water
    boils at { $boil } and { $books ->
        [adjust] most things show it
        [watch] beans and candy show it
       *[keep] hardly anything shows it
    }.
paragraph =
    The air thins with every step, by { $thousand_feet_take_off } of boiling point for { $thousand_feet }, and nothing
    special happens at { $cakes_show_it }. It is where most cakes begin to show it, so the books begin there. Beans and candy
    show it from about { $beans_show_it }. { $boils } Whatever the line says, some things tell sooner than others: rich cakes
    before bread, beans before potatoes.
equations = { $boiling_equation }
belief-fine-below =
    Most dishes do not show it there, but beans, slow braises and candy do from about { $beans_show_it }, and canning
    has its own bands from { $canning_starts }.
belief-matters =
    { $books ->
        [adjust] It counts: at { $place } water boils at { $boil }, beans take { $pace_of_beans } and pasta { $pace_of_pasta },
            and cakes want less leavening and more liquid.
        [watch] A little: at { $place } water boils at { $boil }, beans take { $pace_of_beans } and pasta { $pace_of_pasta },
            so watch braises and candy, can by the map, and bake as written.
       *[keep] Hardly: at { $place } water boils at { $boil }{ $side ->
            [above] , beans take { $pace_of_beans } and pasta { $pace_of_pasta }
           *[other] { "" }
        }, and baking goes as written; only canning has to change, from { $canning_starts } up.
    }
