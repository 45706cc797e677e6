line =
    { $side ->
        [above] The same leavening swells to { $gas_ratio } times the room { $at }, so a cake rises past what its
            crumb can hold, and sinks.
        [level] A cake that falls { $at } has too much leavening or sugar, or came out before it had set.
       *[below] A cake that falls { $at } is not falling for the elevation: look at leavening, sugar and the oven.
    }
paragraph =
    A cake is a race: the gas must lift the batter, and starch and egg must set around the bubbles before they
    burst. { $gas_swells } { $side ->
        [above] The bubbles grow and run together early, while setting takes the same heat as anywhere. The rise is
            handsome in the oven and the middle is gone on the rack.
        [level] If gas wins the race the middle sinks.
       *[below] So gas is the slower runner, and a cake is more likely to come out low than to fall.
    } From about { $cakes_show_it } up, take away some leavening first, then sugar, then add a little liquid, and
    try one change at a time.
equations = { $gas_equation }
