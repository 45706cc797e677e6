line =
    There is no hard line: most cookbooks say high altitude begins at { $cakes_show_it }, and canning steps begin at {
    $canning_starts }, or { $beans_show_it } on some tables. { $books ->
        [adjust] { CAPITAL($place) } is above them all, so adjust.
        [watch] { CAPITAL($place) } is in between: water boils at { $boil }, beans take { $pace_of_beans } and pasta {
            $pace_of_pasta }; bake as written and watch the slow things.
       *[keep] { CAPITAL($place) } is below most: water boils at { $boil } and only slow boiled things show it, beans { $side ->
            [above] by { $pace_of_beans }
           *[other] hardly at all
        }. Bake as written, but can by the map from { $canning_starts } up.
    }
paragraph =
    The air thins with every step, by { $thousand_feet_take_off } of boiling point for { $thousand_feet }, and nothing
    special happens at { $cakes_show_it }. It is where most cakes begin to show it, so the books begin there. Beans and candy
    show it from about { $beans_show_it }. { $boils } Whatever the line says, some things tell sooner than others: rich cakes
    before bread, beans before potatoes.
equations = { $boiling_equation }
belief-fine-below =
    Most dishes do not show it there, but beans, slow braises and candy do from about { $beans_show_it }, and canning
    has its own bands from { $canning_starts }.
