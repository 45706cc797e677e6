line =
    { $side ->
        [above] Cooked to the temperature in the book, candy comes out hard { $at } because too much water has gone:
            stop { $drop } sooner, at { $soft_ball } where the book says { $soft_ball_in_book }.
        [level] The temperature in the book holds { $at }; hard candy means it was cooked too far, or the
            thermometer reads low.
       *[below] Cooked to the temperature in the book, candy comes out soft { $at }: go { $drop } further.
    }
paragraph =
    A candy stage is really an amount of water left in the syrup. The less water, the further the syrup boils above
    plain water, and that distance is the same everywhere. { $boils } { $side ->
        [above] So soft ball, { $soft_ball_in_book } in the book, is { $soft_ball } there; at the book's figure the
            syrup is already { $sugar_as_cooked } % sugar instead of { $sugar_as_meant } %.
        [level] So soft ball is { $soft_ball_in_book }, as in the book.
       *[below] So soft ball, { $soft_ball_in_book } in the book, is { $soft_ball } there.
    } Boil water first with the same thermometer, and take the difference off every stage. The cold-water test needs
    no correction.
equations =
    { $boiling_equation } Stage here = { FIXED($soft_ball_in_book, 1) } − ({ FIXED($boil_at_sea, 2) } −
    { FIXED($boil, 2) }) = { FIXED($soft_ball, 1) } °C. Syrup at { FIXED($soft_ball_in_book, 1) } °C holds
    { FIXED($sugar_as_cooked, 1) } % sugar here, { FIXED($sugar_as_meant, 1) } % at sea level.
soft-ball-label = Soft ball
sugar-in-syrup-label = Sugar in the syrup at the book's soft ball
caution =
    Boiling sugar sticks and burns deeply: long sleeves, a deep pan, cold water at hand, and nobody else near the
    stove.
belief-water-test = The ball in cold water shows how much water is left, whatever the thermometer reads.
belief-stages-same =
    Every stage with water in it drops with the boil: soft ball is { $soft_ball } { $at } instead of
    { $soft_ball_in_book }.
belief-cold-water-holds =
    The cold-water test goes by how the syrup sets, so it is right at every elevation and needs no correction.
