line = Stirring spreads heat and adds none that counts: water still stops at { $boil } { $at }.
paragraph =
    An arm puts a few watts into a pot, the burner a thousand or more. { $boils } Stirring evens out what is hot below and cool
    above, keeps thick things from scorching, and lets some heat out at the top.
equations = { $boiling_equation }
belief-hotter =
    Stirring spreads heat and adds none that counts, so water still stops at { $boil } { $at }, and it comes there a shade later
    with the lid off.
