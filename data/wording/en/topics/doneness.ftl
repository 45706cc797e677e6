# $where: here, where somebody has said where the kitchen is, or anywhere
# $core: the safe temperature of the chart; $rests: whether a rest belongs to it; $rest: its minutes

# $held: for how long the food must be held at $asked; $harm: whether it is asked for the harm: will it poison us
judged =
    { $verdict ->
        [never]
            { $harm ->
                [yes] { "" }
               *[no] No.{ " " }
            }{ $asked } in the centre is not safe for { $food } after any time: take it to { $core }{ $rests ->
                [yes] { " " }and { $rest } min of rest
               *[no] { "" }
            }, at any elevation.
        [safe]
            { $harm ->
                [yes] No:
                [stays] No, that stays as it is:
               *[no] Yes.
            } { $asked } in the centre is safe for { $food }, at any elevation.
        [too_short]
            { $harm ->
                [yes] { "" }
               *[no] No.{ " " }
            }At { $asked } in the centre { $food } must be held { $held }, at any elevation, or taken to
            { $core }{ $rests ->
                [yes] { " " }and { $rest } min of rest
               *[no] { "" }
            }.
        [after_rest]
            { $harm ->
                [yes] No
               *[no] Yes
            }, after a rest of { $held }: { $asked } in the centre is safe for { $food }, at any elevation.
       *[once_held]
            { $harm ->
                [yes] No, once it was held:
               *[no] Not at once:
            } { $asked } in the centre is safe for { $food } once held there { $held }, or at
            { $core }{ $rests ->
                [yes] { " " }and { $rest } min of rest
               *[no] { "" }
            }, anywhere.
    }
judged-because =
    The printed times are for the coldest point, by a checked thermometer, and nothing is read between their rows.
cook-on = { $asked } in the centre: do not serve it, cook it on.

safe =
    { CAPITAL($food) }: safe at { $core } in the centre{ $rests ->
        [yes] , then rest { $rest } min
       *[no] { "" }
    }, the same { $where ->
        [here] at { $place } as at sea level
       *[anywhere] at any elevation
    }.
# $of: what is read: meat that may have a bone, a sauce that is stirred, anything that has a middle, or whatever it be
two-places =
    { $of ->
        [boned] Put the thermometer in the thickest part, clear of bone, and check in two places.
        [poured] Stir, hold the tip of the thermometer in the middle of the pan, clear of its bottom, and read it twice.
       *[other] Put the thermometer in the middle of it, where it is thickest, and check in two places.
    }
chart-label = { CAPITAL($food) }
chart =
    Safe temperatures in the centre of the food are the same { $where ->
        [here] at { $place } as at sea level
       *[anywhere] at any elevation
    }.
# $signs: what shows that such a dish is done, a sentence; $hot: whether the reading that was named is hot enough to hold food at
by-its-signs =
    { $safe ->
        [asked] { $hot ->
            [yes] Yes. { $asked } is hot enough for { $food }: { $hold } or hotter while it is held hot, { $reheat } when it is reheated, at any elevation. Done by its signs:
           *[no] { CAPITAL($food) }: safe once it is done by these signs, the same at any elevation.
        }
       *[unasked] { CAPITAL($food) }: done by these signs, the same at any elevation.
    } { $signs }
# $signs: what shows that such a dish is done, a sentence of the dish classes
check = Done means: { $signs }

reading = Reading of the centre
# $of: what the reading is of, the centre or all of it; $against: how it lies to $sea, the reading at sea level
done =
    { CAPITAL($food) }: done at { $done }{ $of ->
        [centre] { " " }in the centre
       *[all] { "" }
    }{ $where ->
        [here] { " " }at { $place }
       *[anywhere] { "" }
    }{ $against ->
        [differs] , against { $sea } at sea level
        [same] , as at sea level
        [is_sea] { " " }at sea level
       *[anywhere] { " " }at any elevation
    }.
bound-dry = With the water gone, sugar browns by its own chemistry, at the same temperature everywhere.
bound-set = It sets by its own proteins, at the same temperature everywhere, well under any kitchen's boil.
bound-unplaced =
    That reading hangs on the boiling point: say where the kitchen is, and it is worked out.
bound-above =
    Sugar boils over the boil of water by a fixed step for each strength, so every stage falls with it: take { $drop } off
    the recipe's reading here. Ask for one stage to have it exactly.
bound-boil =
    The crumb is wet, and its water boils at { $boil } here, so the centre stops a little under that however long it stays
    in. A recipe's reading near the sea-level boil is never reached here: waiting dries it out. Go by colour, a hollow
    sound or a clean pick as well.
bound-within-reach =
    The centre stays under the boil, { $boil } here, which leaves the usual reading within reach.

own-proteins =
    Meat and fish are done by their own proteins, whatever the air weighs{ $where ->
        [here] ; where the boil is lower a wet method only gets there later
       *[anywhere] { "" }
    }.
tender-label = Usual reading when a tough cut is tender
tender = A tough cut is safe long before it is tender; cooks look for about { $tender }.
out-of-reach =
    In a pot at { $place } the liquid stands at { $pot }, so the meat never shows that reading: it gets just as tender
    lower down, only later. Go by the fork.
within-reach = Time at that heat does the work, so go by the fork.
in-a-smoker =
    A smoker's air is hotter than { $tender }, so bark and drier parts pass it there; but wet meat stands near the boil,
    { $boil }, in a smoker too.
do-not-wait = Do not wait for { $tender } in a braise here: an open or covered pot cannot reach it.

wanted-label = { CAPITAL($done) }, after the rest
wanted =
    { CAPITAL($food) }, { $done }: { $core } in the centre after the rest{ $where ->
        [here] , at { $place } as anywhere
       *[anywhere] , at any elevation
    }{ $under ->
        [yes] ; the safe minimum is { $safe }{ $rests ->
            [yes] { " " }and { $rest } min of rest
           *[no] { "" }
        }
       *[no] { "" }
    }.
not-so-rare =
    No: { $food } is cooked to { $safe } in the centre{ $where ->
        [here] , at { $place } as anywhere
       *[anywhere] , at any elevation
    }, whatever the colour.

by-eye-after = For a big piece push a knife in to the middle for ten seconds: the blade comes out hot to the lip all along.
by-eye-because = Only a thermometer proves { $core } in the centre: colour can come early or late. The signs are the same at any elevation.
