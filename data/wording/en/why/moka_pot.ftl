line =
    { $side ->
        [above] It is not broken: { $at } water boils at { $boil } and the air pushes back less, so it runs sooner and
            cooler; keep the flame low and take it off at the first gurgle.
        [level] A moka pot sputters when the water below runs out, { $at } as it was made to; higher up that comes sooner.
       *[below] A moka pot sputters a touch later { $at }, where water boils at { $boil }.
    }
paragraph =
    Steam and warm air over the water in the lower chamber push it up through the coffee, against the air outside, { $pressure }. { $boils } { $side ->
        [above] So less heat does it: the water passes the coffee a few degrees cooler and faster, and what is left turns
            to steam, which sputters.
       *[other] So it works as it was built to.
    } Fill to below the valve, grind a little finer but do not press the coffee down, and start with hot water, so that the
    grounds do not scorch while it heats. A pot that leaks at the seam or hisses at the valve wants a new ring; sputtering
    at the end is no fault.
equations = { $boiling_equation }
caution = Never block the valve or press the coffee hard: the lower chamber is under pressure.
