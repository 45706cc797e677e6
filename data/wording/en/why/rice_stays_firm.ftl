line =
    { $side ->
        [above] Rice takes { $pace_of_rice } { $at }, and the water measured for sea level can be gone before the
            middle of the grain is done.
        [level] Rice that stays firm { $at } wants more water or more rest; higher up the cooler boil slows it too.
       *[below] Rice takes { $pace_of_rice } { $at }, so a firm middle means too little water or too little rest.
    }
paragraph =
    A grain of rice is done when hot water has reached its middle and swollen the starch there. { $boils }
    { $side ->
        [above] So rice takes { $pace_of_rice }, and all that time the pot gives off steam.
        [level] The usual time and water hold, if the lid fits.
       *[below] That shortens the time by a little.
    } A little more water, a tight lid and a low flame carry it through. Then let it stand, covered and off the
    heat, for ten minutes: the middle finishes by itself. If you cook it often, a pressure cooker makes it the same
    every day.
equations = { $boiling_equation } { $rate_of_rice }
time-factor-of-rice-label = Time against sea level, rice
