# a time is one of day, with the day where it is another than the day of service

it = it
# $cooked: later where the heat comes some time after the start
headline =
    Start { $food } by { $start }{ $cooked ->
        [later] , cooking by { $cooking },
       *[at-once] { "" }
    } to serve at { $serve } at { $place }.
# the start that the cook named
verdict =
    { $verdict ->
        [yes] Yes, { $start } is early enough.
        [tight] { CAPITAL($start) } can do, if it turns out a quick one.
       *[no] No, { $start } is too late: { $latest } is the very latest.
    }
# $quicker: whether a pressure cooker would be
ways-out =
    Begun then, { $food } is ready at about { $ready }: serve it then, { $quicker ->
        [yes] cook it in a pressure cooker, or
       *[no] or
    } serve something else and keep it for later. Never serve it half cooked to be in time.
late =
    { CAPITAL($food) } cannot be counted on by then: put on now it is ready at about { $ready }. Serve it late, { $quicker ->
        [yes] cook it in a pressure cooker, or
       *[no] or
    } move the service.
# $counted: whether it is known how many eat
menu =
    To serve { $counted ->
        [yes] { $covers }{" "}
       *[no] {""}
    }at { $serve } at { $place }: { $lines }.
menu-line = { $food } at { $time }
loads =
    Heat the ovens at { $start } for { $food } in { $count } loads, the first in at { $first } and the last at { $last }, to
    serve at { $serve } at { $place }.
window = By the range, the start lies between { $earliest } and { $latest }.
serve = { $time }: Serve.
on-the-day = { $time } { $day }
# $day: of the week, Monday 0
weekday =
    on { $day ->
        [0] Monday
        [1] Tuesday
        [2] Wednesday
        [3] Thursday
        [4] Friday
        [5] Saturday
       *[6] Sunday
    }
tomorrow = tomorrow
today = today
days-before =
    { $days ->
        [1] the day before
       *[other] { $days } days before
    }
