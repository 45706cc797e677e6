line =
    Boneless is done sooner { $at } as anywhere, in about two thirds of the time, because it is thinner; the safe reading
    inside is the same.
paragraph =
    Heat has to reach the middle, and a boned piece is flatter and lighter. The bone itself is hollow or spongy and passes
    heat slowly, so the meat beside it is the last to be done. { $boils } { $side ->
        [above] In a roast or on the grill the elevation changes neither; in a pot both take longer, the tough one on the
            bone most.
       *[other] That holds for the oven and the pot alike.
    } Read poultry at { $safe_poultry } and whole cuts at { $safe_whole_cut }, in the thickest part and clear of the bone.
equations = { $boiling_equation }
poultry-limit-label = Poultry, anywhere
caution = Check meat with a thermometer in the thickest part, not touching the bone.
