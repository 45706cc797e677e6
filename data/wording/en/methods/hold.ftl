# $where: here, where somebody has said where the kitchen is, or anywhere

food = food
hot-food = hot food
headline =
    Hold { $food } at { $hot } or hotter{ $where ->
        [here] { " " }at { $place }
       *[anywhere] { "" }
    }, the same as at any elevation.
verdict =
    { $verdict ->
        [cold] Yes. { $asked } is cold enough for { $food }: { $limit } or colder, at any elevation.
        [hot] Yes. { $asked } is hot enough for { $food }: { $limit } or hotter, at any elevation.
       *[too_cool] No. Hold { $food } at { $limit } or hotter: at { $asked } germs grow, at any elevation.
    }
hot = Hold hot at or above
roasts = Whole roasts at or above
reheat = Reheat for holding to
reheat-within = Reheat within
without-heat = Or serve without heat within
check =
    Check the centre with a thermometer every two hours; under { $least }, reheat to { $reheat } for 15 s within
    { $within }, or throw it away.
labelled = Food held without heat is served or thrown away within { $within }, and labelled so.
too-cool =
    Food that stood under { $least } for over { $most } is thrown away: reheating does not undo what germs leave in it.

dry-air-step =
    Keep it covered and add hot liquid as it dries; top up the water of the steam table more often.
dry-air-because =
    What changes is drying: the air at { $place } is thinner and usually drier, so uncovered food loses water sooner. The
    water of a steam table boils at { $boil } and still holds food hot enough.
spores =
    Cooked rice and pasta carry spores that outlive boiling and make a poison that reheating does not destroy: keep them
    above { $hot } or chill them at once, never warm in between.

keep-at = Keep it at
ferment-time = For
ferment-headline =
    Keep { $food } at { $warmth }{ $where ->
        [here] { " " }at { $place }
       *[anywhere] { "" }
    }, the same as at any elevation, until it is as sour as you like.
ferment-jars = Use clean jars and a lively culture, cover it with a cloth, and refrigerate it once it is sour.
ferment-gas =
    Leave room and open closed bottles now and then: the same gas presses harder against thinner air.
ferment-because = The culture grows by warmth, and that has nothing to do with the weight of the air.
ferment-spoilt = Throw it out if it shows mould or smells wrong.
