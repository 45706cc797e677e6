# $example: the elevation that is taken where nobody gave one
# $unknown: the name of a place that is not known, or none
note =
    { $unknown ->
        [none] No elevation was given, so { $example } serves as an example.
       *[other] I do not know how high { $unknown } is, so { $example } serves as an example; say its elevation.
    }
label = Example elevation
caution = The figures are for the example; say your elevation and they will be for your kitchen.
