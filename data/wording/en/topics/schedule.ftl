# $stage: soak, rise, heat_up, cook, release, rest or slack

headline = Start { $food } { $time } before service at { $place }.
start-before-service = Start before service
label =
    { $stage ->
        [soak] Soak
        [rise] Mix and rise
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

counted-back = Counted back from service: { $stages }.
stage =
    { $stage ->
        [soak] soak
        [rise] rising
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
fire = Fire { $food }. { $step } It cooks about { $time }.

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
