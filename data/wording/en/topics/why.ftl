# $example: the elevation that is taken where nobody gave one
example = No elevation was given, so { $example } serves as an example.
example-label = Example elevation
example-caution = The figures are for the example; say your elevation and they will be for your kitchen.
nothing-fits = I have no reason ready for that. Which dish is it, how do you cook it, and what did you see?
nearest = The nearest that can be explained: { $titles }.
