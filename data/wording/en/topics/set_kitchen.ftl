noted = Noted: { $owned }.
units-first =
    I will give { $units ->
        [us] US
       *[metric] metric
    } units first.
kitchen = Your kitchen is at { $place }; water boils at { $boil } there.
equipment = Equipment: { $owned }.
