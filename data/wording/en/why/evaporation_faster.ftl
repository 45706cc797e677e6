line =
    { $side ->
        [above] Yes: from a surface of the same warmth water evaporates about { $drying_percent } % faster { $at },
            because thinner air is less in its way.
        [level] Evaporation keeps its usual pace { $at }; in thinner air, higher up, less is in its way.
       *[below] From a surface of the same warmth water evaporates about { $drying_percent } % more slowly { $at },
            because denser air is in its way.
    }
paragraph =
    Vapour leaves by working its way through the air above the water. { $side ->
        [above] Thin air lets it through sooner, and mountain air is mostly drier as well, so dough, cheese and cut
            food dry about { $drying_percent } % faster or more.
        [level] The thinner and drier the air, the sooner it gets away.
       *[below] Denser air holds it back a little, unless the air is very dry.
    } A simmering pot is another matter, since its water is as hot as the boil allows: a wide one loses about
    { $open_loss } an hour here and { $open_loss_at_sea } at sea level. At a full boil the burner alone decides,
    because every bit of heat turns so much water into steam.
equations = { $drying_equation }
open-loss-beside-sea-level-label = Lost in an hour at a bare simmer, open
belief-faster =
    A surface of the same warmth dries about { $drying_percent } % { $side ->
        [below] more slowly
       *[other] faster
    } { $at }, but a simmering pot is cooler there and a full boil goes by the burner alone.
