line =
    A pressure cooker holds the steam in: at { $cooker_gauge } it cooks at { $inside_cooker } { $at }, where an open
    pot stops at { $boil }.
paragraph =
    Water boils hotter under more pressure. A pressure cooker makes its own: it keeps the steam until the gauge
    shows { $cooker_gauge } over the air outside. { CAPITAL($at) } that is { $inside_cooker } inside, against
    { $boil } in an open pot. { $side ->
        [above] So it gives back everything the elevation took, and far more.
        [level] So it cooks in a fraction of the time, at sea level too.
       *[below] So it cooks in a fraction of the time there too.
    } It does most for what softens slowly: beans, tough cuts, whole grains. It does nothing for food that only has
    to be warmed through gently, such as fish.
equations =
    T_sat({ GROUPED($pressure, 0) } + { GROUPED($cooker_gauge, 0) } Pa) = { FIXED($inside_cooker, 1) } °C;
    T_sat({ GROUPED($pressure, 0) } Pa) = { FIXED($boil, 1) } °C.
caution = { $cooker_caution }
belief-elevation-gone =
    It takes most of the elevation out of the pot, but its gauge counts from the air outside, so at { $cooker_gauge }
    it runs at { $inside_cooker } { $at } and wants a little more time, 5 % for each { $thousand_feet } above
    { $two_thousand_feet }.
belief-always-needed =
    Everything but the slowest beans and tough cuts comes done in an open pot { $at }, only later; the cooker saves
    time and fuel.
belief-cheating =
    It only gives back the heat that thin air takes: at { $cooker_gauge } it cooks at { $inside_cooker }, where an open pot {
    $at } stops at { $boil }.
