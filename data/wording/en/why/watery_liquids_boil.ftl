line =
    Milk, stock and other thin liquids boil within half a degree of plain water: at about { $boil } { $at }.
paragraph =
    Sugar, salt and protein raise the boil only by what is dissolved, and in milk or stock that is little: about 0.2 °C.
    { $boils } Milk foams up well before that and boils over the sooner, so stay with it. A thick syrup or a jam is another
    matter: the more sugar, the further its boil is over that of water.
equations = { $boiling_equation }
