label = Reheat to
within-label = Within
packed-label = Food from a sealed commercial pack
leftovers = leftovers
headline = Reheat { $food } to { $temperature } in the centre within { $within }, the same at any elevation.
fast = Heat it fast, in a thin layer or a wide pan, stirring; soups and sauces to a full boil.
microwave = In a microwave cover and stir it, and let it stand 2 min before you read the thermometer.
once = Reheat once, and only what you will serve.
too-slow =
    Do not reheat in a slow cooker, a steam table or a warming drawer: they pass too slowly through the range where germs
    grow.
