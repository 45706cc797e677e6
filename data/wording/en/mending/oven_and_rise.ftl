# The sentences that tell a cook to make a change. They open a sentence, and can go on after a colon.

oven-to = Set the oven to { $now } instead of { $was }.
oven-by =
    Set the oven { $units ->
        [us] { $fahrenheit } °F ({ $celsius } °C)
       *[metric] { $celsius } °C ({ $fahrenheit } °F)
    } { $way ->
        [hotter] hotter
       *[cooler] cooler
    } than you had it.
time-to = Give it { $now } instead of { $was }, and test it then.
time-by =
    Give it about { $percent } % { $way ->
        [less] less
       *[more] more
    } time, and test it then.
proof-shorter =
    Stop the rise when the dough has just doubled; look at it after { $percent } % of the time you gave it.
proof-longer = Let it rise until it has truly doubled, about { $percent } % longer than you gave it.
