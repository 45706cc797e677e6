# a time is one of day, with the day where it is another than the day of service

it = it
headline = Start { $food } by { $start } to serve at { $serve } at { $place }.
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
