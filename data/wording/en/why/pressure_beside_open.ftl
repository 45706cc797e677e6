line =
    At { $cooker_gauge } it is { $inside_cooker } inside { $at }, { $cooker_gains } hotter than the { $boil } of an open pot; at sea
    level the gain is { $cooker_gains_at_sea }.
paragraph =
    The gauge counts from the air outside, so a cooker adds its pressure to whatever air there is. In thin air the same pounds are
    worth a few degrees more, because each one counts for more where there is little. It is never as hot as the same cooker at sea
    level, but far hotter than any open pot.
equations = { $boiling_equation }
