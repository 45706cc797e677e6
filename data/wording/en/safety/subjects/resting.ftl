label = Rest
# $size: steak, roast or large; $span: how long it rests; $safe: the rest that the safe temperature counts on
headline = Rest { $size ->
    [steak] it
    [large] a bird or a large cut
   *[roast] a roast
} { $span }, the same at any elevation; whole cuts of meat want { $safe } of it to be safe at 145 °F (63 °C).
tent = Tent it loosely with foil, off the hot pan. Thin, dry air dries an open crust a little sooner.
after-the-reading = A rest makes nothing safe that was pulled too cool: the centre reads its temperature first.
because =
    The outside is hotter than the middle and goes on warming it by 5 to 10 °F (3 to 6 °C), while the juices thicken.
    That goes by the heat in the meat and not by air pressure.
