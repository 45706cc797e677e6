change = Change of rising time
yeast-change = Change of yeast
at-the-baseline = The same dough at { $baseline }
recipes-time = A recipe's time of that length, here

# $of: layered dough, which a punch would ruin, dough without gluten, which is a batter, dough that is raised by a leaven, or any other
until-doubled =
    { $of ->
        [layered] Proof the shaped pieces only until they are about half as big again and wobble when the tray is shaken;
            never press or knead them.
        [soured] Let the dough rise only until it is half to three quarters bigger, then shape it; a dent of the finger
            comes back slowly.
        [batter] Let it rise once, in its tin, until it is about half as big again, and bake it at once: without gluten it is a batter,
            with nothing to punch down, and it falls where it rises too far.
       *[other] Let the dough rise only until it has doubled, then punch it down; press a finger in, and if the dent stays it is ready.
    }
for-flavour =
    { $of ->
        [layered] Keep them at { TEMP(75) } to { TEMP(79) }, as anywhere: warmer than { TEMP(82) } the butter melts and runs out in the oven.
            For more flavour rest the dough overnight in the refrigerator before it is rolled out.
        [soured] For more flavour keep it overnight in the refrigerator.
        [batter] For more flavour keep the mixed batter overnight in the refrigerator before it goes into the tin.
       *[other] For more flavour punch it down and let it double once more before shaping, or keep it overnight in the refrigerator.
    }
because =
    The gas in a dough takes { $swell } times the room at { $place } that it takes at { $baseline }, so the same dough doubles in
    about { $percent } % { $way ->
        [less] less
       *[more] more
    } time with the same yeast.
look =
    Start looking at the dough at { $percent } % { $way ->
        [less] less
       *[more] more
    } than the recipe's time at { $place }; stop when it { $until ->
        [half] is about half as big again
       *[double] has doubled
    }.

# a rising time that the cook named
doubles-less-yeast =
    A dough that doubles in { $here } at { $place } would take about { $there } at { $baseline }: use about { $percent } % less
    { $starter ->
        [yes] levain, or keep it cooler,
       *[no] yeast,
    } and stop it when it has just doubled.
doubles = A dough that doubles in { $here } here takes about { $there } at { $baseline }; go by its size.
recipe-step = If { $time } is the recipe's time for { $baseline }, start looking after { $low }.

# a dough whose own time is known beside the one that is wanted
paced =
    { $way ->
        [less] Cut
       *[more] Raise
    } the { $item } from { $was } to about { $to } (range { $span }), since your dough doubles in { $own } where { $wanted } is
    wanted.
warmth-first =
    Warm the dough first: by the air alone { $wanted } would come to about { $air } at { $place }, and the rest of your { $own } is
    a cold dough. Keep it at 80–86 °F (27–30 °C), with water at blood heat. { $then }
paced-trial = Change nothing else in the next batch, keep the dough as warm as it was, and time the doubling again.
paced-because =
    At one temperature the gas comes nearly in proportion to the yeast, so the yeast goes by your own two times, which count
    more than a table does.
rises-here =
    A rise of { $there } at { $baseline } is done in about { $here } at { $place }, in { $low } at the soonest{ $warm ->
        [yes] , kept at the same { $temperature }
       *[no] , at the same warmth
    }.
