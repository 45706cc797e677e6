label = Times the time you know
multiply = { $way ->
        [same] Leave the time as it is for { $doing } at { $place }, as at { $baseline }.
       *[moved] Multiply the time at { $baseline } by about { $factor }{ $ranged ->
            [yes] { " " }({ $low } to { $high })
           *[no] { "" }
        } for { $doing } at { $place }.
    }
