# $reach: how much of the band the water reaches here; $band is what the drink wants, $here what is left of it.
water-label = Water for brewing
headline =
    { $reach ->
        [pressure] { CAPITAL($drink) } is brewed at { $band } at { $place } as anywhere: the brewer makes its own pressure.
        [none] At { $place } water boils at { $boil }, under the { $band } that { $drink } wants: brew straight off the
        boil.
        [part] At { $place } brew { $drink } at { $here }: straight off the boil, the top of the { $band } band is out of
        reach.
       *[all] Brew { $drink } at { $band } at { $place }, as at sea level.
    }
because =
    { $reach ->
        [pressure] The air outside does not count inside a pump or a sealed boiler.
        [none] No open kettle here reaches { $band }. Cooler water draws less and the cup tastes thin, so make up for it
        with { $drink ->
            [coffee] a finer grind
           *[tea] more leaf
        } and more time.
        [part] The boil, { $boil } here, stands inside the band, so water just off the boil is right without waiting.
       *[all] The whole band lies under the boil, { $boil } here, so nothing changes but the wait for the kettle to cool.
    }
longer =
    A twentieth more time for each degree the boil falls short makes { $time }, the range being the strength you like;
    taste decides.
taste = The range is the strength you like; taste decides.
let-it-cool = Let the kettle stand until the water is { $band }.
off-the-boil =
    Use the water the moment it boils, and heat the pot and brewer with boiling water first: each pour costs degrees.
finer-grind = Grind one step finer, and keep the brewer covered.
under-pressure =
    For a hotter brew go to pressure: a moka pot, an espresso pump or a siphon with a tight lid.
more-leaf =
    Use a little more leaf, keep the pot covered and warm, and taste from the usual time on.
standard =
    The international standard for tasting tea uses freshly boiling water, 6 min for black and 5 min for green leaf, and
    asks that the elevation be reported where the boil is affected.
scald = Keep the safety valve of a pressurised brewer clear, and let it cool before opening it.
