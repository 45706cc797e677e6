line =
    For beans a pressure cooker, { $inside_cooker } inside { $at }, does far more than soda, which helps mainly in hard
    water, and salt does not toughen them.
paragraph =
    The skins of beans are glued by pectin and calcium. Salt in the soak puts sodium in the place of the calcium, so they
    soften sooner and burst less: 1½ tbsp of salt to 8 cups (1.9 l) of water for 1 lb (450 g), overnight. Soda loosens the
    pectin itself and ties up the lime of hard water: ¼ tsp to 1 lb (450 g) is enough, more tastes of soap. { $boils } {
    $side ->
        [above] Neither makes up for that: in an open pot dried beans take { $pace_of_beans }.
       *[other] Both save some minutes.
    } What does keep beans hard is acid, hard water and age.
equations = { $boiling_equation } { $rate_of_beans }
belief-salt-toughens =
    Salt in the soak swaps sodium for the calcium that holds the skins, so beans soften sooner; acid and hard water are what
    keep them hard.
belief-soda-softens =
    Soda loosens the skins, ¼ tsp to 1 lb (450 g), most where the water is hard, but it does not make up for a boil of {
    $boil }; a pressure cooker at { $cooker_gauge }, { $inside_cooker } inside, does.
