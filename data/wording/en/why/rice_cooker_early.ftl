line =
    A rice cooker switches off when its pot is dry and climbs past about { $dry_pot }, { $side ->
        [above] and { $at } the water is gone before the grain is done
       *[other] which says that the water is gone, not that the grain is done
    }.
paragraph =
    The switch feels the bottom of the pot: as long as there is water it stays at the boil, and when the water is gone
    it shoots up. { $boils } { $side ->
        [above] Rice takes { $pace_of_rice } there, but the water leaves at its usual pace, so it runs out first and
            the middle stays hard.
        [level] Water and rice are done together.
       *[below] Rice is done a touch before the water is gone.
    } { $side ->
        [above] Soak the rice half an hour, give it a fifth more water to begin with, and leave it on warm with the
            lid shut for 15 minutes.
       *[other] Leave it on warm with the lid shut for 10 minutes.
    } A pressure rice cooker cooks hotter than the open boil and is the surest way high up.
equations = { $boiling_equation } { $rate_of_rice }
dry-pot-label = The switch trips at about
time-factor-of-rice-label = Time against sea level, rice
belief-useless =
    It works, but { $at } the water is gone before the grain is done, so it needs more water, a soak and a rest on
    warm.
