batch-size =
    This is { $times } times the recipe. Keep to its pans and depth, and bake more or fewer of them; in one { $size ->
        [larger] larger
       *[smaller] smaller
    } pan or pot the time changes too, so go by the test of doneness.
