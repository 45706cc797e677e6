line =
    A slow cooker creeps up to just under the boil, which is { $boil } { $at }{ $side ->
        [above] , so everything in it softens more slowly.
        [level] ; higher up it ends cooler and everything softens more slowly.
       *[below] , so it is no slower than at sea level.
    }
paragraph =
    A slow cooker has a small heater, and low and high end near the same simmer; high only gets there sooner.
    { $boils } { $side ->
        [above] { $slow_cooker_reaches ->
                [yes] The published advice to hold the food at { $slow_cooker_advised } or more can be met, but only
                    just under the boil.
               *[no] The published advice to hold the food at { $slow_cooker_advised } cannot be met there, since
                    that is over the boil.
            } So run it on high for the first hour, and plan on more hours.
       *[other] So the times in its book hold.
    } Leave the lid on, since each look costs a quarter of an hour or more. Beans are the worst case and do better
    in a pressure cooker.
equations = { $boiling_equation }
caution =
    Never start frozen meat in a slow cooker, check meat with a thermometer, and soak kidney beans, throw the water
    away and boil them for at least ten minutes first: a slow cooker may not destroy their poison.
