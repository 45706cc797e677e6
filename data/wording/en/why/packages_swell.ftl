line =
    { $side ->
        [above] A pack closed at sea level keeps sea-level air inside, which pushes out with { $pack_push } { $at },
            so bags blow up and lids dome.
        [level] A pack swells when it is carried higher than where it was closed; { $at } one from the same level
            stays flat, with { $pack_push } between inside and outside.
       *[below] A pack closed at sea level is pressed in { $at } by { $pack_push }, so bags look limp.
    }
paragraph =
    The air outside thins as a truck climbs, and the air in the bag does not. { $gas_swells } { $side ->
        [above] Crisps, coffee, yogurt and spice jars all do it and are no worse for it: open them slowly, away from
            your face, and keep liquids below the rim.
       *[other] It goes away again lower down.
    } A swollen tin, or a jar that swells while it stands in your store, is another thing. That is gas of spoilage,
    and it goes in the bin unopened.
equations = Push = 101,325 − p = { GROUPED($pack_push, 0) } Pa.
pack-push-label = Between inside and outside
caution = A can or jar that swells without having been carried uphill is spoiled. Do not open it and do not taste it.
