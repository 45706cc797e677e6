line =
    Go by the refractometer: 75 °Brix is 75 % solids at any height, while the boiling temperature that goes with it { $side ->
        [above] falls by { $drop } { $at }.
       *[other] falls with every climb.
    }
paragraph =
    Sugar content is what makes a fruit paste or a syrup set and keep; the temperature only stands for it, because syrup
    boils hotter the less water is left. { $boils } A card's temperature is lowered by as much, its Brix is not. Cool the drop
    on the prism to room temperature before you read it, or use one that corrects for heat. For preserves in jars a tested
    recipe still decides.
equations = { $boiling_equation }
