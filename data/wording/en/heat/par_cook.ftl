# $far: by which sign, where that is asked
headline =
    { $far ->
        [root] Until a skewer goes in and meets a firm middle.{ " " }
        [green] Until they are bright and still snap.{ " " }
        [grain] Until a fine white core still shows in one that is bitten in two.{ " " }
       *[unasked] { "" }
    }Pull { $food } at about { $pull } at { $place }, { $percent } % of the { $whole } that it takes here.
pull-label = Pull at
chill =
    Into ice water at once, drain, oil it lightly, and spread it out cold: under { TEMP(70) } within { $first }, { TEMP(41) }
    within 4 h more.
finish-short = At the pickup drop it for { $low } to { $high } in water at the full boil, a small basket at a time.
finish = At service finish it in the oven, the pan or the sauce it is for, till it is soft in the middle.
because =
    It goes on cooking while it cools, and again at the pickup. The cooler boil here stretches both, so keep the share and not
    the minutes.
try-one = Bite one from the pot: a fine white core should still show.
