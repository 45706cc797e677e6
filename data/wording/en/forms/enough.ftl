# Behind a verdict. $and_time, $and_dish: the messages of that name, or nothing.
cold = { $verdict ->
        [yes] { $asked } is cold enough: food keeps at { $most } or colder, at any elevation.
       *[no] { $asked } is too warm: food keeps at { $most } or colder, at any elevation.
    }
outdoors = { $asked } outside is no refrigerator: it warms and thaws as it likes, animals come to it, and a full pot stays warm for hours. Chill it in shallow pans within 2 h, and keep it at { $most } or colder.
outdoors-pot = Food that stood between 41 and 135 °F (5 and 57 °C) for more than 4 h, or for a time nobody knows, is discarded.
bath = { $reach ->
        [under] { $asked } is in reach at { $place }, where water boils at { $boil }{ $held ->
            [yes] ; a piece 25 mm (1 in) thick needs { $after } in it to be safe
           *[no] { "" }
        }.
       *[over] a bath at { $place } goes no higher than { $top }, since water boils at { $boil }.
    }
hold = { $asked } is in reach, since water boils at { $boil } at { $place }, and hot food is held at { $least } or hotter anywhere.
setting = { $fits ->
        [right] { $asked } is right for { $doing } at { $place }, as at sea level{ $and_time }.
        [moved] for { $doing } at { $place } set { $thing ->
            [fat] the fat
            [grate] the grate
            [smoker] the smoker
           *[oven] the oven
        } to { $here } where { $asked } is right at sea level{ $and_time }.
       *[off] { $asked } is { $way ->
            [low] low
           *[high] high
        } for { $doing }, at { $place } as anywhere: set { $thing ->
            [fat] the fat
            [pan] the pan
            [grate] the grate
            [smoker] the smoker
           *[oven] the oven
        } to { $here }{ $and_time }.
    }
and-time = , and give it { $time }
and-dish = ; { $time } for { $doing }
boil = { $stands ->
        [at] { $asked } is a full boil at { $place }, and water gets no hotter in an open pot{ $and_time }.
        [over] water boils at { $boil } at { $place } and gets no hotter in an open pot{ $and_time }.
        [simmer] { $asked } is a simmer at { $place }, where water boils at { $boil }{ $and_time }.
       *[under] { $asked } is short of the boil, { $boil } at { $place }{ $and_time }.
    }
combi = Nothing is broken: full steam is { $boil } at { $place }, whatever the display says, so { $asked } there is only what is set. Enter the
    altitude in its settings or let it calibrate itself; the service is needed only where its menu has no such thing.
stage = { $stands ->
        [reached] sugar gets to { $asked } at { $place } as anywhere, since its water boils off; but that is past { $stage }:
            stop at { $here }.
        [in] { $asked } is { $stage } at { $place }: { $here }.
        [over] { $asked } is past { $stage } at { $place }: take it to { $here }.
       *[under] { $asked } is short of { $stage } at { $place }: take it to { $here }.
    }
stage-moves = { $moves ->
        [yes] the { $asked } of { $baseline } is { $here } at { $place }.
       *[no] { $asked } stays { $asked } at { $place }.
    }
gauge = { $cooler ->
        [no] { $gauge } reaches { $inside } inside at { $place }, as at { $baseline }{ $and_time }.
       *[yes] { $gauge } reaches only { $inside } inside at { $place }, against { $there } at { $baseline }; { $needed } would match it{ $and_time }.
    }
time = { $fits ->
        [short] { $planned } is short; { $here } for { $doing } at { $place }.
        [early] { $planned } is the early end; { $here } for { $doing } at { $place }.
        [right] { $planned } will do; { $here } for { $doing } at { $place }.
       *[more] { $planned } is more than it takes; { $here } for { $doing } at { $place }.
    }
safe-by = No clock makes it safe: { $of ->
        [filling] a filling of raw meat
       *[middle] the middle
    } must read { $core }, at any elevation.
by-factor = { $way ->
        [longer] { $planned } at { $place } does what { $there } does at { $baseline }: everything takes about { $factor } times as long.
       *[same] { $planned } does at { $place } what it does at { $baseline }.
    }
# $stays: whether the reading is that of the food's own setting, which no elevation moves
reading = { $stands ->
        [in] { $asked } is done for { $food } at { $place }: { $done }
        [over] { $asked } is more than { $food } { COUNT($food) ->
            [many] need
           *[one] needs
        } at { $place }: done is { $done }
       *[under] { $asked } is short for { $food } at { $place }: done is { $done }
    }{ $stays ->
        [yes] , as at any elevation; it is not scaled down with the boil.
       *[no] .
    }
