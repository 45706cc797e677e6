liquid =
    Water boils at { $boil } at { $place }, and a simmer lies a little under it. Liquids that are only warmed, to
    { $warmed } or less, stay.
