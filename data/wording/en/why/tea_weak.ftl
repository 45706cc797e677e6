line =
    { $side ->
        [above] Black tea wants boiling water and { $at } that is only { $boil }, so the leaves give less in the
            same time.
        [level] Black tea wants boiling water, and { $at } that is { $boil }, as hot as it should be.
       *[below] Black tea wants boiling water, and { $at } that is { $boil }, hotter than at sea level.
    }
paragraph =
    Leaves give up colour and taste faster in hotter water, and black tea is made at the full boil. { $boils }
    { $side ->
        [above] So the same leaves in the same minutes give a thinner cup. Steep longer or use more leaf, and warm
            the pot first.
       *[other] So steep as the packet says.
    } Green tea is made at { $green_tea }, well under the boil, so it does not change. Even the tasters' standard
    for comparing teas, which steeps black leaf for six minutes in boiling water, asks for the altitude to be
    reported where it matters.
equations = { $boiling_equation }
belief-no-proper-tea = Black tea comes out thinner at { $boil } and wants more leaf and time; green tea is as it was.
belief-boil-longer =
    Water gets no hotter by boiling on: { $at } it stops at { $boil }, so use it straight off the boil, warm the pot and give
    the leaves more time.
