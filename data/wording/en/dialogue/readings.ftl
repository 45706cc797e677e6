# What a thermometer or a barometer shows, held against what is known of the place, and what follows.
# $read: what it showed; $true: what it was really; $size: how far it is off; $place: an elevation, by its name where it
# has one.

place-by-name = { $name }, { $place }
right-in-ice = { $read } in melting ice: your thermometer is right.
off-in-ice =
    Melting ice is { $zero }, so your thermometer reads { $size } { $way ->
        [high] high; I take that off
       *[low] low; I add that to
    } what it shows from now on.
boil-fits = Your { $read } in boiling water was then { $true }, which fits { $place }.
boil-does-not-fit =
    Your { $read } in boiling water would then be { $true }, the boil of { $found }, and { $place } boils at { $expected }.
    Both cannot be: I go by { $place } for the boil. Do the ice again, crushed, with a little water, stirred until it stands.
boil-gives = Your { $read } in boiling water was then { $true }: you cook as at { $found }.
agrees = { $read } is a full boil at { $place }: your thermometer is right.
agrees-corrected = { $read } on yours is { $true }, a full boil at { $place }.
disagrees =
    { $read } would be the boil of { $found }; at { $place } water boils at { $expected }. I go by { $place }, so your
    thermometer reads { $size } { $way ->
        [high] high; I take that off
       *[low] low; I add that to
    } what it shows from now on.
by-the-ice =
    { $read } on yours is { $true } by the ice, the boil of { $found }; at { $place } water boils at { $expected }. I go by
    { $place }. Check that it is at a full boil, the tip clear of the pot.
far-off = That is far off: check that the water boils hard and the tip is clear of the pot, or replace it.
gives = Water that boils at { $true } cooks as at { $found }.
gives-corrected = { $read } on yours is { $true } really, which cooks as at { $found }.
beside-before =
    { $way ->
        [same] That is as high as { $before }, near enough: the times stay.
        [higher] That is { $climb } above { $before }, so all takes longer.
       *[lower] That is { $climb } below { $before }, so all takes less.
    }
taken-back =
    I leave that reading out; the thermometer counts as { $off ->
        [yes] { $size } { $way ->
            [high] high
           *[low] low
        }, as before
       *[no] right
    }.
taken-back-to = I am back at { $place }.
must-show = For a real { $wanted } it must show { $shown }: yours reads { $size } { $way ->
        [high] high
       *[low] low
    }.
was-really = { $read } on yours was { $true } really.
by-one-test =
    For food I go by the { $shown } that it shows: it read low in one test only. When ice and the boil agree, I add what it lacks.
report = { $read } is reduced to sea level, as weather reports are; the air itself presses with about { $here } at { $place }.
report-or-yours = { $read } is reduced to sea level, as weather reports are. I believe your barometer: { $here } at { $place }.
still = Water boils at { $boil } there.
misfit = { $read } does not fit { $place }, where the air presses with about { $here }. I go by { $place }: water boils at { $boil }.
tenth = To a tenth: { $celsius } °C ({ $fahrenheit } °F), with the air at { $pressure }.
