line =
    A hard boil is no hotter than a gentle one: { $at } both stand at { $boil }, and the extra flame only makes
    steam.
paragraph =
    An open pot cannot pass its boiling point, whatever is under it. Turn the burner up and the extra heat leaves as
    steam. { $boils } A gentle boil and a rolling boil are equally hot, so the food is done no sooner; the pot only
    runs dry sooner and tender food breaks up. Bring it up fast, then turn it down until it just keeps moving. Pasta
    is the exception: there the movement keeps the pieces apart.
equations =
    { $boiling_equation } A kilogram of water takes { $heat_of_boil } kJ to boil away, so a burner that puts 2 kW
    into the pot drives off { $boiled_off_by_2_kw } kg an hour, all of it at { FIXED($boil, 1) } °C.
belief-cooks-faster = However hard it boils, water stops at { $boil }; a bigger flame only drives off more steam.
