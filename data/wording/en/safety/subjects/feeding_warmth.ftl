# $where: here, where the kitchen is known, or anywhere
headline =
    Feed it at body warmth, about { $feed } and never over { $most }, the same { $where ->
        [here] at { $place }
       *[anywhere] at any elevation
    } as at sea level; room temperature does no harm either.
label = Fed at
test =
    Warm the closed bottle in a bowl of warm water or cool it under the tap, never in a microwave oven; swirl it and test a
    drop on the wrist. Warm it once, and throw away what is left after 2 h.
mixed = Powder is mixed hotter than it is fed: with boiled water still { $hot } or more, then cooled.
because = It is the mouth that is protected, and a mouth scalds at the same temperature everywhere.
