line =
    Gelatine does not notice elevation, agar has to be boiled a little longer, and pectin sets { $gel_apart } above a
    boil that is { $boil } { $at }.
paragraph =
    Gelatine melts at body warmth and sets in the cold, far from any boil, so it stays as it is. Agar dissolves only
    close to the boil. { $boils } { $side ->
        [above] So boil agar two or three minutes longer than the packet says, stirring, until no grain is left.
       *[other] So boil agar as the packet says.
    } Pectin sets by how much sugar is in the jam, and that is told by how far it boils above water: { $gel_point }
    { $at }. Starch wants the full boil as well.
equations = { $boiling_equation } Gel point = { FIXED($boil, 2) } + 4.44 = { FIXED($gel_point, 2) } °C.
gel-point-label = Jam with pectin sets at
