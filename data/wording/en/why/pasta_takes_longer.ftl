line =
    { $side ->
        [above] Pasta takes { $pace_of_pasta } { $at } because the water boils at only { $boil }, and cooler water
            swells the starch more slowly.
        [level] Pasta keeps the time on the box { $at }; higher up it takes longer because the water boils cooler.
       *[below] Pasta takes { $pace_of_pasta } { $at } because the water boils at { $boil }, hotter than at sea
            level.
    }
paragraph =
    Pasta is done when water has soaked to the middle and the starch there has swollen, and both go more slowly in
    cooler water. { $boils } { $side ->
        [above] A box that says { $box_time } means { $box_time_here }, and the range is wide because shapes differ.
        [level] The time on the box holds.
       *[below] A box that says { $box_time } means { $box_time_here }.
    } Use plenty of water at a full rolling boil, and put the lid on until it comes back to the boil. Salt is for
    the taste; it does not make the water hotter by anything you could notice. Start tasting at the time on the box.
equations = { $boiling_equation } { $rate_of_pasta }
time-factor-of-pasta-label = Time against sea level, pasta
