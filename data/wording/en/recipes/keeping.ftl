never-shorter =
    A time is never shortened where it makes food safe: { $food } must reach { $safe } in the centre. Go by the
    thermometer.
food = { $food } { $safe }
reach = { $temp }{ $rest_min ->
        [0] { "" }
       *[other] { " " }and a rest of { $rest_min } min
    }
by-thermometer = By thermometer, not by the clock, at every elevation: { $foods } in the centre.
out-of-reach =
    Step { $step }: nothing wet reads { $reading } inside at { $place }, where water boils at { $boil }. The figure stays as
    written; about { $instead } is the same stage here.
