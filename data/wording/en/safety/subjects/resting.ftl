label = Rest
# $size: steak, roast or large; $span: how long it rests; $safe: the rest that the safe temperature counts on
headline = Rest { $size ->
    [steak] it
    [bird] a chicken or a duck 15 to 25 min, a turkey or a goose longer, within
    [large] a large cut
   *[roast] a roast
} { $span }, the same at any elevation; { $of ->
        [bird] poultry has to read { TEMP(165) } in its thickest part before that, and no rest makes up for less.
       *[meat] whole cuts of meat want { $safe } of it to be safe at { TEMP(145) }.
    }
tent = Tent it loosely with foil, off the hot pan. Thin, dry air dries an open crust a little sooner.
after-the-reading = A rest makes nothing safe that was pulled too cool: the centre reads its temperature first.
because =
    The outside is hotter than the middle and goes on warming it by 5 to 10 °F (3 to 6 °C), while the juices thicken.
    That goes by the heat in the meat and not by air pressure.
