# How an answer opens, and what stands behind it. $verdict: none where how much is asked and neither yes nor no.
opened = { $verdict ->
        [yes] Yes: { SMALL($rest) }
        [little] Yes, a little: { SMALL($rest) }
        [no] No: { SMALL($rest) }
        [hardly] Hardly: { SMALL($rest) }
        [just] Just: { SMALL($rest) }
        [longer] Longer: { SMALL($rest) }
        [shorter] Less time: { SMALL($rest) }
        [hotter] Hotter: { SMALL($rest) }
        [cooler] Lower: { SMALL($rest) }
        [same] The same: { SMALL($rest) }
       *[none] { CAPITAL($rest) }
    }
