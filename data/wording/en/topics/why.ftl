# $example: the elevation that is taken where nobody gave one
example = No elevation was given, so { $example } serves as an example.
example-label = Example elevation
example-caution = The figures are for the example; say your elevation and they will be for your kitchen.
nothing-fits = That is not among the things explained here yet.
nearest = The nearest that can be explained: { $titles }.
