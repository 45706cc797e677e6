past-soft-peaks = At { $place } the foam swells less in the oven: where it turns out low, beat a little past soft peaks.
soft-peaks =
    The air beaten in swells { $swell } times as far as at { $baseline }. Stop at soft peaks that just fold over: a stiff
    foam has no stretch left and bursts.
