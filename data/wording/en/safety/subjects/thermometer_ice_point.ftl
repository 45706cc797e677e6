label = Melting ice
headline = In melting ice a thermometer reads { $zero } at every elevation.
fill = Fill a glass with crushed ice, add cold water to just under the top, stir, wait a minute.
tip = Tip in the middle, clear of glass and ice, until the reading stands. Do it weekly, and after every fall.
because =
    Ice melts at the same heat whatever the air weighs: the change over any mountain is two thousandths of a degree. The
    boil moves with elevation and weather, so use ice to find the error and the boil to check the top of the range.

offset-label = Thermometer off by
right = Your thermometer is right: { $reading } in melting ice, at any elevation.
wrong =
    Your thermometer reads { $size } too { $way ->
        [high] high
       *[low] low
    }: melting ice is { $zero } everywhere.
mend =
    { $fix ->
        [reset] Turn the nut under the dial or reset it
       *[replace] Replace it
    }; until then { $way ->
        [take] take
       *[add] add
    } { $size }.
do-not-judge = Do not judge meat, poultry or chilled food by it until it reads true.
