change = Change of { $item }
headline =
    Use up to { $most } % more { $item } for { $baked } at { $place }, half a teaspoon to the tablespoon, and keep it at a full bubble for a
    minute or two.
direct-heat = Cook it over direct heat, stirred, and not over a double boiler, which stays too cool here.
other-starch = Tapioca or potato starch thickens at less heat than cornstarch or flour.
because = Starch thickens fully only near the boil, and water boils at { $boil } here.
