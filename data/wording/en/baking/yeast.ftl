second-rise =
    Punch the dough down and let it rise a second time before shaping, or give it a night in the refrigerator: a dough that
    doubles this fast has had little time to gather flavour.
temperature-stays =
    The temperature stays: it sets how fast the yeast works. A place 5 °F (3 °C) cooler buys time for flavour.
why = Bakers use about { $percent } % { $way ->
        [up] less
       *[down] more
    } yeast at { $place }, { $way ->
        [up] so that the dough keeps time enough to gather flavour and strength.
       *[down] since the heavier air lets the same gas fill less room, and the dough rises later.
    }
proof =
    The gas takes { $swell } times the room it takes at { $baseline }. Judge by size, not by the clock: stop when the dough
    has just doubled, and the dent of a finger stays.
