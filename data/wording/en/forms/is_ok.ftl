# Behind a verdict. $said: a time that somebody states
stated-time = { $fits ->
        [same] { $said } is right for { $doing } at { $place } as at { $baseline }.
       *[moved] { $said } is the time at { $baseline }; at { $place } it is { $here } for { $doing }.
    }
