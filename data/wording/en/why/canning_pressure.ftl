line =
    Low-acid jars need the same { $canner_needs } everywhere, and { $canner_gauge } on the gauge gives
    { $inside_canner } { $at }.
paragraph =
    The spores that cause botulism stand boiling water, so low-acid food is canned at about { $canner_needs }. The
    gauge shows only what the canner adds to the air outside. { CAPITAL($at) } { $canner_gauge } makes
    { $inside_canner } inside. { $side ->
        [above] Thinner air outside leaves it short, so the tables ask for more pressure.
        [level] Higher up the thinner air leaves it short, so the tables ask for more pressure.
       *[below] The tables ask for no less, since a dial gauge can read wrong.
    } The time stays as printed: with the right pressure the jars feel the same heat as at sea level. A dial gauge
    is set by the pound, and a weight goes to the next one up.
equations =
    T_sat({ GROUPED($pressure, 0) } + { GROUPED($canner_gauge, 0) } Pa) = { FIXED($inside_canner, 1) } °C;
    { FIXED($canner_needs, 1) } °C needs { GROUPED($canner_needs_pressure, 0) } Pa in all, air and gauge together.
inside-canner-label = Inside at { $canner_gauge }
needed-temperature-label = Needed for low-acid food
caution = { tested-recipes }
