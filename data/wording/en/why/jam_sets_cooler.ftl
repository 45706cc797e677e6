line = Jam sets when it boils { $gel_apart } above plain water, which is { $gel_point } { $at }.
paragraph =
    Jam gels when enough water has gone for sugar, acid and pectin to hold together. The thermometer shows that as a
    distance above the boil, about { $gel_apart }, and the distance is the same everywhere. { $boils } So the gel
    point is { $gel_point }. { $side ->
        [above] Cook it to the { $gel_point_at_sea } of sea level and it turns stiff, dark and short of fruit.
        [level] Higher up it is lower, degree for degree with the boil.
       *[below] Stop at the { $gel_point_at_sea } of sea level and it stays loose.
    } Check with a cold plate or a spoon as well, since fruit differs.
equations =
    { $boiling_equation } Gel point = { FIXED($boil, 2) } + { FIXED($gel_apart, 2) } = { FIXED($gel_point, 2) } °C.
gel-point-label = Jam sets at
caution = For jars that are to keep, use a tested recipe and the processing time printed for your elevation.
belief-same-everywhere = Jam sets { $gel_apart } over the boil, which is { $gel_point } { $at }.
