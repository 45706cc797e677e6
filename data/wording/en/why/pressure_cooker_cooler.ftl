line =
    { $side ->
        [above] A gauge counts from the air outside, so at { $cooker_gauge } the steam is { $inside_cooker } { $at },
            not the { $inside_cooker_at_sea } of sea level.
        [level] A gauge counts from the air outside, so at { $cooker_gauge } the steam is { $inside_cooker } { $at }
            and less the higher you climb.
       *[below] A gauge counts from the air outside, so at { $cooker_gauge } the steam is { $inside_cooker } { $at },
            a little over the { $inside_cooker_at_sea } of sea level.
    }
paragraph =
    The gauge shows what the cooker adds, not what the steam feels. The steam feels the gauge and the air outside
    together. { CAPITAL($at) } the air gives { $pressure }, so at { $cooker_gauge } the inside is
    { $inside_cooker }{ $side ->
        [level] .
       *[other] , against { $inside_cooker_at_sea } at sea level.
    } To cook as hot as at sea level a cooker needs about { $cooker_step } more for every { $two_thousand_feet }.
    One with a fixed weight cannot do that, so it gets more time: by the published rule, 5 % for each
    { $thousand_feet } above { $two_thousand_feet }.
equations =
    T_sat({ GROUPED($pressure, 0) } + { GROUPED($cooker_gauge, 0) } Pa) = { FIXED($inside_cooker, 1) } °C;
    T_sat({ GROUPED($pressure_at_sea, 0) } + { GROUPED($cooker_gauge, 0) } Pa) = { FIXED($inside_cooker_at_sea, 1) } °C at
    sea level.
caution = { $cooker_caution }
belief-whistles-sooner =
    The weight lifts at the same push over the air outside, { $side ->
        [above] which takes a few degrees less heat { $at }, { $inside_cooker } and not { $inside_cooker_at_sea }; so the first
            whistle can come a little sooner, and each one cooks a little less.
       *[other] { $inside_cooker } { $at }, and a few degrees less the higher one climbs, where each whistle cooks a little less.
    }
