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
bath = No, elevation does not change that: write { $bath } for { $time } for { $food }. A bath at { $bath } is well under the boil at { $place }, { $boil }, so it is as hot as it is set and takes as long.
bath-label = Bath, as at sea level
bath-measure = The limit is the bath and the time from when the core is up: log both, and probe the core of one bag of each batch against a thermometer that is right in ice water.
bath-water = What elevation does change: the bath dries sooner, so cover it and top it up with hot water; bags float more, so weigh them down.
bath-plan = Food packed without air needs a plan that your inspector has passed: chilled fast, kept at 41 °F (5 °C) or under, dated.
