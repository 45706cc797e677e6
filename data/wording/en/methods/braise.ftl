liquid-label = Liquid at a bare simmer
liquid-step = Hold the liquid at a bare simmer, about { $liquid }: a bubble now and then, never a rolling boil.

oven-headline =
    Set the oven to { $setting } for a braise at { $place }, as anywhere; what counts is its liquid, which holds at about { $liquid }.
oven-label = Oven
oven-step = Set the oven to { $setting }, lid on; lower it if the liquid does more than murmur.
oven-because =
    The oven setting stays as at sea level: a hotter oven only drives off more liquid, since the pot cannot pass the boiling
    point.

extension-label = By extension advice
cooks-label = By cooks' reckoning
published =
    Extension advice for braised meat, one quarter more at 5,000 ft, comes to { $extension } here taken in proportion{ $reckoned ->
        [yes] ; cooks reckon 30 min to 1 h more for every 3,000 ft, { $cooks }
       *[no] { "" }
    }. The range by softening rate, { $softening }, { $relation ->
        [around] takes them in
        [overlaps] overlaps with them
        [longer] is longer
       *[shorter] is shorter
    }.
