by-fan = The time is that of a fan at this setting, about a fifth under a still oven.
nothing-differs = Nothing differs from { $baseline }, so the time stays.
by-colour = It browns and dries by the heat of the oven, as anywhere: go by colour and smell.

oven = Oven
oven-headline = Set the oven to { $setting } for { $food } at { $place }, as at { $baseline }.
oven-step =
    { $chamber ->
        [air_fryer] Set the air fryer to { $setting }, one layer in the basket, and shake or turn it once.
        [wood_fired_oven] It has no dial: let the fire burn down and go by an infrared thermometer on floor or wall, { $setting } for this time; hotter,
            as a tandoor runs, it takes less than half of it.
       *[oven] Set the oven to { $setting } and preheat it fully.
    }

safe = Safe at the centre
rest = Rest
dries = A wet surface dries about { $percent } % faster in air this thin, and mountain air is usually drier too.
