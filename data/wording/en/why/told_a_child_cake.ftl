line =
    A cake is full of tiny balloons: { $side ->
        [above] the air squeezes them less { $at }, so the same gas makes them { $gas_ratio } times as big, and they burst before
            the cake has set.
       *[other] on a mountain the air squeezes them less, so they grow too big, burst before the cake has set hard, and the middle
            sinks.
    }
paragraph =
    The batter has to turn from soup to sponge before the balloons burst. { $gas_swells } So bakers put in a little less baking
    powder, less puff in each balloon, and a hotter oven that sets the sponge sooner.
equations = { $gas_equation }
