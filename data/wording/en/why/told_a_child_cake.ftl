line =
    A cake is full of tiny balloons: { $side ->
        [above] up here the air squeezes them less, so the same puff of gas makes them { $gas_ratio } times as big { $at }, they burst
            before the cake has set hard, and the middle sinks.
       *[other] on a mountain the air squeezes them less, so they grow too big, burst before the cake has set hard, and the middle
            sinks.
    }
paragraph =
    The batter has to turn from soup to sponge before the balloons burst. { $gas_swells } So bakers put in a little less baking
    powder, less puff in each balloon, and a hotter oven that sets the sponge sooner.
equations = { $gas_equation }
