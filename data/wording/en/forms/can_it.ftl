sugar = a syrup gets hotter as its water leaves, so { $asked } is in reach at { $place }; only the stages come at lower readings.
# $of: crumb (bread, cake, a potato), pressure, or water
reach = { $fits ->
        [yes] { $of ->
            [pressure] { $gauge } reaches { $inside } inside at { $place }, so { $asked } is in reach.
           *[water] water boils at { $boil } at { $place }, so { $asked } is in reach.
        }
       *[no] { $of ->
            [crumb] wet inside, { $food } { COUNT($food) ->
                [many] stop
               *[one] stops
            } at about { $top } at { $place } and never { COUNT($food) ->
                [many] read
               *[one] reads
            } { $asked }: done is { $done }.
            [pressure] { $gauge } reaches only { $inside } inside at { $place }.
           *[water] water boils at { $boil } at { $place }, and nothing wet gets hotter in an open pot; a pressure cooker at { $gauge } reaches { $inside }.
        }
    }
# $time: the message takes, or nothing
cooks = { $fits ->
        [yes] water boils at { $boil } at { $place }, and { $food } { COUNT($food) ->
            [many] cook
           *[one] cooks
        } from about { $needs }{ $time }.
       *[no] water boils at { $boil } at { $place }, and { $food } { COUNT($food) ->
            [many] want
           *[one] wants
        } about { $needs }.
    }
takes = , so it only takes longer, about { $time }
in-heat = an oven, fat or a fire is as hot at { $place } as anywhere; { $time } for { $doing }.
under-pressure = Under pressure, at { $gauge }: about { $time }.
# time: a Measure
tender = It comes tender below that all the same, only later: about { $time }.
