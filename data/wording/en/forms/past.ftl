# $said: the reading it was taken to; $by: how far that was too far; $to: where it had to stop
past =
    { $said } was { $by } too far: water boils at { $boil } at { $place }, so what a recipe takes to { $said } at sea level is done at
    { $to } here.
not-past = { $said } is no further here than at sea level: at { $place } water boils as hot, so look for another cause.
