line =
    { $side ->
        [above] It is thin, dry air that dries dough { $at }, about { $drying_percent } % faster by the pressure alone, and not
            the sun's ultraviolet.
       *[other] It is dry air that dries dough, and not the sun's ultraviolet.
    }
paragraph =
    Ultraviolet light is stronger in the mountains and burns skin, but it hardly warms food, and none comes through a kitchen
    wall. Sun on the bowl warms the dough, so it rises sooner; thin, dry air takes its water. Cover the bowl and keep it out of
    the sun.
equations = { $drying_equation }
belief-dries-dough =
    { $side ->
        [above] It is the thin, dry air: a surface dries about { $drying_percent } % faster { $at } by the pressure alone; sun on
            the bowl only warms the dough, so cover it.
       *[other] It is dry air that takes the water; sun on the bowl only warms the dough, so cover it.
    }
