batch-size =
    This is { $times } times the recipe. Keep to its pans and depth, and bake more or fewer of them; in one { $size ->
        [larger] larger
       *[smaller] smaller
    } pan or pot the time changes too, so go by the test of doneness.
mended =
    The data that this recipe was read from was broken at line { $line }, column { $column }, and was mended by guess:
    compare its ingredients and steps with the original.
half-a-recipe =
    { $lacks ->
        [steps] The data that this recipe was read from holds ingredients and no steps, so only the ingredients are converted.
       *[ingredients] The data that this recipe was read from holds steps and no ingredients, so only the steps are converted.
    }
