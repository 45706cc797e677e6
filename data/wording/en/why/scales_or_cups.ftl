line =
    Weigh: the changes are a twentieth or an eighth of an amount, and a cup of flour can be off by a fifth.
paragraph =
    A scale shows the same in thin air. Weigh flour, sugar and liquid; measure soda, powder and salt by level spoons unless your
    scale shows tenths of a gram. { $side ->
        [above] { CAPITAL($at) } a surface dries about { $drying_percent } % faster than at sea level.
       *[other] Higher up a surface dries faster.
    } Flour stored in dry air is itself drier, another reason to add the last of the
    water by feel.
equations = { $drying_equation }
