line =
    The crumb is wet, so its middle stops at the boil, { $boil } { $at }, and a reading of the book above that can
    never come.
paragraph =
    A loaf bakes from outside in, and where there is water it gets no hotter than water can. { $boils } { $side ->
        [above] So take { $drop } off the inside reading of the recipe: a lean loaf is done a few degrees under the
            boil, an enriched one about 15 °F (8 °C) under it.
       *[other] So the inside readings of the recipe hold.
    } Waiting for a number that cannot come dries the loaf to a rusk. The crust is dry and goes by the oven, so its
    colour and the hollow sound count as ever. Cakes are the same: done when a skewer comes out clean, a few degrees
    under the boil.
equations = { $boiling_equation }
