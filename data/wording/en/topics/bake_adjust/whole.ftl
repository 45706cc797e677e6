headline = For { $baked } at { $place }: { $changes }.
hardly-anything = hardly anything changes
one-at-a-time =
    Change one thing at a time, in this order: { $order }, then the rest. Keep a note of each batch.
oven =
    an oven { $units ->
        [us] { $fahrenheit } °F ({ $celsius } °C)
       *[metric] { $celsius } °C ({ $fahrenheit } °F)
    } { $way ->
        [hotter] hotter
       *[cooler] cooler
    }
amount =
    { $percent } % { $way ->
        [less] less
       *[more] more
    } { component }
component =
    { $component ->
        [leavening] leavening
        [yeast] yeast
        [sugar] sugar
        [liquid] liquid
       *[flour] flour
    }
