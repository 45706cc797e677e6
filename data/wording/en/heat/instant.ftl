headline =
    Pour boiling water on { $food } and let it stand { $here } at { $place }, against { $packet } at { $baseline }.
pour-on = Bring the water to a full boil, pour it on at once, stir, and cover it tight.
wrap =
    Wrap it in a towel or a cosy and let it stand for the longer time; stir to the bottom before you taste.
still-hard = If a piece is still hard, bring it back to the boil for a minute rather than adding more water.
because =
    The packet reckons with water at { $packet }. Here it is { $here } at its hottest and cools from there, so water
    soaks in more slowly: give it time and keep it warm. Couscous and flakes hardly mind; rice, beans and meat in the
    packet do.
