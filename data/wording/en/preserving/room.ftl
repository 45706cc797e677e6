tested-recipe =
    Follow a current tested recipe to the letter, from the USDA guide, the National Center for Home Food Preservation or
    your extension office. This gives only what elevation changes.
under-band = You are just under the band above { $high_ft } ft.
from-a-map =
    Take the elevation of the kitchen itself from a map or survey; where in doubt use the next higher band.
unnamed-food =
    Boiling water is for acid food only: most fruit, jam, pickles, tomatoes with acid. Vegetables, meat, fish, beans,
    soup and stock go in a pressure canner, at every elevation.
tested-food =
    A tested process for { $food } is printed for { $vessel ->
        [pressure] a pressure canner
       *[boiling_water] boiling water
    }.

jars-headline =
    Boil empty jars for { $time } at { $place }, if their process is under 10 min; otherwise clean hot jars will do.
jars-label = Boil empty jars for
jars-upright = Stand them upright on the rack, hot water an inch (2.5 cm) over the rims, and count from the boil.
jars-lids = Lids are only washed and warmed: boiling spoils their seal.
jars-because =
    The guide prints 10 min below 1,000 ft and one minute more for each additional 1,000 ft. A process of 10 min or more,
    and any pressure canning, sterilises the jar itself.
