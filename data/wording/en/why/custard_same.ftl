line =
    A custard sets at { $custard_sets }, { $custard_sets_under_boil ->
        [yes] below
       *[no] about as hot as
    } the boil { $at }, so egg and milk set as they do anywhere.
paragraph =
    Egg thickens milk by its own temperature, about { $custard_sets } in the middle, and the air has no say in that.
    { $boils } { $side ->
        [above] A water bath cannot pass that, so it is a little gentler high up and a little slower, which a
            custard takes well.
       *[other] A water bath cannot pass that, which is why it protects a custard.
    } Keep the oven as written, and start checking at the usual time. It is done when the edge is set and the middle
    still trembles. A sauce thickened with starch as well has to come to the boil.
equations = { $boiling_equation }
