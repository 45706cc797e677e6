less = Less water leaves the batter in the denser air at { $place }, so it needs { $percent } % less liquid.
dough =
    Flour stored in dry air takes up more water, and the dough dries { $drying } times as fast. Hold a little of the liquid
    back and add it by feel.
griddle =
    Water leaves the batter or dough { $drying } times as fast at { $place } as at { $baseline }. Hold a little of the liquid
    back and go by how it spreads or rolls.
more =
    Water leaves the batter { $drying } times as fast at { $place } as at { $baseline }, and boils off sooner in the oven;
    the tables give { $percent } % more liquid for this kind of bake.
none-poured = This recipe pours no liquid, so beat it in with the eggs{ $eggs ->
        [larger] ; the larger eggs bring the rest
       *[same] { "" }
    }.
