caution =
    The centre must reach { $temperature } by thermometer{ $rest ->
        [rested] , then let it rest { $time }.
       *[at_once] .
    } That holds at every elevation.{ $kind ->
        [wild_game] { " " }Freezing does not make it safe.
       *[other] { "" }
    }
