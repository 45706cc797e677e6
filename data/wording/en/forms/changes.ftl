# $and_time, $and_oven: the messages of that name, or nothing.
heat =
    { $thing ->
        [oven] { $way ->
            [same] the oven stays at { $temp } for { $doing } at { $place }, as at { $baseline }{ $and_time }.
           *[moved] set the oven to { $temp } for { $doing } at { $place }, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
        [fat] { $way ->
            [same] the fat stays at { $temp } for { $doing } at { $place }, as at { $baseline }{ $and_time }.
           *[moved] hold the fat at { $temp } for { $doing } at { $place }, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
        [pan] a pan is as hot as the burner makes it, { $temp } for { $doing } at { $place } as at { $baseline }{ $and_time }.
        [grate] the grate stays at { $temp } for { $doing } at { $place }, as at { $baseline }{ $and_time }.
        [smoker] the smoker stays at { $temp } for { $doing } at { $place }, as at { $baseline }{ $and_time }.
        [bath] { $way ->
            [same] the bath stays at { $temp } for { $doing } at { $place }, as at any elevation under its boil{ $and_time }.
           *[moved] the bath at { $place } goes no higher than { $temp }, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
        [hold] hot food is held at { $temp } or hotter at { $place } as at any elevation.
        [water] { $way ->
            [same] the water for { $doing } at { $place } is { $temp }, as at { $baseline }{ $and_time }.
           *[moved] the water for { $doing } at { $place } is { $temp }, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
        [inside] { $way ->
            [same] it is { $temp } inside the pressure cooker at { $place }, as at { $baseline }{ $and_time }.
           *[moved] it is { $temp } inside the pressure cooker at { $place }, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
        [liquid] { $way ->
            [same] the liquid stands at { $temp } at { $place }, as at { $baseline }{ $and_time }.
           *[moved] the liquid stands at { $temp } at { $place } whatever the burner, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
        [core] { $way ->
            [same] { $doing } { COUNT($doing) ->
                [many] are
               *[one] is
            } done at { $temp } in the centre at { $place }, as at any elevation.
           *[moved] { $doing } { COUNT($doing) ->
                [many] are
               *[one] is
            } done at { $temp } in the centre at { $place }, { $moved } { $way } than at { $baseline }.
        }
        [stage] { $way ->
            [same] { $stage } is { $temp } at { $place }, as at any elevation.
           *[moved] { $stage } is { $temp } at { $place }, { $moved } { $way } than at { $baseline }.
        }
       *[boil] { $way ->
            [same] water boils at { $temp } at { $place }, as at { $baseline }{ $and_time }.
           *[moved] water boils at { $temp } at { $place } whatever the burner, { $moved } { $way } than at { $baseline }{ $and_time }.
        }
    }
and-time = ; it takes { $way ->
        [longer] longer
       *[shorter] less time
    }, about { $here } instead of { $base }

time =
    { $way ->
        [same] about { $here } for { $doing } at { $place }, as at { $baseline }{ $and_oven }.
       *[other] { $pace }, { $here } instead of { $base }, for { $doing } at { $place }{ $and_oven }.
    }
and-oven = { $way ->
        [same] ; the oven stays as it is
       *[moved] ; the oven is set to { $setting }
    }
factor =
    { $way ->
        [same] as long for { $doing } at { $place } as at { $baseline }.
       *[other] { $pace } for { $doing } at { $place }: multiply your time at { $baseline } by { $factor } ({ $low } to { $high }).
    }
microwave =
    { $way ->
        [longer] the power is the same, but start from the longest time given, { $start }: { $here } in all at { $place }.
       *[same] the power is the same; at { $place } start just under the shortest time given, { $start }, and add half a minute at a time.
    }
