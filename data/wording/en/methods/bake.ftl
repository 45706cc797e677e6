liquid-label = Liquid in the covered dish
liquid-step = Let the liquid come to about { $liquid }, a bare simmer.

oven = Oven
oven-moved = Set the oven to { $setting } for { $food } at { $place }, against { $usual } at { $baseline }.
oven-moved-step =
    Set the oven to { $setting }; ask for the recipe to be adjusted for its leavening, sugar and liquid.
oven-moved-because =
    Published tables move the oven by { $ends ->
        [two] { $least } to { $most }
       *[one] { $most }
    } { $way ->
        [up] up
       *[down] down
    } for this kind of bake: the crumb has to set before its gas has swelled too far.
oven-as-written = The oven stays as written: it is as hot as its thermostat says at any elevation.
tables-leave-oven =
    Between these elevations the published tables leave the oven as written for this kind of bake.

dough-time =
    In the { $oven ->
        [hotter] hotter
       *[cooler] cooler
    } oven it takes { $pace }. Look in at the early end and test before you take it out.
tables-leave-time =
    The tables leave the middle of the time alone for this kind of bake; go by colour and touch.
until-dry = It is done when it is dry, and thin, usually dry air takes the water away faster: look at it early.
root-softens =
    The oven browns as anywhere, but inside a potato or root it is never hotter than its own boil, { $boil } here, so it
    softens { $pace ->
        [slower] more slowly
       *[sooner] sooner than at { $baseline }
    }. The range runs from small and covered to whole.
heated-through =
    It is done when the middle reaches { $core }, and the wet inside never passes { $boil }: it gets there a little
    { $pace ->
        [slower] more slowly
       *[sooner] sooner than at { $baseline }
    }, while the top browns by the heat of the oven.
softens =
    What is wet inside stays under { $boil } here and softens { $pace ->
        [slower] more slowly
       *[sooner] sooner than at { $baseline }
    }; the outside browns as anywhere.

covered-step =
    Cover it for the first two thirds of the time, and start with a few spoonfuls more liquid; uncover it to brown.
covered-because =
    An open dish loses water about { $percent } % faster here, so the top is dry before the middle is hot.
water-bath =
    Set the dish in a pan of hot water reaching halfway up, and top it up: it dries away faster in thin air.
custard-because =
    Custard sets at 170–180 °F (77–82 °C), under the boil of { $boil } here, so it sets as anywhere. The bath cannot pass
    the boil and stands well below it, since it cools as it dries: a little gentler here, and a little slower.

done-label = Centre when done
done-step =
    By thermometer it is done at { $done } in the centre; it never reads the { $sea } of sea level here.
put-together-cold = A casserole put together cold takes longest in the middle: check there, not at the edge.

kept-step = Bring the liquid to the boil before it goes in, and keep the lid on tight.
kept-because = In a covered dish the liquid decides, not the oven air: a hotter oven only boils it away.
tender-first = Quicker: simmer or pressure-cook them tender first, then bake them 2 to 3 h for crust and taste, as at sea level.
