line = What is done sooner than the rest of the pot, or only has to warm, goes in at the end, so that all is ready at once.
paragraph =
    A pot is timed by its slowest part, and what is quick would be spoilt by then. Eggs that are cooked already only have to warm and
    take up the sauce: longer, and the white turns rubbery and the yolk grey. Tender vegetables fall apart, herbs lose their
    scent, and milk or cream may split. { $boils } Where the boil is cooler the slow part takes longer still, so count back from
    its end, and not from the clock of the recipe.
equations =
    { $boils } Add each thing its own time here before the slowest is done.
