# a tin by its size: across, and along where it has corners; $one is yes where it is one
tin =
    { $count } { $shape ->
        [round] { $one ->
            [yes] round of
           *[other] rounds of
        } { $inch } in ({ $cm } cm)
       *[other] { $one ->
            [yes] pan of
           *[other] pans of
        } { $inch } × { $inch_too } in ({ $cm } × { $cm_too } cm)
    }
# $new and $old: tins; $time: one of the two below
swap =
    { CAPITAL($new) } for { $old }: the batter stands { $way ->
        [same] about as deep
        [deeper] about { $percent } % deeper
       *[shallower] about { $percent } % shallower
    }, { $time }.
part =
    { CAPITAL($new) } takes only about { $percent } % of the batter for { $old }: fill it as deep as before, with about the same
    time, and bake the rest as cupcakes.
time-to = so give it about { $now } instead of { $was }
time-by =
    { $way ->
        [same] so about the same time
        [longer] so about { $percent } % more time
       *[shorter] so about { $percent } % less time
    }
depth = Depth of the batter against what it was
time = Time
too-deep = Fill it no more than half, and bake what is left as cupcakes.
look-early = Look 5 minutes early; it is done when a skewer comes out clean.
because = Time goes by how deep the batter stands, and a wide pan has its middle further from the rim.
