rinse-label = Final rinse at least
plate-label = Which gives on the plate
sink-label = Sanitising sink, 30 s
headline =
    A machine's final rinse stays at { $rinse } or more and a sink at { $sink } for 30 s; { $way ->
        [reached] the boil here is { $room } above that.
       *[out_of_reach] water boils at { $boil } here, under that: use chemical sanitiser.
    }
flashes =
    A machine may run its rinse up to { $ceiling }; here that is at the boil, and it comes out as steam, which does not
    sanitise. Have it set lower.
because =
    Heat sanitises by temperature, not by bubbles, so the targets do not move with elevation. A pot that boils is only as
    hot as the air allows, { $boil } at { $place }: put a thermometer in it.
maths = Water boils under { $rinse } above { $above }.
