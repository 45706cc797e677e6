line =
    { $side ->
        [above] An open drink { $at } can hold only { $gas_percent } % of the gas that it holds at sea level, because
            the air over it presses that much less.
        [level] An open drink { $at } holds the gas it was made for; under thinner air it holds less.
       *[below] An open drink { $at } holds slightly more gas than at sea level.
    }
paragraph =
    How much gas stays dissolved goes by the pressure on the drink and by how cold it is. { $side ->
        [above] In the bottle nothing has changed, so when it is opened the step down is bigger: it gushes, foams and
            goes flat sooner.
        [level] When a bottle is opened the step down is the usual one.
       *[below] When a bottle is opened the step down is a little smaller.
    } Chill well, open slowly, pour down the side of a cold glass. { $side ->
        [above] Draught systems count from the outside air, so turn the regulator up, about 1 psi (7 kPa) for each
            2,000 ft (600 m), to keep the same fizz.
       *[other] Draught systems need no correction here.
    } Batters with beer or soda water lose their gas sooner, so fry them at once.
equations = Henry's law: gas held goes with the pressure, here { $gas_percent } % of sea level.
fizz-kept-label = Gas an open drink holds against sea level
belief-goes-flat = An open drink holds { $gas_percent } % of the gas { $at } that it holds at sea level.
