line =
    { $side ->
        [above] Dough rises sooner { $at } because its gas takes more room: by pressure alone it doubles in about
            { $gas_percent } % of the time.
        [level] Dough rises at its usual pace { $at }; a dough that races is too warm or has too much yeast.
       *[below] Dough rises a little more slowly { $at } because the air presses harder on its gas.
    }
paragraph =
    Yeast works no faster for the elevation; it goes by warmth, sugar and salt. { $gas_swells } { $side ->
        [above] So dough looks doubled in about { $gas_percent } % of the time, and it has had that much less time
            to build flavour and strength. Left as long as the recipe says, it stretches too far and falls.
        [level] Let it rise until doubled, as the recipe says.
       *[below] So give it a little longer, until it has doubled.
    } Watch the dough, not the clock, and stop at double. For flavour, use a little less yeast or a cooler place, or
    punch it down and let it rise again.
equations = { $gas_equation }
belief-rises-faster =
    The gas takes up { $gas_ratio } times the room { $at }, so it has risen before it has ripened; go by size, not by
    the clock.
belief-yeast-weaker =
    Yeast makes its gas at the pace that its temperature and food allow, the same anywhere; in thin air that gas takes more
    room, so the dough is up sooner.
belief-of-oxygen =
    Yeast in dough makes its gas without air, and works no faster or slower for the elevation; what changes is the pressure{ $side ->
        [above] , so the same gas takes up { $gas_ratio } times the room { $at }
       *[other] { "" }
    }.
belief-more-yeast =
    The dough is up sooner because the same gas takes up { $gas_ratio } times the room { $at }; take a little less yeast, or a cooler
    place, and stop at double.
