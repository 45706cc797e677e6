line =
    { $side ->
        [above] Flour and egg are the walls of the bubbles, and { $at } the gas pulls harder on them.
        [level] The recipe's flour and eggs are right { $at }; higher up the gas pulls harder on the walls they
            make.
       *[below] The recipe's flour and eggs are right { $at }; only above sea level do the walls need strengthening.
    }
paragraph =
    A crumb is gas held in walls of starch and protein. { $gas_swells } { $side ->
        [above] The walls stretch further and earlier, so they need to be stronger. A spoon or two more flour
            thickens them, and an extra-large egg for a large one adds protein and liquid together.
        [level] The walls hold as written. Higher up a spoon or two more flour, or a larger egg, makes them
            stronger.
       *[below] The walls hold as written.
    } Fat and sugar do the opposite, which is why rich cakes give the most trouble. Too much flour makes a dry,
    tough crumb, so go by the spoon.
equations = { $gas_equation }
belief-egg-alone =
    An extra egg does set the crumb sooner, but it does not take away the gas { $at }. Cut the baking powder by
    an eighth to a quarter first, then a spoon or two of sugar a cup; the oven goes up by 15–25 °F (8–14 °C) at most.
