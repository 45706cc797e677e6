one-at-a-time =
    Change one thing at a time, in this order: leavening, sugar, liquid, then the rest. Keep a note of each batch.
overflow = Pan overflow: fill half full, and set a sheet pan beneath for the first batch.
beyond-tables =
    The published tables end at { $top }; above it leavening goes by the gas law and the rest keeps the last step. Dry gas alone would take { $percent } % of
    the leavening off at { $highest }: bake a small trial before the batch.
no-unit = No unit is given, so these stay as they are: { $lines }.
listed-twice = Listed more than once, and counted each time: { $lines }.
glass = In a glass pan leave the oven at the recipe's setting: glass already browns the edges.
never-soft =
    Below { $threshold } dried beans soften only very slowly, and old ones may never get there. Use a pressure cooker.
# known: whether a table says how long it takes under pressure
quick-way = The quick way here: a stove-top pressure cooker at { $gauge } does it{ $known ->
        [yes] { " " }in { $time }, after it has come to pressure
       *[no] { "" }
    }. Follow its maker's instructions.
kidney-beans = Kidney beans and their like: soak, then boil hard for at least 10 minutes before any slow cooking.
pressure-cooker =
    Never fill a pressure cooker past two thirds, half for beans and grains; keep the vent clear and let the pressure fall
    before opening.
hot-fat = Hot fat: never past half the pot, a lid within reach, and no water near it.
season = Food can taste flatter up here; taste and season at the end.
divided = Divide the new amount of { $items } in the shares the recipe has.
no-style =
    This fits no style known here, so the formula stays; only simmering, sugar and hot fat are converted. Name the style to
    convert the rest.
general-bake =
    This is like no kind of bake known here, so its changes are general ones for all that rises: less leavening, a slightly
    hotter oven and a shorter bake. Watch the first one, and name the style to convert the rest.
# $kind is dry or cold: what kind of heat the recipe uses
nothing-changes = { $kind ->
    [dry]
        Nothing changes, because ovens, pans and grills give off the same heat in thin air, and nothing here has to rise or
        to soften in boiling water.
   *[cold] Nothing changes, because nothing here boils, rises or bakes.
}
