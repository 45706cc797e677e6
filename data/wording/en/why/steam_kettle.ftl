line =
    The jacket's gauge counts from the outside air, so at { $cooker_gauge } its steam is { $inside_cooker } { $at },
    while the open soup inside still boils at { $boil }.
paragraph =
    A jacket is a closed vessel and the kettle an open pot. { $side ->
        [above] The same mark on the gauge gives steam of { $inside_cooker } instead of { $inside_cooker_at_sea }, a
            little cooler than at sea level.
        [level] At { $cooker_gauge } the steam is { $inside_cooker }.
       *[below] The same mark gives steam of { $inside_cooker }, a little hotter than at sea level.
    } { $boils } { $side ->
        [above] So the liquid comes to the boil a bit sooner, having less far to go, and then cooks more slowly,
            because the boil is cooler.
       *[other] So it heats and cooks as the book says.
    } More jacket pressure only makes it boil harder and stick at the wall. Lengthen the time as for any pot, and keep
    the lid down.
equations =
    T_sat({ GROUPED($pressure, 0) } Pa + { $cooker_gauge }) = { FIXED($inside_cooker, 1) } °C; { $boiling_equation }
inside-cooker-label = Jacket steam at { $cooker_gauge }
