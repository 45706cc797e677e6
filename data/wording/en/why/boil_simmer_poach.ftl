line =
    { CAPITAL($at) } a boil is { $boil }, a simmer about { $simmers }, a bare simmer about { $shivers }, and poaching
    water about { $poaching_middle }.
paragraph =
    A boil rolls and stirring does not stop it: { $boil } { $at }, and no flame makes it hotter. A simmer sends up
    small bubbles all over, a few degrees under that, about { $simmers }; a bare simmer lets one rise now and then,
    about { $shivers }. Both are counted from the boil{ $side ->
        [above] , so they are { $drop } cooler than at sea level.
        [level] .
       *[below] , so they are { $drop } hotter than at sea level.
    } Poaching is set by the food and not by the boil, { $poaching } everywhere, so up a mountain it lies closer to
    the simmer. Trust a thermometer there, since the bubbles come early.
equations = { $boiling_equation } Simmer: 1 to 3 °C under it; bare simmer: 3 to 8 °C under it.
simmers-label = Simmer
shivers-label = Bare simmer
poaching-label = Poaching, everywhere
