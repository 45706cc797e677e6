line =
    { $side ->
        [above] Baking powder and soda lift more { $at }: by pressure alone, about { $gas_percent } % of the gas
            does the same job.
        [level] The recipe's leavening is right { $at }; higher up the same gas takes more room, so less of it is
            needed.
       *[below] The recipe's leavening is right { $at }, or a touch low: the air presses a little harder on the gas.
    }
paragraph =
    Powder and soda make the same gas everywhere; what changes is the room it takes. { $gas_swells } { $side ->
        [above] So { $gas_percent } % of the leavening would fill a cake as before. The tested tables land near
            that: an eighth off at { $cakes_show_it } and a quarter off by { $quarter_off }.
        [level] The tested tables begin to take some away at { $cakes_show_it }.
       *[below] No tested table changes the leavening below sea level, and the difference is too small to weigh.
    } It is the first thing to change, since it does the most. Where soda has buttermilk or other acid to
    neutralise, keep enough for that.
equations = { $gas_equation }
belief-always-halved =
    How much goes depends on the elevation and the recipe: from nothing at low heights to a quarter or a half high up,
    and yeast is another matter.
belief-more-of-it =
    It is the other way: gas swells more in thin air, so by pressure alone about { $gas_percent } % of the powder or soda does
    the same job { $at }.
