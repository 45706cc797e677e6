# danger: the ids of the dangers in lexicon/recipe_safety.toml
as-written = { $danger ->
    [lectin_slow_cooker]
        The { $food } go into a pot that never boils. Dried beans of this kind hold a poison that only a hard boil
        destroys, and gentle heat makes it worse: soak them, pour the water away, boil them hard in fresh water for 10
        minutes at the least, 30 to be sure, and only then cook them slowly. The times are left as written.
    [lectin_raw]
        The { $food } are never boiled in this recipe. Raw or barely heated they make people ill: soak them, pour the
        water away, and boil them hard in fresh water for 10 minutes at the least, 30 to be sure, before anything else
        is done with them.
    [garlic_in_oil]
        Garlic, herbs and vegetables in oil do not keep at room temperature: oil shuts out the air, and botulism spores
        grow there with no smell to warn you. Refrigerate it at once and use it within four days, or freeze it.
   *[honey_for_infants]
        No honey for a child under one year, cooked or not: it can hold spores that cause infant botulism. Leave it out;
        ripe banana or nothing sweetens as well.
}
core-too-low =
    { CAPITAL($food) }: { $figure } in the centre is too low. It must reach { $safe } by thermometer, at any elevation;
    the recipe's figure is left as written.
bath-too-short =
    { CAPITAL($food) }: a bath at { $figure } does not pasteurise it in the time given. The printed table asks
    { $least } at that heat for a piece of 30 mm (1 1/4 in); the figures are left as written.
bath-too-cool =
    { CAPITAL($food) }: a bath at { $figure } never pasteurises it. Take 140 °F (60 °C) or more by a printed table, or
    cook the centre to { $safe }; the figures are left as written.
low-acid =
    { CAPITAL($food) }: no boiling-water bath makes it safe, however long. It is low in acid, and botulism spores live
    through the boil at every elevation. It goes in a pressure canner by a tested recipe, or in the freezer. The process
    is left as written, not endorsed.
