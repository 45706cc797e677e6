line =
    Ice melts at { $ice } at every elevation, so food thaws in the refrigerator or in cold water as long as it does
    anywhere.
paragraph =
    Thawing goes by how fast heat gets in, and the cold air of a refrigerator or cold water bring it as they do below.
    { $side ->
        [above] Thin air carries a little less heat, which adds next to nothing, and it dries the surface about
            { $drying_percent } % faster, so keep the food wrapped.
       *[other] Keep the food wrapped, so that it does not dry.
    } The rules stay as they are: in the refrigerator, in cold water that is changed every half hour, or in the
    microwave and cooked at once. Never on the counter, cool as the kitchen may feel.
equations = { $drying_equation }
freezing-point-label = Ice melts at
caution = Do not thaw on the counter: the outside grows germs while the middle is still ice.
