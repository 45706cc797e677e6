line =
    Hardly, since what does not belong boils off again and the thermometer decides: about 150–175 g of water
    (a third of the weight) dissolves 500 g of sugar.
paragraph =
    A stage is how much water is left at the end, not how much there was. More water dissolves the sugar more surely and only
    costs minutes; too little leaves crystals on the wall that turn the batch grainy. { $boils } { $side ->
        [above] Water leaves a little sooner in thin air, so do not cut it; cook to the stage less { $drop }.
       *[other] The stage stands as printed.
    }
equations = { $boiling_equation }
