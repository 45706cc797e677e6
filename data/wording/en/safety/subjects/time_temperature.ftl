hold-label = Hold for
safe-label = Safe at the centre
at-label = At { $temp_f } °F

# by its id in data/sources.toml, and by its file in data/tables where one source has two
table =
    { $source ->
        [alaska-18-aac-31] FDA Food Code table (as Alaska prints it)
        [ny-1-nycrr-271] New York State table
        [fda-food-code-2022] Food Code 2017 and 2022
        [fsis-gd-2021-14] USDA table for { $file ->
            [chicken_lethality_fsis-gd-2021-14] chicken
           *[turkey_lethality_fsis-gd-2021-14] turkey
        }, 12 % fat
        [schuman-1997-eggs] Schuman 1997
       *[other] { $source }
    }
time =
    { $way ->
        [held] { $time }
       *[at_once] at once
    }

no = No. { $text }
too-cool = No table goes under { $least } for { $food }: { $temperature } is not a safe finish for any time.
held =
    { $verdict ->
        [yes] Yes.{ " " }
        [no] No.{ " " }
       *[open] { "" }
    }{ CAPITAL($food) } held at { $temperature } in the centre is safe { $way ->
        [after] after { $time }
       *[at_once] at once
    }, at any elevation.
row = { $table }: { $time } at { $temp_f } °F
by-table =
    { $each }. The tables differ by edition or food; the longer time is given, and nothing is read between rows.
count-from = Count from when the coldest point has reached it, by a checked thermometer, and write it down.
too-short = Too short at { $temperature }: do not serve it.

pair = { $temperature } { $times }
chart =
    For { $food } the codes print: { $each }{ $way ->
        [at_once] , and { $safe } at once
       *[held] { "" }
    }. They hold at any elevation.
two-tables =
    Where two times stand, two tables differ: { $first } and the { $second }. Name the one your inspector uses, or take the
    longer.
editions = Food Code 2013 and older print 15 s at 155 °F (68 °C), later ones 17 s.
tell-me = Tell me the temperature that you hold, and I give the printed time.

one-row =
    { CAPITAL($food) }: { $temperature } in the centre, { $way ->
        [held] held { $time }
       *[at_once] at once
    }, at any elevation.
no-lower =
    No code prints a lower temperature for this food. Lower ones take a plan that your inspector has approved.
