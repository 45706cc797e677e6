label = Hold cold at or below
taken-out =
    Cold food taken out at { $cold } may stand for 6 h if it never passes { $room }; anything else { $time } at most. Mark
    the time, then throw it away.
at-home = At home: two hours out at most, one where it is hot. Left out overnight means thrown away.
not-met =
    Slow-cooker advice to keep food at { $advice } cannot be met from about 6,600 ft (2,000 m) up: water boils at { $boil }
    here. Keep it at a simmer and well over { $hot }, by thermometer.
