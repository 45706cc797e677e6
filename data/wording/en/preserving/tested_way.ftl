# The tested process of a food, where another way to can it was refused.

water = The tested way for { $food }, by its own recipe: in a boiling-water canner at { $place }, { $each }.
pressure =
    The tested way for { $food }, by its own recipe: only in a vented pressure canner at { $place }, { $wanted }, { $each }.
