same-pace = The burner sets the pace and water boils as at { $baseline }, so the time stays.

# $heat and $time are percents: what a litre takes on an electric burner, and what a gas burner needs.
pace =
    The burner sets the pace of a hard boil, not the air: boiling off a litre takes { $heat } % { $heat_way ->
        [more] more
       *[less] less
    } heat than at { $baseline }, so an electric burner takes the same time. A gas burner gives less heat in thin air
    and
    takes up to { $time } % { $time_way ->
        [more] more
       *[less] less
    } time. The range covers both, and how far you take it.
