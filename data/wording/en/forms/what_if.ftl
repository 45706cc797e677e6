# What comes of a figure that is kept, and what to set instead.
bath =
    The bath never gets to { $asked } at { $place }: water boils at { $boil } there, so the heater runs flat out and only drives off
    water. Set { $top } and give it longer.
# $way: which way the setting goes up here
setting =
    { $thing ->
        [fat] { $way ->
            [cooler] Fat at { $asked } is as hot at { $place } as anywhere, but the water in the food boils at only { $boil }, so the
                crust is brown before the middle is done: hold it at { $here }.
           *[hotter] Fat at { $asked } is as hot at { $place } as anywhere, but the food wants it at { $here } there.
        }
       *[oven] { $way ->
            [hotter] At { $asked } it rises longer than its crumb can bear before it sets, and dries out meanwhile: set { $here } at
                { $place }.
           *[cooler] At { $asked } the outside is done before the middle at { $place }: set { $here }.
        }
    }
