line =
    Hot food is held at { $hot_hold } or above at every elevation, because germs know nothing of the boil; what
    changes is how fast it dries out.
paragraph =
    The limit is set by what germs can grow in, and that is a temperature of the food. { $boils } { CAPITAL($at) } the
    wells have plenty to spare over { $hot_hold }. { $side ->
        [above] What suffers is the food: an open pan dries about { $drying_percent } % faster, and more in dry air.
        [level] An open pan dries at its usual pace.
       *[below] An open pan dries a little more slowly.
    } Keep lids on, hold in small pans, stir, and loosen sauces with hot stock. Check the food with a probe, not the
    dial of the cabinet.
equations = { $drying_equation }
hot-hold-label = Hot food is held at or above
caution = Hot holding is for food that is already cooked and hot; a holding cabinet does not reheat.
