# $stage: soak, rise, heat_up, cook, release, rest or slack

headline = Start { $food } { $time } before service at { $place }.
start-before-service = Start before service
label =
    { $stage ->
        [soak] Soak
        [rise] Mix and rise
        [parboil] Parboil
        [heat_up] Get it up to heat
        [cook] Cook
        [release] Release
        [slack] In hand
       *[rest] Rest
    }
# $when: how long before service, or the time of day
step = { $when }: { $step }
before-service = { $time } before service
start-cooking = Start the cooking: { $time }.
heat-through =
    { $way ->
        [wet] Heat it through, unopened where it comes in a pouch: { $time }, till the middle is hot.
       *[dry] Heat it through, covered: { $time }, till the middle is hot.
    }
parboil = Parboil it { $time }, drain it, and let it steam dry.

counted-back = Counted back from service: { $stages }.
stage =
    { $stage ->
        [soak] soak
        [rise] rising
        [parboil] parboiling
        [heat_up] getting up to heat
        [cook] cooking
        [release] release of pressure
        [slack] time in hand
       *[rest] rest
    } { $time }
# $end: of the range, that one plans by
planned-by =
    { $end ->
        [long] Planned by the long end of the cooking, since this loses nothing by waiting hot.
        [slack] Planned by the middle of each range, with your time in hand for a slow one.
       *[middle] Planned by the middle of each range, since it does not wait well.
    }
ready-early = Ready early? Keep it covered at { $hot } or hotter till service.
sea-level-time = The cooking time is the usual one at sea level; go by a thermometer and by how it looks.
ready-and-hold = It is ready: keep it hot, { $time } in hand.

# several dishes
menu = Before service at { $place }: { $lines }.
menu-line = { $food } { $time }
menu-because = Each line is when that dish is first put to the heat; what waits well is planned by its long end.
of-dish = { CAPITAL($food) }. { $step }
of-caution = { CAPITAL($food) }: { $caution }
# $step: what comes before the cooking, empty where nothing does; $ranges: whether $span is a range; $kept: whether it is kept hot
fire = Fire { $food }. { $step } It cooks about { $time }{ $ranges ->
        [yes] {" "}({ $span })
       *[no] {""}
    }{ $kept ->
        [yes] , then is kept hot { $hold }.
       *[no] .
    }
a-dish = the dish
precooked = precooked { $food }
no-time = No time is known for { $food }: say how long it takes, and where.
# $thing: what two dishes want at the same time
clash =
    { $thing ->
        [oven] One oven: { $one } wants { $heat } and { $other } { $heat_other } for { $time } at the same time. Use a second oven, or cook one ahead and hold it at { $hot } or hotter.
        [smoker] One smoker: { $one } wants { $heat } and { $other } { $heat_other } for { $time } at the same time. Cook one ahead and hold it at { $hot } or hotter.
        [bath] One water bath: { $one } and { $other } want it at two temperatures for { $time } at the same time. Use a second one, or cook one ahead and hold it hot.
       *[fryer] One fryer: { $one } wants { $heat } and { $other } { $heat_other } at the same time. Fry one first and hold it at { $hot } or hotter.
    }
# a dish that is more than the ovens take at once; $sooner: how much earlier the first load is begun
oven-loads = { CAPITAL($food) } fills { $shelves } shelves, and { $ovens ->
        [one] a full-size oven has { $room }
       *[other] { $ovens } full-size ovens have { $room } each
    }: { $loads } loads. Use more ovens, or begin the first { $sooner } sooner and hold it hot.
clash-alone =
    { $thing ->
        [crock] One slow cooker: { $one } and { $other } want it for { $time } at the same time. Use a second one, or a pot.
       *[cooker] One pressure cooker: { $one } and { $other } want it for { $time } at the same time. Cook one first and hold it hot, or use a second cooker.
    }

# loads of an oven
loads = Start { $food } { $time } before service at { $place }: { $count } loads.
heat-label = Heat the ovens
load-label = Load { $n } in
loads-label = Loads
heat-ovens = Heat the ovens.
load-in = Load { $n } in, about { $time }.
loads-assumed =
    { $said ->
        [yes] Reckoned with { $an_oven } pieces of { $size } to a full-size convection oven at a time, so { $a_load } to a load.
       *[no] You did not say how many ovens: reckoned with one full-size convection oven, { $an_oven } pieces of { $size } at a time.
    } More at once roast slower and unevenly.
loads-wait =
    Carve what is done early, and hold it covered with a little stock at { $hot } or hotter; what is to wait longer than that
    is chilled and heated again to { TEMP(165) }.

# a roast that is in the oven, by what its middle reads
time-left = Still to go
on-course =
    { $verdict ->
        [yes] Yes, by this reading.
        [likely] Likely, by this reading.
        [tight] It will be tight.
       *[no] No, not by this reading.
    } { CAPITAL($food) } at { $read } after { $had } wants about { $span } more to { $target }{ $rested ->
        [yes] , and a rest of { $rest }
       *[no] {""}
    }; service is in { $left }.
read-done = { CAPITAL($food) } is there at { $read }: take it out and rest it { $rest }; service is in { $left }, so hold it hot after that.
read-early = Too early to tell: at { $read } the heat has hardly reached the middle of { $food }; service is in { $left }.
read-again = Read it again in { $time }, in the thickest part and clear of bone: the rise between two readings tells the pace.
quicker-than-usual = That is quicker than usual: by the usual time there are { $span } to go, so first check where the probe sits.
slower-than-usual = That is slower than usual: by the usual time there are { $span } to go. Check the heat of the oven.
behind = If it falls behind, turn the oven up by { $hotter } or serve later; it never comes out under { $target } to be in time.
by-one-reading = Reckoned from one reading and how long it has been in, so give or take half; the middle climbs fastest halfway and slower near the end.
never-early = The thermometer decides, not the clock: { $target } in the centre.
