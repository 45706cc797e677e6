line =
    A bag keeps the taste in but lets no more heat through: food in it is as hot as its water, at most { $boil } { $at }, and takes
    as long.
paragraph =
    { $boils } Heat has to get through the same thickness of food whether it lies bare in the water or in film. Air left in the
    bag even slows it, and makes it float. What a bag does is to keep in what would have gone into the water. For speed cut it smaller
    or use a pressure cooker.
equations = { $boiling_equation }
belief-faster = Food in a bag is as hot as its water and no hotter, at most { $boil } { $at }, so it takes as long.
