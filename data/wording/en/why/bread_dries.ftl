line =
    { $side ->
        [above] Bread dries about { $drying_percent } % faster { $at }, more where the air is dry, because vapour
            gets away sooner through thin air.
        [level] Bread dries at its usual pace { $at }; higher up thin, dry air takes its moisture sooner.
       *[below] Bread dries about { $drying_percent } % more slowly { $at } in equally damp air.
    }
paragraph =
    A loaf loses water in the oven, on the rack and on the shelf. { $boils } The crumb stops there until it is dry.
    { $side ->
        [above] Around the loaf vapour gets away about { $drying_percent } % faster, and flour that was dry to begin
            with held less.
        [level] It goes as the recipe expects.
       *[below] Around the loaf vapour gets away about { $drying_percent } % more slowly.
    } { $side ->
        [above] Make the dough a little wetter, bake with steam, and take the loaf out by its inside temperature.
       *[other] Bake with steam, and take the loaf out by its inside temperature.
    } Wrap it as soon as it is cold, or freeze what will not be eaten today.
equations = { $drying_equation }
belief-stales-faster =
    It dries out faster in thin, dry air, which feels like staling; real staling, starch setting firm, goes at its
    usual pace.
