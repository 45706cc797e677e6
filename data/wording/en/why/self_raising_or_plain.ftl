line =
    Plain flour with your own baking powder: what is mixed into self-raising flour cannot be taken out again.
paragraph =
    Self-raising flour holds about 1½ tsp of powder to 1 cup (120 g), 2 tsp or so to 150 g by some makers. { $gas_swells } With
    plain flour and 1 to 1¼ tsp of powder a cup you can step down a quarter at a time. If you must use self-raising, replace a
    third of it by plain, and leave out the powder that the recipe adds besides.
equations = { $gas_equation }
