# $figure: a bare figure that nobody asked for
figure = { $figure } of what, for { $dish }: minutes, people or degrees? Say it with its unit.
what-of-it =
    Same { $dish }{ $placed ->
        [yes] { " " }at { $place }
       *[no] { "" }
    } as before, as I heard it: what is to be different?
as-before = That leaves my answer as it was.
