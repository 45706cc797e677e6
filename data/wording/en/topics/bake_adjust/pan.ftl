label = Fill of the pan
step =
    Fill the pan { $full ->
        [half] half
       *[two-thirds] two thirds
    } full.
headline =
    Fill the pan { $full ->
        [half] half
       *[two-thirds] two thirds
    } full for { $baked } at { $place }.
larger = The larger, { $tin }, filled half full for { $baked } at { $place }.
