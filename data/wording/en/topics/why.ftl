# $example: the elevation that is taken where nobody gave one
# $unknown: the name of a place that is not known, or none
example =
    { $unknown ->
        [none] No elevation was given, so { $example } serves as an example.
       *[other] I do not know how high { $unknown } is, so { $example } serves as an example; say its elevation.
    }
not-broken = Nothing is broken, and it is not you.
example-label = Example elevation
example-caution = The figures are for the example; say your elevation and they will be for your kitchen.
nothing-fits = That is not among the things explained here yet.
nearest = The nearest that can be explained: { $titles }.
