line =
    Canning times are read from the printed band for { $place } and never worked out, because only what is printed
    has been tested in jars.
paragraph =
    A canning time is the result of trials with probes in real jars, for one food, one jar and one band of
    elevation. How heat reaches the middle depends on the pack, the syrup and the headspace, and no formula on paper
    knows them. { $boils } That tells why the tables have bands, not what to do between them. Standing near the edge
    of a band, take the longer time or the higher pressure. A recipe without a tested time belongs in the
    refrigerator or the freezer.
equations = Boiling point { $at }: { FIXED($boil, 2) } °C. No equation replaces the printed band.
caution = { tested-recipes }
