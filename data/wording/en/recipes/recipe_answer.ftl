your-recipe = Your recipe
oven = Oven
# said: that the recipe does not say how much it makes
no-yield = { $said }. Say "double it", or how much it makes.
