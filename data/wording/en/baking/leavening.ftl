why =
    The same gas takes { $swell } times the room at { $place } that it takes at { $baseline }, so the batter would { $way ->
        [up] rise faster than it sets, and fall
       *[down] stay low
    }. The published tables come to { $percent } % { $change ->
        [less] less
       *[more] more
    } here for this kind of bake; the gas law alone gives { $law_low } to { $law_high } %.
other-rule = New Mexico's rule of thumb takes { $amount } { $way ->
        [up] off
       *[down] back
    } for this much flour.
soda-for-sour-milk = The sour milk needs all of this soda: 1/2 tsp a cup to neutralise its acid.
self-rising = The powder is inside the flour and cannot be taken out, so plain flour stands in for part of it.
