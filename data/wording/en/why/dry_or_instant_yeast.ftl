line =
    Either, since height does not choose between them: instant is mixed in dry, a quarter less of it than of active dry, and
    a third of the weight of fresh.
paragraph =
    What swells is the gas, and it is the same gas from all of them. { $gas_swells } So cut whichever you use by about a quarter
    up high, use cooler water, and stop the rise at double by eye. For very sweet dough a yeast made for sugar is worth having
    anywhere.
equations = { $gas_equation }
