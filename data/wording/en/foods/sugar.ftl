# $stage is the label of a stage in data/tables/sugar_stages_common-practice.csv.
stage-label = { CAPITAL($stage) }
stage-maths = T here = T sea level − ({ $sea } − { $here }) = T − { $drop } K.
all-at-sea-level = At sea level every sugar stage stands as candy tables print it.
all-stages =
    At { $place } every sugar stage up to hard crack is { $drop } { $way ->
        [lower] lower
       *[higher] higher
    } than at sea level; caramel is not.

# $dish: whether what is cooked is named, is nothing but sugar, or is called as the stage is.
one-stage =
    Cook { $dish ->
        [stage] { $stage }
        [named] { $food } to { $stage }
       *[sugar] sugar to { $stage }
    } at { $here } at { $place }{ $against ->
        [same] , as at sea level
       *[sea] , against { $sea } at sea level
    }.
your-thermometer = Your thermometer then reads { $reads }.
your-thermometer-there = Your thermometer shows { $reads } then.
caramel =
    Caramel does not move: by then the water is gone, and sugar melts and browns at its own temperature anywhere.
stages-stand = Water boils here at { $boil }, as at sea level, so the stages stand as printed.
stages-move =
    A stage is how much water is left, and that water boils { $drop } { $way ->
        [lower] lower
       *[higher] higher
    } here, at { $boil }. Cooked to the sea-level reading it would hold { $way ->
        [lower] less water and set too hard
       *[higher] more water and stay too soft
    }.

thermometer-first =
    Boil the thermometer in plain water first, and take the stages from what it reads there.
cold-water-test = { CAPITAL($stage) }: { $test }.
cold-water =
    The cold-water test works by how the syrup sets, so it is right at every elevation and for every thermometer.

reading-label = { CAPITAL($stage) } on your thermometer
thermometer =
    Your thermometer reads { $off } too { $way ->
        [high] high, so look for that much more
       *[low] low, so look for that much less
    } on it.

recipe-label = The recipe's temperature here
recipe-headline =
    Take it to { $here } at { $place } where the recipe says { $asked } at { $baseline }{ $named ->
        [yes] ; that is { $stage }
       *[no] { "" }
    }.
carried = { $here } for { $asked }
each-carried = At { $place }, for what the recipe says at { $baseline }: { $each }.
taken =
    { $way ->
        [right] { $of_two ->
            [yes] Not too hot:
           *[no] No,
        } { $taken } was right at { $place }: that is where to stop for the { $asked } of { $baseline }.
        [over] { $of_two ->
            [yes] Too hot,
           *[no] Yes,
        } { $off } over at { $place }: you took it to { $taken }, and the { $asked } of { $baseline } is { $here }
            there. Stop at { $here } next time.
       *[under] { $of_two ->
            [yes] Not hot enough,
           *[no] No,
        } { $off } under at { $place }: you took it to { $taken }, and the { $asked } of { $baseline } is { $here }
            there.
    }
chocolate =
    Tempering stays the same at every elevation: dark chocolate melted to 115 °F (46 °C), cooled to 82 °F (28 °C) and
    worked at 88 to 90 °F (31 to 32 °C), milk and white two degrees lower.
chocolate-because = Cocoa butter melts and sets by its own temperature; no water has to boil.
whites =
    The cooler syrup heats the eggs less, so do not count on it to make them safe: the foam itself must reach 160 °F
    (71 °C), or take pasteurised eggs.
published =
    Extension advice takes off 2 °F for each 1,000 ft, 10 °F at 5,000 ft, that is { $rule } here; by boiling point it is
    { $drop }. What your own thermometer reads in boiling water today settles it.

several-stages = At { $place }: { $each }.
by-cold-water = Yes, by the cold-water test, which holds at any height; { $stage }: { $test }. { $cook }
each-stage = { CAPITAL($each) }.
stage-at = { $stage } { $here }
isomalt = { $can ->
        [yes] Yes: isomalt gets to { $asked } at { $place } as anywhere, since its water boils off; but it is as dry at about
            { $here }, so begin to test there.
       *[no] Boil isomalt to about { $here } at { $place }, where it is as dry as at { $asked } at sea level; hotter only dries
            it further.
    }
isomalt-label = As dry as at sea level
isomalt-test =
    A drop in cold water, or on a cold tray, snaps clean like glass and does not bend; then stop the pan in cold water.
isomalt-because =
    What sets the temperature is the last of the water, which boils { $drop } lower here. Isomalt is no sugar with sugar's
    stages: it browns only far above this, so a few degrees too many do no harm.

maple-label = Maple syrup is drawn at
maple-headline = Draw maple syrup at { $draw } at { $place }, 7 °F (4 °C) over the boil of the day.
maple =
    Maple syrup is finished 7.1 °F (4 °C) above the boiling point of water, wherever that stands today.
syrup = At { $stage } the syrup is about { $percent } % sugar, and boils { $over } over water, here as anywhere.
burns =
    Hot sugar sticks and burns deep: long sleeves, a deep pot, no children near, and a bowl of ice water beside you.
