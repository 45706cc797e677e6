between = Between { $low } and { $high }.
is-not = It is not { $letter }.
begins-with = It begins with { $letter }.
think =
    { $theme ->
        [boiling] Ask what the air presses on: less of it, and whatever boils does so cooler.
        [timing] Ask whether the heat is that of boiling water, or of an oven or oil, which are no cooler up here.
        [baking] Ask what thinner, drier air does to a bubble, to water and to a soft crumb.
       *[safety] Ask whether it is the food that has to reach something, or the water around it that can.
    }
