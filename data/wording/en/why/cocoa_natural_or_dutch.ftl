line =
    Natural cocoa, with soda, for a cake that sinks: its acid helps the crumb set sooner; Dutch-process goes with baking
    powder alone.
paragraph =
    Natural cocoa is acid and uses up the soda; an acid batter sets a little earlier, which is what a cake that caves in
    wants. Dutch-process has had its acid taken away, so soda has nothing to work on and tastes of soap. Do not swap one
    for the other without changing the leavening. { $gas_swells } Whichever you take, the first thing to cut is the soda or
    powder, before the sugar.
equations = { $gas_equation }
