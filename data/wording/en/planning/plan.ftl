# A menu worked back from service: `simmerline schedule`.

title =
    { $named ->
        [yes] Schedule for { $title }
       *[no] Schedule
    }
# $weekday: Monday 0
day =
    { $weekday ->
        [0] Monday
        [1] Tuesday
        [2] Wednesday
        [3] Thursday
        [4] Friday
        [5] Saturday
       *[6] Sunday
    }, { $month ->
        [1] January
        [2] February
        [3] March
        [4] April
        [5] May
        [6] June
        [7] July
        [8] August
        [9] September
        [10] October
        [11] November
       *[12] December
    } { $day }
served-at = service { $day }, { $time } ({ $zone })
kitchen =
    { $ovens ->
        [one] 1 oven
       *[other] { $ovens } ovens
    } of { $shelves } shelves, { $burners ->
        [one] 1 burner
       *[other] { $burners } burners
    }, { $cooks ->
        [one] 1 cook
       *[other] { $cooks } cooks
    }
column-begin = Begin
column-till = Till
column-dish = Dish
column-what = What
column-where = Where
serve = Serve.

# $how: counted back, placed one after the other, or solved for the least waiting
fits =
    { $how ->
        [counted] It fits: each dish is ready at service, counted back.
        [solved] It fits: some dishes are ready a little early, within what they keep, so that oven, burners and hands suffice.
       *[placed] It fits: some dishes are ready a little early, within what they keep. They were placed one after the other; a plan with less waiting may exist.
    }
fits-not =
    It does not fit: { $count ->
        [one] 1 dish has
       *[other] { $count } dishes have
    } to be ready longer before service than good. This is the least bad plan found{ $how ->
        [solved] .
       *[placed] {" "}by placing one dish after the other; a better one may exist.
    }
thing =
    { $thing ->
        [oven] ovens
        [burner] burners
        [hands] hands
        [cooker] pressure cookers
        [crock] slow cookers
        [bath] water baths
        [fryer] fryers
       *[smoker] smokers
    }
late-heading = What does not fit
late-line = { $dish }: ready { $ready }, { $early } before service, and it keeps { $keeps }. Short of { $things }.
late-ways = Have one more of what is short, or serve something else. What stands being heated again is cooked ahead, chilled to { $cool } within { $first } and to { $cold } within { $chill }, and heated to { $reheat }.
past-heading = Too late to begin
past-line = { $dish } should be on already: begun now it is ready at about { $ready }. Serve it late, serve something else, or move the service.

waits-heading = Ready, and how it waits
# $sooner, $later: how far the range goes each way, "" where it does not; $end: of the range that is planned by
waits-line =
    { $dish }: ready { $ready }, planned by the { $end ->
        [long] long end
       *[middle] middle
    } of its range{ $quick ->
        [yes] ; it may be ready { $sooner } sooner
       *[no] {""}
    }{ $slow ->
        [yes] {" "}or take { $later } more
       *[no] {""}
    }. { $way ->
        [hot] { $keeps ->
            [no] It does not wait.
           *[yes] It waits covered at { $hot } or hotter, at its best { $most }.
        }
        [cold] It waits at { $cold } or colder, up to { $most }.
       *[room] It waits at room temperature, up to { $most }.
    }
care-heading = Take care
notes-heading = Read so
clocks = The clocks are changed between the first step and service; every time is what the clock then shows, and the stretches are as long as they have to be.
left-out-heading = Left out
a-recipe = Line { $line }: "{ $text }" tells no time of cooking in its steps; it was left out.
no-time = Line { $line }: no time is known for "{ $text }"; it was left out.
lacks =
    { $dish } was left out: it needs { $thing ->
        [oven] an oven
        [burner] a burner
        [hands] a cook
       *[other] equipment
    }, and there is none.
empty = There is nothing to schedule.
too-many-loads = { CAPITAL($dish) }: { $loads } loads of an oven with { $shelves } shelves are more than one service takes; give it more ovens, or fewer covers.
foot = Stages and their ranges as in answers to questions. What bakes at a like heat shares the shelves of an oven, a full-size sheet on each; each pot has a burner. Cutting and weighing before, and plating, are not in it. Go by the thermometer and by how it looks.

# the picture and the calendar
event = { $dish }: { $stage ->
        [soak] soak
        [rise] mix and rise
        [parboil] parboil
        [heat_up] get it up to heat
        [cook] cook
        [release] release pressure
        [slack] ready
       *[rest] rest
    }
service-event =
    { $named ->
        [yes] Service: { $title }
       *[no] Service
    }
legend = grey: cooking; hatched: getting up to heat; white: rest, cooling, soak, rise; dotted: waits for service; black below: hands needed; name in bold: does not fit
