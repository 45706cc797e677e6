# $title is what the recipe is called, or your-recipe.

your-recipe = Your recipe
# $way is less, more, hotter, cooler, longer, shorter, lower, higher; $what a part of a formula or of its baking
change = { $way } { $what ->
        [sugar_temp] sugar temperature
        [fat_temp] fat
        [proof] rise
        [temperature] reading inside
       *[other] { $what }
    }
changed = { $title }, from { $baseline } to { $place }: { $changes }.
unchanged = { $title }, from { $baseline } to { $place }: nothing in it has to change.
for-canning =
    { $title } is a recipe for canning and is not converted: a tested recipe's own table decides at { $place }.
for-canning-but-gel =
    { $title } is a recipe for canning and is not converted, but for its gel point: a tested recipe's own table decides at
    { $place }.
not-safe = Not safe as written: { $why }
by-batches = { $fault }. Say "double it", or how much it makes.
oven-label = Oven
