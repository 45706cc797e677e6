line =
    Below about { $bath_for_vegetables } the pectin that glues a vegetable together hardly loosens, so it stays firm
    however long it sits there.
paragraph =
    Plant cells are glued by pectin, which lets go only near the boil; meat, set by its proteins, is done far cooler.
    Held for half an hour at 130 to 150 °F (55 to 65 °C) a vegetable even turns firmer, because an enzyme in it
    tightens the pectin, and it keeps some of that bite afterwards. { $boils } { $vegetable_bath ->
        [yes] That is over the { $bath_for_vegetables } that vegetables need, but the nearer the boil is to it the
            longer they take.
       *[no] That is about where pectin starts to loosen at all, so an open pot is very slow and a pressure cooker is
            the way.
    } Cut them small, salt the water, and keep acid out until they are soft.
equations = { $boiling_equation } Pectin lets go from about { FIXED($bath_for_vegetables, 0) } °C.
vegetable-floor-label = Vegetables soften from about
