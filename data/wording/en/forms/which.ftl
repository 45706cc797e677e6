# $one and $other: places; $each: a list of the messages below
places = { $alike ->
        [yes] The same: about { $here } for { $doing } at { $one }, and { $there } at { $other }.
       *[no] { $way ->
            [longer] Longer
           *[shorter] Quicker
        } at { $one }: about { $here } for { $doing }, against { $there } at { $other }.
    }
places-each = { CAPITAL($doing) }: { $each }.
time-at = about { $time } at { $place }
# $others: a list of `boils-at`
boils = { $way ->
        [same] The same
        [higher] Higher at { $place }
       *[lower] Lower at { $place }
    }: water boils at { $boil } { $way ->
        [same] at { $place }, { $others }
       *[moved] there, against { $others }
    }.
boils-at = { $boil } at { $place }

# $others: a list of `time-for`
against = { $alike ->
        [yes] As long either way at { $place }: about { $time } for { $first }, { $others }.
       *[no] { $way ->
            [longer] Longer
           *[quicker] Quicker
        } at { $place }: { $first }, about { $time }, against { $others }.
    }
either-heat = As long either way at { $place }: about { $time } for { $doing } covered in the oven, and as long on the stove at a bare simmer; the liquid is about { $liquid } in both.
# $others: a list of `heat-of`
heats = { $way ->
        [same] Alike at { $place }: { $heat } for { $first }, and { $others }.
        [hotter] Hotter at { $place }: { $first }, { $heat }, against { $others }.
       *[cooler] Cooler at { $place }: { $first }, { $heat }, against { $others }.
    }
heat-of = { $heat } for { $doing }
# $each: a list of `by-share`
beside-recipe = Beside a sea-level recipe: { $each }.
by-share = { $doing } { $way ->
        [as-written] as written
        [shorter] { $share } % less
       *[longer] about { $share } % longer
    }
time-for = { $time } for { $doing }
nearest = { $nearest } is nearer: { $thing ->
        [boil] water boils at { $here } at { $place }.
        [fat] the fat is held at { $here } at { $place }.
        [pan] the pan is heated to { $here } at { $place }.
        [grate] the grate is held at { $here } at { $place }.
        [smoker] the smoker is held at { $here } at { $place }.
       *[oven] the oven is set to { $here } at { $place }.
    }
safe = { $enough } is enough: { $food } is safe from { $least } in the centre, at any elevation.

# dry beans whose poison a boil this cool is not sure to destroy
poison =
    Leave out { $beans } from an open pot at { $place }: a boil this cool is not sure to destroy their natural poison.
