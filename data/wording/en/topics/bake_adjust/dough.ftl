change = Change of rising time
yeast-change = Change of yeast
at-the-baseline = The same dough at { $baseline }
recipes-time = A recipe's time of that length, here

until-doubled =
    Let the dough rise only until it has doubled, then punch it down; press a finger in, and if the dent stays it is ready.
for-flavour =
    For more flavour punch it down and let it double once more before shaping, or keep it overnight in the refrigerator.
because =
    The gas in a dough takes { $swell } times the room at { $place } that it takes at { $baseline }, so the same dough doubles in
    about { $percent } % { $way ->
        [less] less
       *[more] more
    } time with the same yeast.
look =
    Start looking at the dough at { $percent } % { $way ->
        [less] less
       *[more] more
    } than the recipe's time at { $place }; stop when it has doubled.

# a rising time that the cook named
doubles-less-yeast =
    A dough that doubles in { $here } at { $place } would take about { $there } at { $baseline }: use about { $percent } % less
    { $starter ->
        [yes] levain, or keep it cooler,
       *[no] yeast,
    } and stop it when it has just doubled.
doubles = A dough that doubles in { $here } here takes about { $there } at { $baseline }; go by its size.
recipe-step = If { $time } is the recipe's time for { $baseline }, start looking after { $low }.
