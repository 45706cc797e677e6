line =
    { $side ->
        [above] Induction boils sooner, with full power against about { $gas_kept } % for gas { $at }, but every open pot
            stops at { $boil }; beans want a pressure cooker on either, breads the flame.
       *[other] Induction, gas or electric, an open pot boils at { $boil } { $at }: the stove decides how soon, the air how
            hot.
    }
paragraph =
    No stove gets around the air above the pot. { $boils } { $side ->
        [above] Getting there takes about { $heat_to_boil_less } % less heat than at sea level, so an electric or
            induction plate brings it up sooner, since it loses nothing to elevation. Gas keeps about { $gas_kept } % of
            its heat in thin air, so there the gas pot is the slower one.
       *[other] Both give what they are rated for.
    } After that only two things matter: whether the burner can hold the boil when the food goes in, and whether it
    can be turned down to a murmur. A heavy pot and a lid do more than the kind of stove.
equations =
    { $boiling_equation } Heat to the boil = ({ FIXED($boil, 1) } − 15)/({ FIXED($boil_at_sea, 1) } − 15) =
    { $heat_to_boil } of sea level, from tap water at 15 °C.
heat-to-boil-label = Heat to reach the boil, against sea level
belief-boils-hotter = Every stove stops at the same boil, { $boil } { $at }; a stronger one only gets there sooner.
