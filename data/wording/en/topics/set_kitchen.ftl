noted = Noted: { $owned }.
units-first =
    I will give { $units ->
        [us] US
       *[metric] metric
    } units first.
kitchen = Your kitchen is at { $place }; water boils at { $boil } there.
town = { $name } is at { $place }; water boils at { $boil } there.
elevation = Water boils at { $boil } at { $place }.
equipment = Equipment: { $owned }.
