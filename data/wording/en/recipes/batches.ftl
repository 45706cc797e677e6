# a change as it is kept, in a few words
moved = { $item } { $before } to { $after }
changed =
    { $item }, { $way ->
        [less] less
        [more] more
        [hotter] hotter
        [cooler] cooler
        [shorter] shorter
        [longer] longer
       *[same] same
    }
degrees =
    { $units ->
        [us] { $fahrenheit } °F
       *[metric] { $celsius } °C
    }
# what is changed where the cook did not name it
name =
    { $what ->
        [leavening] leavening
        [yeast] yeast
        [sugar] sugar
        [liquid] liquid
        [flour] flour
        [egg] egg
        [fat] fat
        [salt] salt
        [oven] oven
        [time] time
        [temperature] inside
        [sugar_temp] sugar temperature
        [fat_temp] fat
        [pressure] pressure
        [proof] rise
        [pan] pan
       *[method] method
    }
