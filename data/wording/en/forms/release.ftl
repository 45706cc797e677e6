# How the pressure is let go, said before or behind the time. $way: meat, foams, quick, or any where no dish was named.
how = { $way ->
        [meat] Natural release for { $food }: off the heat, let the pressure fall by itself for { $time }, then vent what is left. A quick release boils the juices out of meat and leaves it tougher.
        [foams] Natural release for { $food }: let the pressure fall by itself for { $time }, then vent the rest in short bursts. A quick release makes what is starchy or brothy foam and spit through the valve, and splits beans.
        [quick] A quick release is right for { $food }: { COUNT($food) ->
            [many] they
           *[one] it
        } would go on cooking while the pressure fell. Keep hands and face out of the steam.
       *[any] Natural release for meat, beans, grains, soup and all that foams; quick release for vegetables, eggs and fish, which would go on cooking. The elevation does not change which.
    }
