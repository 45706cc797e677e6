line =
    A gauge counts from the air outside and absolute pressure from nothing at all, and food and steam go by the
    absolute one.
paragraph =
    A gauge on an open pot reads zero, though the air { $at } presses with { $pressure }. Absolute pressure is gauge
    and air together, and only that decides how hot the steam is. { $side ->
        [level] { CAPITAL($at) } { $cooker_gauge } on the gauge is { $cooker_in_all } in all, and the steam is
            { $inside_cooker }.
       *[other] { CAPITAL($at) } { $cooker_gauge } on the gauge is { $cooker_in_all } in all and the steam
            { $inside_cooker }; at sea level the same mark is { $cooker_in_all_at_sea } and { $inside_cooker_at_sea }.
    } Recipes and weights speak of gauge pressure; a barometer and a steam table speak of absolute.
equations =
    p = { GROUPED($pressure, 0) } Pa of air + { $cooker_gauge } = { GROUPED($cooker_in_all, 0) } Pa; T_sat(p) =
    { FIXED($inside_cooker, 1) } °C.
cooker-in-all-label = In all at { $cooker_gauge }, gauge and air together
