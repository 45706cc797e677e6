# An amount and what becomes of it; $span is the range that is as right, if any, and goes on after the sentence.
anywhere = , anywhere from { $span }
weighed = { $amount } ({ $grams } g)
keep = Keep the { $was } of { $item } at { $place }: the change is smaller than a cook can measure{ $span }.
use = Use { $now } of { $item } instead of { $was } at { $place }{ $span }.
for-every = { CAPITAL($item) }: { $now } for every { $was } in the recipe{ $span }.
headline =
    Use about { $percent } % { $way ->
        [less] less
       *[more] more
    } { $item } for { $baked } at { $place }: { $now } for { $was }{ $span }.
to = { CAPITAL($item) } for { $was }
change = Change of { $item }

beyond =
    The published table ends at { $top }; above it { $by ->
        [gas] this goes by the gas law
       *[held] its last step is held
    }. Bake a small trial first.
soda-floor =
    Never go below 1/2 tsp of soda (2.3 g) for each cup (240 ml) of buttermilk or sour milk: its acid needs that much.
salt = Leave the salt as the recipe has it at { $place }.
salt-because =
    Salt is weighed against the flour, and seasoned by taste; the air does not change what it does.
beside-flour =
    { $keep ->
        [none] Leave out the { $was } of baking powder at { $place }{ $span }.
       *[some] Use { $now } of baking powder instead of { $was } at { $place }{ $span }.
    } The self-raising flour holds about { $inside } itself, which cannot be taken out, so the whole cut comes from the spoon.
foam-pot =
    Take a pot four times as deep as the syrup, sift the soda in off the heat, stir three strokes, and pour without knocking
    it; then leave it alone until it is cold.
foam-because =
    The gas of the soda takes { $swell } times the room at { $place }; the foam climbs higher, its walls tear, and it falls flat.
foam-burns =
    Hot sugar foam climbs and burns deep: long sleeves, no children near, and a bowl of ice water beside you.
