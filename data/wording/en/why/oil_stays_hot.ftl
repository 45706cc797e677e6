line =
    Oil does not boil in the pan, so it gets as hot { $at } as the flame makes it and smokes where it always does;
    only the water in the food boils cooler.
paragraph =
    Air pressure decides where water boils. Frying oil never comes near its own boil, so its temperature and its smoke
    point stay where they are. { $boils } Inside a chip or a doughnut there is water, and that is held at { $boil }
    until it has gone. { $side ->
        [above] So the inside cooks more slowly while the crust browns at the usual pace, which is why doughnuts and
            thick pieces are fried a little cooler.
       *[other] So inside and crust are done together, as the recipe says.
    } A thermometer in the oil tells the truth at any elevation.
equations = { $boiling_equation }
caution = Hot oil catches fire. Keep it under its smoke point, a lid at hand, and never leave it.
belief-smokes-lower = Smoking is the oil breaking down by its own heat, so it smokes where it does anywhere.
belief-boils-lower =
    Frying oil never boils in the pan, so it gets as hot as you make it; only the water in the food boils cooler.
