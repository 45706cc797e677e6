# $times: one for each yolk that is asked for, worded by the message below.
headline = At { $place } boil eggs from the fridge { $times }.
for-a-yolk =
    { $time } for a { $yolk ->
        [soft] soft
        [medium] medium
       *[hard] hard
    } yolk
yolk-label =
    { $yolk ->
        [soft] Soft
        [medium] Medium
       *[hard] Hard
    } yolk, from the fridge, smaller to larger eggs
sets = The yolk sets at the same temperature everywhere.
pace =
    Water at { $water } drives heat to the yolk { $way ->
        [slower] slower: { $percent } % more
       *[faster] faster: { $percent } % less
    } time than at { $baseline } for { $yolk ->
        [soft] a soft
        [medium] a medium
        [hard] a hard
       *[same] the same
    } yolk.
sizes =
    The range covers the size of the egg: a medium egg takes { $medium } % less than a large one, an extra large
    { $extra_large } % more, and eggs at room temperature { $room } % less.
maths =
    t = 0.451·{ $grams }^(2/3)·ln(0.76·({ $water } − 4)/({ $water } − { $yolk })) = { $minutes } min to the edge of the
    yolk.
full-boil = Lower the eggs into water at a full boil and start the clock.
cold-water = Put them in cold water when the time is up, or they go on cooking.
published =
    Extension advice is more generous: a three-minute egg may take five at 5,000 ft. By heat alone the three minutes
    become { $time } here, so open one egg to be sure.
sauce-safety = Use pasteurised eggs, or bring it to { $safe }: barely cooked egg can carry salmonella.
safety =
    The safe egg has a firm white and a firm yolk, at every elevation; for small children, the old, the pregnant and the
    ill serve no runny yolk.
