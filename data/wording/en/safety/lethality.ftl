kind =
    { $kind ->
        [poultry] poultry
        [ground_meat] ground meat
        [whole_cut] whole cuts of meat
        [pork] whole cuts of pork
        [raw_ham] ham and bacon
        [fish] fish
        [egg] eggs
        [egg_dish] egg dishes
        [game] game
        [wild_game] wild boar and bear
        [leftover] leftovers and casseroles
       *[stuffing] stuffed food
    }
