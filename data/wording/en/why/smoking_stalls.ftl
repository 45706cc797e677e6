line =
    { $side ->
        [above] Smoked meat stalls because drying cools it to the wet bulb, about { $damp } { $at }, and thin air dries it up to
            { $drying_percent } % faster: the stall comes cooler and lasts longer.
        [level] Smoked meat stalls { $at } because drying takes heat from the surface as fast as the smoker brings
            it.
       *[below] Smoked meat stalls because drying cools it, and { $at } it dries about { $drying_percent } % more
            slowly, so the stall is milder.
    }
paragraph =
    Meat in a smoker sweats, and every gram of water that leaves takes heat with it. For hours that carries off as
    much as the warm air brings, and the thermometer stands still. { $side ->
        [above] { CAPITAL($at) } a surface at a given temperature dries about { $drying_percent } % faster in
            equally damp air. So the balance is struck a little cooler, and the piece loses more water getting
            through.
        [level] { CAPITAL($at) } it goes as the books describe; higher up the stall comes cooler and lasts longer.
       *[below] { CAPITAL($at) } a surface dries about { $drying_percent } % more slowly, so the stall is milder.
    } Wrapping ends the stall because it stops the drying, and a pan of water in the smoker eases it. Cook to
    temperature and feel, and leave room in the schedule.
equations = { $drying_equation }
