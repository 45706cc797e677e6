# The sheet a teacher hands out, and its key. Themes, rows, examples, things and experiments are called by their ids in
# data/printing/lessons.toml.

title-boiling = Why water boils cooler up high
title-braising = Braising up high
title-baking = Baking in thin air
title-sugar = Boiled sugar up high
title-pressure = Cooking under pressure
title-frying = Hot fat up high
title-eggs-and-poaching = Eggs and poaching up high
title-beans-and-grains = Beans, pasta and rice up high
title-drying-and-air = Thin air and drying

place = { $elevation }
name-line = Name
date-line = Date
sheet-foot = { $title } · { $elevation } · set { $seed }
key-title = Key: { $title }
key-line = For the teacher, not for the class. The same sheet again: { $command }

# the why
why-head = Why
line = In a line
paragraph = In full
equation = In figures

# the column of air
air-head = The air above the pot
air-caption =
    The same pot at sea level and { $at }, heights to scale; each dot is the same weight of air. The air over the pot
    weighs { $sea } at sea level, and { $here } { $at }. The less it weighs, the sooner steam can push it back.
air-shows =
    Two columns of air side by side, one over a pot at sea level, one over a pot { $at }, which stands higher and has
    less air above it. At sea level water boils at { $boil_at_sea }, { $at } it boils at { $boil }.
air-weight =
    { $units ->
        [us] { $pounds } lb on each square inch ({ $kilograms } kg on each cm²)
       *[metric] { $kilograms } kg on each cm² ({ $pounds } lb on each square inch)
    }
air-weighs = The air weighs
air-boils = Water boils at
air-half = Half of all air is below this line
sea-level = Sea level

# the table
table-head = From kitchen to kitchen
what = What
none = –
as-it-is = as it is
times = × { $factor }
row-air = Weight of the air (pressure)
row-boil = A rolling boil
row-simmer = A simmer
row-potatoes = Potatoes, boiled
row-penne = Penne, boiled
row-murmur = Liquid of a braise
row-ribs = Short ribs, braised
row-ribs-oven = Oven for the braise
row-ribs-pressure = Short ribs at 15 psi (103 kPa)
row-gas = Room the same gas takes
row-leavening = Baking powder, soda
row-sugar = Sugar in a cake
row-liquid = Liquid in a cake
row-oven = Oven
row-baking-time = Baking time
row-yeast = Yeast in bread
row-thread = Thread
row-soft-ball = Soft ball
row-firm-ball = Firm ball
row-hard-crack = Hard crack
row-caramel = Caramel
row-gel-point = Jam sets
row-inside-15 = Inside at 15 psi (103 kPa)
row-inside-10 = Inside at 10 psi (69 kPa)
row-gauge-10 = To match 10 psi at sea level
row-beans-pressure = Soaked pinto beans at 15 psi (103 kPa)
row-doughnuts = Fat for doughnuts
row-fries = Fat for potatoes
row-chicken = Fat for chicken
row-chicken-time = Chicken pieces, fried
row-chicken-core = Centre of the chicken, at least
row-poach = Water for poaching eggs
row-poach-time = Poached eggs
row-soft-yolk = Soft yolk, large egg
row-hard-eggs = Hard-boiled eggs
row-beans = Soaked pinto beans, simmered
row-rice = White rice
row-density = Weight of the same room of air
row-outdoors = Air outdoors, on average
row-drying = Pace of drying

# worked examples
worked-head = Worked out
worked-number = Example { $number }
example-boil = How hot is boiling water { $at }, and what can the weather do to it?
example-potatoes = How long do potatoes take { $at } that are done in 15 to 25 min at sea level?
example-ribs = Short ribs braise for 2 h 30 min to 3 h at sea level. How long { $at }?
example-ribs-pressure = Short ribs take 45 min to 1 h at 15 psi (103 kPa) at sea level. How long { $at }?
example-cake = A layer cake from sea level has 2 tsp baking powder, 2 cups sugar and 1 cup milk, and bakes at { $oven }. What is changed { $at }?
example-bread = A bread from sea level has 20 g yeast and 600 g water, and proves for 90 min. What is changed { $at }?
example-fudge = How hot is fudge cooked { $at }, to soft ball?
example-jam = How hot does jam without added pectin get { $at } when it sets?
example-gauge = What does the gauge of a pressure cooker say { $at }, and how hot is it inside?
example-doughnuts = How hot is the fat for doughnuts { $at }?
example-chicken = How hot is the fat for chicken pieces { $at }?
example-eggs = How long do eggs from the fridge boil { $at }, for a hard yolk?
example-poach = Poached eggs take 3 to 5 min at sea level. How long { $at }?
example-beans = Soaked pinto beans simmer for 1 h 15 min to 2 h at sea level. How long { $at }?
example-penne = The box of penne says 10 to 13 min, at sea level. How long { $at }?
example-loaf = A cut loaf is dry after an hour on the board at sea level. How long has it { $at }?
example-cold = How cold is the air outdoors { $at }, when it is 59 °F (15 °C) at sea level?

# sums of the lesson's own
sum-times = The middle of the time at sea level: { $sea } min × { $factor } = { $here } min; in the kitchen { $about }.
sum-share =
    { $what }: { $sign ->
        [more] { $amount } × (1 + { $percent }/100) = { $used }
        [less] { $amount } × (1 − { $percent }/100) = { $used }
       *[same] { $amount }, as it is
    }
sum-added = { $what }: { $from } and { $shift } more make { $to }
sum-fall = { $what }, from sea level to here: { $sea } − { $fall } = { $here } °C
sum-rise = { $what }, from sea level to here: { $sea } + { $fall } = { $here } °C
sum-level = { $what }, the same as at sea level: { $here } °C
sum-times-faster = { $time } min ÷ { $factor } = { $here } min
share-powder = Baking powder
share-sugar = Sugar
share-milk = Milk
share-oven = Oven
share-yeast = Yeast
share-water = Water
share-proof = Proof, with as much yeast as before
answer = Answer
care = Take care

# the experiment
experiment-head = Try it: { $title }
aim = What we want to know
needs = For { $class ->
    [one] one
   *[other] { $class }
} of you, in { $groups ->
    [one] one group
   *[other] { $groups } groups
}
findings = What we found
need-pot = { $count ->
    [one] 1 pot
   *[other] { $count } pots
}, all alike
need-lid = { $count ->
    [one] 1 lid
   *[other] { $count } lids
}
need-probe = { $count ->
    [one] 1 probe thermometer
   *[other] { $count } probe thermometers
}
need-candy-thermometer = { $count ->
    [one] 1 candy thermometer, steel or digital
   *[other] { $count } candy thermometers, steel or digital
}
need-ice-glass = { $count ->
    [one] 1 glass of crushed ice
   *[other] { $count } glasses of crushed ice
}
need-glove = { $count } oven gloves
need-scale = { $count ->
    [one] 1 scale, to 1 g
   *[other] { $count } scales, to 1 g
}
need-syringe = { $count ->
    [one] 1 new 60 ml syringe of plastic, without a needle
   *[other] { $count } new 60 ml syringes of plastic, without needles
}
need-marshmallow = { $count ->
    [one] 1 small marshmallow
   *[other] { $count } small marshmallows
}
need-ruler = { $count ->
    [one] 1 ruler
   *[other] { $count } rulers
}
need-cup = { $count ->
    [one] 1 cup of warm water
   *[other] { $count } cups of warm water
}
need-potato = { $count } potatoes
need-tray = { $count ->
    [one] 1 lined tray
   *[other] { $count } lined trays
}
need-egg = { $count } large eggs from the fridge
need-spoon = { $count ->
    [one] 1 slotted spoon
   *[other] { $count } slotted spoons
}
need-bowl = { $count ->
    [one] 1 bowl of cold water
   *[other] { $count } bowls of cold water
}
need-pasta = { $count } g of penne whose box says 10 min
need-tongs = { $count ->
    [one] 1 pair of tongs
   *[other] { $count } pairs of tongs
}
need-knife = { $count ->
    [one] 1 small knife
   *[other] { $count } small knives
}
need-cloth = { $count ->
    [one] 1 strip of cotton
   *[other] { $count } strips of cotton
}
need-fan = { $count ->
    [one] 1 small fan with a guard
   *[other] { $count } small fans with guards
}

experiment-boil = read the boil off a thermometer
    .aim = How hot is our boil, and does a bigger flame make it hotter?
    .step-1 = Top up the glass of crushed ice with cold water and stir for one minute. Hold the tip of the thermometer in the middle and write down what it reads.
    .step-2 = Fill the pot no more than half with tap water and bring it to a full rolling boil.
    .step-3 = With the glove on, hold the tip in the middle of the water, off the bottom, until the figure stands still. Write it down.
    .step-4 = Turn the flame up as far as it goes for one minute, and read again.
    .step-5 = Take what the thermometer was off in the ice from what it read at the boil.
    .record = In the ice ________   At the boil ________   At a bigger flame ________   The true boil ________
    .caution-1 = Steam burns before you see it: hold the thermometer from the side, face and arms away.
    .caution-2 = Handles turned in, nobody carries a pot of boiling water. Let it cool before it is emptied.
    .caution-3 = No thermometers of glass or with mercury.
    .finding =
        A true thermometer reads { $ice } in the ice and { $boil } at the boil { $at }, where the air presses with { $pressure };
        the bigger flame adds nothing but steam. Off by as much in both: the thermometer. Half a degree either way: the weather.

experiment-lid = what a lid is worth
    .aim = How much water does a simmering pot lose with its lid on, and without?
    .step-1 = Put 1 litre (1 quart) of cold water into each of the two pots. Weigh each pot with its water, and write it down.
    .step-2 = Put the lid on one. Bring both to a bare simmer, a bubble now and then.
    .step-3 = Hold both there for 30 minutes by the clock.
    .step-4 = Turn the burners off and leave the pots where they are for 20 minutes.
    .step-5 = Weigh both again, with gloves on. Twice the loss is what an hour costs.
    .record = Open: before ________ after ________ lost ________   Covered: before ________ after ________ lost ________
    .caution-1 = Do not lean over a pot. Lift the lid away from you, so that the steam leaves on the far side.
    .caution-2 = No pot is moved before it has stood for 20 minutes. Handles turned in.
    .caution-3 = Never leave a pot alone: one that has boiled dry is taken off, and gets no cold water.
    .finding =
        The open pot loses many times what the covered one does. A wide pot, 28 cm (11 in) across, is reckoned to lose { $open_loss }
        an hour open and { $covered_loss } covered { $at }; small pots lose less, in the same proportion. A braise that takes longer
        needs its lid, or the water that goes.

experiment-marshmallow = a marshmallow in thin air
    .aim = What do the bubbles of a batter do when there is less air to press on them?
    .step-1 = Take the plunger out of the syringe, drop the marshmallow in, and put the plunger back.
    .step-2 = Push it to the mark of 20 ml, the tip open. Then close the tip tightly with a finger, or with its cap.
    .step-3 = Pull the plunger slowly to 25 ml, then to 30 ml. Measure the marshmallow through the wall each time.
    .step-4 = Let the plunger go back, and look again.
    .step-5 = Reckon: at which mark does the air in it stand as thin as ours, if 20 ml was sea level?
    .record = At 20 ml ________ mm   At 25 ml ________ mm   At 30 ml ________ mm   Let go ________ mm
    .caution-1 = The marshmallow has been in a syringe: nobody eats it.
    .caution-2 = New syringes only, without needles. Point them at nobody, and pull the plunger no further than its last mark.
    .caution-3 = A syringe is not put into a mouth, and goes into the bin afterwards.
    .finding =
        The bubbles swell as the air thins, and shrink back, smaller than they were, as some have burst: so does a cake that rises
        too far. The air { $at } presses with { $gas_percent } % of its push at sea level, and gas takes { $gas_ratio } times the
        room: the mark is 20 × { $gas_ratio } ml.

experiment-stages = a sugar card for every thermometer
    .aim = Which readings of our own thermometers are the stages in the book?
    .step-1 = Fill the pot no more than half with plain water and bring it to a full rolling boil.
    .step-2 = Clip the thermometer in, its tip covered and off the bottom. Wait until it stands still, and write down the boil.
    .step-3 = Take that from { TEMP(212) }, the boil in the book. This is your difference; above sea level it is taken off every stage.
    .step-4 = Write your own card: soft ball { TEMP(235) }, firm ball { TEMP(245) }, hard crack { TEMP(300) }, each less your difference.
    .step-5 = Compare cards. Where two differ, ask whose thermometer it is, and not whose water.
    .record = Boil ________   Difference ________   Soft ball ________   Firm ball ________   Hard crack ________
    .caution-1 = Plain water only: hot syrup sticks and burns deep, and is shown by the teacher, or not at all.
    .caution-2 = Steam burns before you see it: clip the thermometer in before the boil, with gloves on.
    .caution-3 = Handles turned in, and nobody carries a pot of boiling water.
    .finding =
        { $side ->
            [level] A true thermometer shows no difference at sea level, so the book's soft ball of { $soft_ball_in_book } stays { $soft_ball }.
            [above] A true thermometer has a difference of { $drop } { $at }: the book's soft ball of { $soft_ball_in_book } is { $soft_ball } here.
           *[below] A true thermometer boils { $drop } over the book { $at }: the book's soft ball of { $soft_ball_in_book } is { $soft_ball } here, and the difference is added.
        } A thermometer that is off is off in the boil as in the syrup, so its own card is right for it. Caramel is not a matter of
        water, and its figure is not changed.

experiment-syringe = boil warm water in the hand
    .aim = Can water boil that is only warm?
    .step-1 = Measure the warm water: { TEMP(113) }, and no more than { TEMP(120) }.
    .step-2 = Draw 10 ml of it into the syringe. Hold the tip up and push out all the air.
    .step-3 = Close the tip tightly with a finger, or with its cap.
    .step-4 = Pull the plunger back as far as its last mark, and watch the water.
    .step-5 = Let it go back slowly. What becomes of the bubbles, and did the water get any hotter?
    .record = Water ________ degrees   When the plunger was pulled ________________   When it went back ________________
    .caution-1 = Warm water only, never hot: it must not scald if a syringe slips.
    .caution-2 = New syringes of plastic without needles, never of glass. Point them at nobody.
    .caution-3 = Nothing is ever sealed and heated. A pressure cooker is not used to try this the other way round.
    .caution-4 = A syringe is not put into a mouth, and goes into the bin afterwards.
    .finding =
        The warm water boils when the plunger is pulled, because the push on it falls; it gets no hotter, rather a little cooler. At
        room warmth it takes a push as small as { $room_boils_at }. An open pot { $at } boils at { $boil }; a cooker that adds
        { $cooker_gauge } does the contrary, and boils at { $inside_cooker }. Bubbles that stay when the plunger is back are air.

experiment-slices = weigh what leaves as steam
    .aim = How much of a potato is water that has to boil away before it crisps? No hot fat is used.
    .step-1 = Slice the potatoes 3 mm (1/8 in) thin, blot them dry, and weigh 100 g.
    .step-2 = Lay them on the lined tray, one beside the other.
    .step-3 = Bake them at { TEMP(375) } until they are pale gold and dry, 20 to 30 minutes, turned once.
    .step-4 = Let them cool on the tray for 10 minutes, and weigh them.
    .step-5 = What is missing has left as steam: grams out of a hundred.
    .record = Before 100 g   After ________ g   Left as steam ________ g
    .caution-1 = No hot fat: it is not needed to see this.
    .caution-2 = Slice with a guard or a cut-proof glove.
    .caution-3 = Oven gloves, dry ones, and the tray is set down where nobody reaches.
    .caution-4 = Whoever is allergic to potato, or to what else the oven was used for, does not taste.
    .finding =
        A raw potato is close to four fifths water, so crisp slices weigh 20 to 35 g. All that water boiled away at { $boil } { $at } and
        held the slice there, whatever the oven was set to: so it does in fat. { $side ->
            [above] Its steam takes nearly { $gas_ratio } times the room that it takes at sea level, so a full fryer foams higher.
           *[other] A full fryer foams with it, so it is never filled past half.
        }

experiment-eggs = two eggs, two times
    .aim = Is the time of a cookbook from sea level right for our eggs?
    .step-1 = Bring a pot, two thirds full, to a full rolling boil.
    .step-2 = Lower both eggs in with the spoon, and start the clock.
    .step-3 = Lift one out after { $hard_egg_at_sea }, the time at sea level, into the cold water.
    .step-4 = Lift the other out after { $hard_egg }, the time { $at }, into the cold water.
    .step-5 = After 5 minutes peel both, cut them lengthways, and draw the yolks.
    .record = The first yolk ________________________   The second yolk ________________________
    .caution-1 = Whoever is allergic to eggs does not handle them.
    .caution-2 = A yolk that is not firm is not eaten in class; it goes into the bin.
    .caution-3 = Wash hands, board and knife after raw egg and shells.
    .caution-4 = Eggs go in and out with the spoon, never by hand; steam burns before you see it.
    .finding =
        The first yolk is darker and softer in its middle where our water is cooler; the second is set just to its edge. By heat a large
        egg takes { $hard_egg } { $at }, and { $hard_egg_at_sea } at sea level. A serving kitchen gives a hard egg some minutes more,
        as in the table.

experiment-pasta = find the core of the pasta
    .aim = When is the pasta really done here, and when does the box say so?
    .step-1 = Bring the pot, no more than two thirds full, to a full rolling boil. Put in the pasta and start the clock.
    .step-2 = After { $box_time } take one out with the tongs and cool it under the tap.
    .step-3 = Cut it through and look for the white core of raw starch.
    .step-4 = Do it again every minute. Write down when the core is gone.
    .step-5 = Divide that by the time on the box.
    .record = The box ________ min   The core was gone after ________ min   That is ________ times
    .caution-1 = Whoever is allergic to wheat or egg does not taste.
    .caution-2 = Take pasta out with tongs and cool it before it is touched. Drain away from you.
    .caution-3 = Handles turned in; nobody carries a pot of boiling water across the room.
    .caution-4 = Beans are not tasted before they are fully cooked: raw kidney beans are poisonous.
    .finding =
        A box that says { $box_time } means { $box_time_here } { $at }. Where groups differ, look at their flames: a pot that does not boil
        is slower still. Salt changes the taste and not the time.

experiment-cloth = the wet thermometer
    .aim = How cool does a wet thing stay, and how fast does it dry?
    .step-1 = Lay the two thermometers side by side, and write down what both read.
    .step-2 = Wrap the tip of one in the cotton, and wet it with water as warm as the room.
    .step-3 = Let the fan blow on both. Read both every two minutes, until the wet one stands still.
    .step-4 = Take the one from the other: this is the difference.
    .step-5 = Go on until the cotton is dry, and watch what the thermometer does then.
    .record = Dry ________   Wet ________   Difference ________   Cotton dry after ________ min
    .caution-1 = Water and the fan's plug are kept apart; the fan is off before it is touched, its guard stays on.
    .caution-2 = Long hair and sleeves away from the fan.
    .caution-3 = No thermometers of glass or with mercury.
    .finding =
        The wet one reads lower by as much as the air is dry, and comes up again once the cotton is dry: the stall of smoked meat in
        small. { $side ->
            [above] In air equally damp a surface dries about { $drying_percent } % faster { $at } than at sea level.
           *[other] Higher up the same cloth would dry faster.
        } On a rainy day the difference is small everywhere.

# questions
drill-head = Questions
drill-line = Set { $seed }. Figures count in either system of units.
answers-head = Answers
finding-head = What the experiment shows
sources = Sources: { $sources }.
