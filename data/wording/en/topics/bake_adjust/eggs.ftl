# $size is a size of egg, which an extra yolk or white may go with
egg = For { $count } large eggs use { $eggs } { $size } ({ $grams } g without shells)
egg-step = { $change }.
egg-headline = { $change }, at { $place }.
egg-to = Egg for { $count } large
egg-change = Change of egg

foam-step = Beat egg whites only to soft peaks that just fold over.
foam-headline = Beat the whites only to soft peaks that just fold over, at { $place }.
foam-because =
    The air beaten in swells { $swell } times as far in the oven here as at { $baseline }; a stiff foam has no stretch left and
    bursts.
