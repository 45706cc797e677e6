# $stage: soak, rise, heat_up, cook, release or rest

headline = Start { $food } { $time } before service at { $place }.
start-before-service = Start before service
label =
    { $stage ->
        [soak] Soak
        [rise] Mix and rise
        [heat_up] Get it up to heat
        [cook] Cook
        [release] Release
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
       *[rest] rest
    } { $time }
waits = Planned by the long end of the cooking, since this loses nothing by waiting hot.
does-not-wait = Planned by the middle of each range, since it does not wait well.
ready-early = Ready early? Keep it covered at { $hot } or hotter till service.
sea-level-time = The cooking time is the usual one at sea level; go by a thermometer and by how it looks.
