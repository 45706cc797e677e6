with-the-oven = With the { $way ->
        [up] hotter
       *[down] cooler
    } oven the time comes out about { $percent } % { $change ->
        [shorter] shorter
       *[longer] longer
    }. Look in at the early end, and test before you take it out.
