line =
    { $side ->
        [above] By the gas fitters' rule a burner keeps { $gas_kept } % of its sea-level heat { $at }, while electric
            and induction keep it all.
       *[other] A gas burner keeps its full heat { $at }; the gas fitters' rule takes { $gas_step } % off for each
            1,000 ft, above { $gas_loss_starts }.
    }
paragraph =
    A flame can burn only as much gas as there is oxygen for. The rule takes { $gas_step } % off the rating for each
    1,000 ft (300 m) above sea level, once the place is over { $gas_loss_starts }{ $side ->
        [above] , which leaves { $gas_kept } % { $at }.
       *[other] , which leaves { $gas_kept } % { $at }.
    } It shows in woks, grills and big stockpots that come to the boil late. It hardly shows at a simmer, where any
    burner has heat to spare. Induction and electric elements need no air and give what is on the plate. { $side ->
        [above] So spread a big batch over two pots, preheat longer, and have the burners fitted for the elevation.
       *[other] So nothing is to be done about it here.
    }
equations = Heat kept = { $gas_kept } %: { $gas_step } % a thousand feet of elevation, from { $gas_loss_starts } up.
gas-kept-label = Heat a gas burner keeps
caution =
    Have gas burners fitted by a licensed gas fitter. A yellow, sooty flame means carbon monoxide: turn it off and air
    the room.
belief-loses-power = By the gas fitters' rule a burner keeps { $gas_kept } % of its heat { $at }.
belief-induction-same = Induction and electric plates need no air, so they give all of their heat.
