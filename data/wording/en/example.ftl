# $example: the elevation that is taken where nobody gave one
note = No elevation was given, so { $example } serves as an example.
label = Example elevation
caution = The figures are for the example; say your elevation and they will be for your kitchen.
