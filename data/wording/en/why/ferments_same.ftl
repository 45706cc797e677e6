line =
    Cultures go by warmth, food and salt and not by air pressure, so a ferment takes its usual time { $at }; only its
    bubbles look bigger.
paragraph =
    Yeast and lactic bacteria work by temperature. { $gas_swells } { $side ->
        [above] So a jar bubbles and a starter rises more for the same work, which is easily taken for speed.
       *[other] So it looks as the book says.
    } Judge by smell, taste and acidity, not by height. Keep the kitchen warm, since mountain nights are cold, top up
    the brine that dry air takes, and leave headroom. Salt is weighed as anywhere: about 2 % for vegetables.
equations = { $gas_equation }
caution = Canning what you have fermented is another matter: go by a tested recipe and its time for your elevation.
