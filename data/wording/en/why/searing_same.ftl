line =
    A dry pan is as hot { $at } as the burner makes it, so meat sears as it does anywhere; only a wet surface is held
    down, at { $boil }.
paragraph =
    Browning needs a surface well over the boil, and it gets there once its water has gone. { $boils } { $side ->
        [above] A damp steak therefore sits at a slightly cooler plateau, but thin air takes the water off it sooner,
            and the two about cancel out.
       *[other] A damp steak sits there until it is dry.
    } Pat it dry, salt it early, heat the pan well and do not crowd it. A crust is for flavour: it holds no juice in,
    and a seared steak loses as much as another. { $side ->
        [above] On gas the pan takes longer to heat, because the burner is weaker in thin air.
       *[other] On gas and on induction alike.
    }
equations = { $boiling_equation }
belief-seals-juices =
    A crust tastes of more but holds nothing in: a seared steak loses as much juice as one that was not.
belief-pan-same = A dry pan is as hot as the burner makes it, and only a wet surface is held at { $boil }.
