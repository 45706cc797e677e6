the-food = the food
# $placed: whether the kitchen's elevation is known
headline =
    Write the temperature of the food in the centre, not the boil: { $reheat } for { $food } that is reheated, { $hot } or
    hotter while it is held{ $placed ->
        [yes] ; water boils at { $boil } at { $place }, well above both
       *[no] { "" }
    }.
reheat-label = Reheated, within 2 h
hold-label = Held hot
boil-label = Water boils at
raw =
    Cooked from raw: poultry and anything stuffed { TEMP(165) }, ground meat and egg dishes { TEMP(155) } for 17 s, whole cuts
    and fish { TEMP(145) }; vegetables, grain and pulses for the hot line { TEMP(135) }.
measure = How it is checked: a probe in the thickest part or the middle of the pot, stirred; write down time and reading.
cooling = Cooling, as its own point: { TEMP(135) } to { TEMP(70) } within { $first }, to { TEMP(41) } within 4 h more.
why = A limit that no pot can reach is failed every day. Germs die at the same temperatures everywhere; { $boil } is far over them.
why-anywhere = A limit that no pot can reach is failed every day. Germs die at the same temperatures at every elevation.
approved = Have your inspector or head office sign the new limit before you work by it.

# $enough: whether the cook's time is as long as the tables ask, or unsaid
bath-headline =
    { $enough ->
        [no] No: { $time } is short for { $food }. At { $bath } write { $needs } or more
       *[other] { $changes ->
            [asked] No, { $placed ->
                [yes] { $place } changes
               *[no] elevation changes
            } neither bath nor time. Write
           *[unasked] Write
        } { $bath } for { $enough ->
            [yes] { $time }
           *[unsaid] { $needs } or more
        } for { $food }
    }: the tables ask for { $needs } in that bath, for a piece 25 mm (1 in) thick from the refrigerator, at any elevation.
bath-label = Bath
bath-time-label = At least, 25 mm (1 in) thick
bath-log =
    Log the centre of the thickest piece: safe once it has been at { $asked }{ $held_at_all ->
        [yes] { " " }for { $held }
       *[no] { "" }
    }. A thicker piece takes longer to
    get there; take its time from the table.
bath-water = Cover the bath and top it up, since it dries faster up here, and weigh the bags down: what gas is left swells.
bath-reheat = Served later and held hot: { $reheat } within 2 h as its own point. Served at once from the bag: none.
bath-why = The bath is under the boil, so it is as hot as it is set; germs die by temperature and time, not by air pressure.
bath-approved =
    Bagging and cooking so is reduced oxygen packaging: have the plan, with bag, cooling and shelf life, approved before you work
    by it.
