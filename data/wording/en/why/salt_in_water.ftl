line =
    Salting the water raises its boil by only { $salt_raises } for 10 g of salt in a litre, so salt for the taste
    and not for the heat.
paragraph =
    Anything dissolved in water makes it boil a little hotter, but salt does it very weakly. The usual 10 g of salt
    in a litre for pasta adds { $salt_raises }. { $boils } { $side ->
        [above] To win that back with salt would take { $brine ->
                [brine] a brine more than 5 times as salty as the sea.
                [sea] about { $salt_wanted } g in every litre, saltier than the sea.
               *[some] about { $salt_wanted } g in every litre.
            }
       *[other] Nobody would taste or time the difference.
    } The rush of bubbles when salt goes in is only steam set loose by the grains. Salt the water because pasta and
    potatoes taste of it.
equations =
    ΔT = 0.512·2·10/58.44 = { FIXED($salt_raises, 3) } °C for 10 g in a kilogram of water, against
    { FIXED($drop, 2) } °C between here and sea level.
salt-raises-label = Salt at 10 g a litre raises it by
belief-hot-enough = The salt of pasta water raises the boil by { $salt_raises }, which no food can notice.
belief-oil-raises =
    Oil floats on the water and does not dissolve, so the boil stays where it is{ $side ->
        [above] , { $drop } under sea level
       *[other] { "" }
    }.
belief-raises =
    Salt does raise the boil, but by only { $salt_raises } for 10 g in a litre, two teaspoons in a quart, which no food can
    notice{ $side ->
        [above] ; the elevation has taken { $drop }
       *[other] { "" }
    }.
belief-lowers = Salt raises the boil, and by only { $salt_raises } for 10 g in a litre, two teaspoons in a quart.
belief-sooner =
    Salted water comes to the boil a shade later, { $salt_raises } hotter for 10 g in a litre; the rush of bubbles is only steam
    that the grains set loose.
