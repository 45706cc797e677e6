line = A lemon's juice or a splash of vinegar moves the boil by about a hundredth of a degree: it stays at { $boil } { $at }.
paragraph =
    What is dissolved raises the boil by how much of it there is: 3 g of acid, the juice of a lemon, in a litre by 0.008 °C
    (0.014 °F). { $boils } What acid does change is the food: it keeps beans and potatoes firm and sets the whites of eggs.
equations = { $boiling_equation } ΔT = 0.512·3/192 = 0.008 °C for the juice of a lemon in a litre.
belief-moves-boil =
    The juice of a lemon in a litre raises it by about a hundredth of a degree, so water still boils at { $boil } { $at }; what acid
    changes is the food in it.
