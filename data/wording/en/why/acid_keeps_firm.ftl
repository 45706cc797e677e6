line =
    Acid and the lime of hard water both tighten the pectin that has to let go, so what sits in them stays firm at any
    elevation.
paragraph =
    Pectin loosens in water that is neutral or a little alkaline. Tomato, wine and vinegar hold it together, and the
    calcium of hard water ties it up. { $boils } { $side ->
        [above] High up everything softens slowly already, so both can stop it altogether.
       *[other] Even in a full boil they can double the time.
    } Add acid when the beans or potatoes are soft, cook them in soft or filtered water, and a pinch of baking soda to
    a quart (litre) helps where the water is hard. It is useful too: a splash of vinegar keeps potato salad and apple
    slices whole.
equations = { $boiling_equation }
