# What is asked around jars that is no process time. then-...: the printed time that follows as the last step.

then-water = Then process in boiling water at { $place }: { $each }.
then-pressure = Then process in a pressure canner at { $wanted } at { $place }: { $each }.

acid-yes =
    Yes: acid goes into every jar of { $food }, at every elevation and in every canner, a pressure canner too.
acid-by-recipe =
    Only what the tested recipe for { $food } prints: the fruit is sour enough for boiling water, and lemon juice is there
    for colour, taste or set.
acid-of-pickle = Yes: the vinegar or lemon juice of the recipe for { $food } stays as it is, at every elevation.
acid-no-help =
    No acid makes { $food } safe in boiling water: it goes in a pressure canner, where none is needed.
acid-which =
    Tomatoes, tomatillos, figs and Asian pears: yes, in every jar, at every elevation. Other fruit and jam: as the tested
    recipe prints. Vegetables and meat: acid does not help, they need a pressure canner.
acid-why =
    The acid keeps botulism from growing in the jar; elevation changes the minutes and not the acid. Bottled lemon juice or
    citric acid, since fresh lemons vary.
acid-sour = Most fruit lies well under pH 4.6, where botulism cannot grow.
acid-low-why = Its acid is far too low; a spoon of lemon juice does not bring it down through the whole jar.

headspace = Leave { $headspace } free under the lid for { $food }, at every elevation.
headspace-usual =
    As the tested recipe prints, at every elevation: jam, jelly and juice 1/4 in (0.6 cm), fruit, tomatoes and pickles
    1/2 in (1.3 cm), vegetables and meat 1 to 1 1/4 in (2.5 to 3 cm).
headspace-bubbles = Run a thin spatula round the inside to free the air, then fill up to the mark again and wipe the rim.
headspace-why =
    Too little and the food boils up under the lid, too much and air stays in: both keep a jar from sealing.

clock-water =
    Count from when the water boils hard again with the jars in it and the lid on{ $placed ->
        [yes] , { $boil } here.
       *[no] .
    }
clock-again = If the boil stops, bring it back and start the time again from nothing.
clock-pressure = Count from when the gauge shows { $wanted }, not from when the weight goes on.
clock-pressure-any =
    Count from when the gauge shows the pressure for your elevation, not from when the weight goes on.
clock-vent =
    Before that let steam pour out of the open vent for 10 min, timed; then put the weight on or close the petcock. A
    weight counts once it jiggles or rocks as its booklet says.
clock-fell = If the pressure falls under the mark, bring it back and start the time again from nothing.
clock-why = Air left in the canner holds the heat down, whatever the gauge reads, and the tested time begins at pressure.

small-jars =
    A small jar takes no less{ $size ->
        [any] . It takes the time of the smallest jar that is printed for the food.
        [half_pint] . It takes the time of a half-pint.
        [pint] . It takes the time of a pint.
       *[other] . It takes the time of the next bigger jar that is printed.
    }
small-jars-why = Only the printed sizes were tested; the small jar is warmed with the others, and the time is the least there is.

sugar-jam = Not in an ordinary recipe: in jam and jelly the sugar makes the set and helps it keep.
sugar-jam-instead =
    Take a tested recipe for less sugar, with the pectin that is made for it; or make freezer jam and keep it frozen.
sugar-jam-why = With less of it the spread stays runny and moulds sooner; elevation has no part in it.
sugar-pickle = By a tested recipe that prints less: take away sugar only where the vinegar stays whole.
sugar-pickle-why = It is the vinegar that makes a pickle safe; sugar only rounds the taste.
sugar-fruit = Yes: fruit is as safe in water or juice as in syrup, for the same minutes.
sugar-fruit-colour = It keeps its colour, shape and taste less well; a light syrup or fruit juice is a fair middle way.
sugar-fruit-why = The fruit's own acid and the process make it safe, and the sugar has no part in it.

# $asks: whether it was asked if the salt changes
salt-ferment =
    { $asks ->
        [yes] No: the salt goes by weight and not by elevation. For
       *[no] For
    } sauerkraut 2 to 2.5 % of the cabbage by weight, 20 to 25 g for 1 kg or 3 tbsp of canning salt for 5 lb; for other
    ferments as their tested recipe says. Elevation changes nothing.
salt-weighed = That is { $low } to { $high } of salt for { $of }.
salt-pickle =
    { $asks ->
        [yes] No: salt
       *[no] Salt
    } and vinegar of a pickle stay as the tested recipe prints them; elevation changes only the minutes in the canner. A brine that ferments stays as strong as its recipe says too.
salt-pickle-why = In a pickle with vinegar the acid keeps it safe; the salt is for crispness and taste.
salt-weigh = Weigh it, use canning or pickling salt, mix it all through and never take less.
salt-why = The salt holds back spoilers until the acid is there; with too little the ferment rots.
salt-taste = As you like: in vegetables, meat and fruit the salt is for taste only. Elevation changes nothing.
salt-taste-why = The heat and, in tomatoes, the acid make the jar safe; salt has no part in it.

vinegar = Yes, 5 % acidity, at every elevation: never weaker, never thinned beyond the recipe.
vinegar-same = No: the vinegar stays as the tested recipe prints it, of 5 % acidity, at every elevation, never thinned beyond it.
vinegar-kinds = White distilled or cider vinegar with the strength on the label; home-made vinegar is for salad.
vinegar-why = The vinegar makes the pickle safe in the jar, and water that boils cooler does not change that.

ferment =
    As at sea level: keep it at { TEMP(70) } to { TEMP(75) } for 3 to 4 weeks, at { TEMP(60) } to { TEMP(65) } for 5 to 6.
    Elevation hardly matters; the warmth of the room and the salt do.
ferment-kimchi =
    As at sea level: 1 to 5 days at { TEMP(65) } to { TEMP(75) }, until it smells sour and bubbles, then into the refrigerator,
    where it goes on slowly. It goes by warmth and salt and not by the air.
ferment-other =
    No faster for the elevation: { $food } goes by the warmth of the room, by what feeds it and by the culture, and not by
    the air. It takes its usual time; go by taste.
ferment-other-why = Thin air only gives its gas more room, so it looks livelier; a mountain kitchen is often cooler, and then slower.
ferment-under = Keep all of it under the brine, and skim what forms on top each day.
ferment-done = It is done when the bubbling stops and it tastes sour through; then refrigerate or can it by a tested recipe.
ferment-why = Warmer than { TEMP(75) } it goes soft and may spoil, under { TEMP(60) } it may not ferment.

fridge = Nothing: pickles that stay in the refrigerator are not processed, and elevation does not change them.
fridge-keep =
    Vinegar of 5 % as the recipe has it, boiling hot over the vegetables, into the refrigerator the same day, at
    { TEMP(40) } or colder; eat them within the weeks that the recipe says. They never stand on a shelf.
fridge-why = The cold keeps them, not a boil; only the minutes in a canner go by the elevation.

# Pickles in vinegar, and whether they must be boiled at all.
pickles = Only if { $food } is to stand on a shelf: in the refrigerator, in full vinegar, it needs no boil at any elevation.
pickles-cold =
    Refrigerator: vinegar of 5 % or more, at least half of the liquid and never thinned beyond the recipe, all of the food
    under it, at { TEMP(40) } or below.
pickles-shelf =
    Shelf: a tested pickle recipe to the letter, processed in boiling water{ $placed ->
        [yes] ; one that prints { $base } min for 0–1,000 ft takes { $due } min at { $place }.
       *[no] , for the time of your elevation.
    }
pickles-discard = Any jar that fizzes, bulges, leaks, has mould or was made with weaker or home-made vinegar: discard it, untasted.
pickles-why =
    Full vinegar keeps botulism down; the boil is for the moulds and yeasts that eat the acid, and a family recipe that
    nobody tested may hold too little of it.

siphon =
    The jars siphoned: the heat or pressure around them changed too fast. Those that sealed keep; do not open them to fill
    them up.
siphon-keep =
    Use first what lost some; what lost half or more goes into the refrigerator and is eaten within days. Food above the
    liquid darkens, and is still sound.
siphon-next =
    Next time pack hot, free the air, leave the headspace that the recipe prints, hold the boil or pressure steady, let the
    canner cool by itself, and wait 5 min (boiling water) or 10 min (pressure) before the jars come out.
siphon-why = Liquid boils up in the jar when what is around it cools first; up here it boils the sooner.

sealed =
    Well done. Take the rings off, wipe and label the jars, keep them cool and dark, and use them within a year. A ping
    proves the seal; what keeps them is the full time for your elevation.

keeping =
    Best within a year, at any elevation: jars that had their full process, sealed, without rings, cool, dark and dry.
keeping-opened = Opened, they go into the refrigerator: jam for weeks, fruit, tomatoes, vegetables and meat for days.
keeping-why =
    After that colour, taste and vitamins go first. Discard unopened what bulges, leaks, spurts or has lost its seal.

curing = I give no cure: salt and curing salt are weighed by a tested recipe, and elevation changes neither.
curing-ask = Ask your extension office, or take a tested recipe for that cut, and cure in the refrigerator.
curing-why =
    Too little fails against botulism, too much curing salt is a poison. Dry mountain air dries the outside first, so hang
    it moist and cool.

over-boiled-by =
    { $told } is { $by } too far at { $place }: jam and jelly set at about { $gel } here, so it was boiled down to candy.
over-boiled = Most likely it was boiled too far: jam and jelly set at about { $gel } at { $place }.
over-boiled-save =
    To save it: warm it gently with a few spoonfuls of water or juice to the jar until it loosens, keep it in the
    refrigerator and use it soon; or thin it more and use it as syrup or glaze.
over-boiled-burnt = If it tastes burnt, there is no saving it.
over-boiled-next =
    Next time boil water first, read the thermometer in it, and stop { "8 °F (4.5 °C)" } above that; a drop that wrinkles on
    a cold plate, or two drops that run together off the spoon, say the same.
over-boiled-why =
    The card's 220 °F (104.5 °C) is for sea level, 8 °F (4.5 °C) over the boil of water there. Water boils at { $boil } here,
    so all that is above the gel point drives off more water and leaves more sugar.

gas =
    { $placed ->
        [yes] The same gas takes { $ratio } times the room at { $place } that it takes at { $baseline }, so lids bulge and airlocks bubble more for the same ferment.
       *[no] Thin air gives the same gas more room, so lids bulge and airlocks bubble more for the same ferment.
    } Burp the jar or loosen its lid daily, more often in the first week; it is not done any sooner for that.
gas-burp = Open a clamped or screwed lid a crack over the sink once or twice a day, or use an airlock; press all of it back under the brine.
gas-warmth =
    The pace goes by the warmth of the room: at { TEMP(70) } to { TEMP(75) } kraut takes 3 to 4 weeks, at { TEMP(60) } to
    { TEMP(65) } 5 to 6. A mountain kitchen is often the cooler one.
gas-why = The bacteria make as much gas as anywhere; the air outside only holds it down less. Judge by taste and sourness, not by bubbles.

# $base and $more: what the rule of a pound for each 2,000 ft begins with and adds; $table: the printed pressures
sum =
    Your rule gives { $base } + { $more } = { $sum } psi at { $place }; but a canner is not run by the sum. Go by
    the printed table, which goes in steps: { $table } for vegetables and meat here.
sum-any =
    A pound for each 2,000 ft is what thin air takes away, but a canner goes by the printed table, which goes in steps: on a
    dial gauge 11 psi to 2,000 ft, 12 to 4,000, 13 to 6,000, 14 to 8,000; a weight 10 to 1,000 ft and 15 above.
sum-why = The air loses about half a pound for each 1,000 ft; the table makes that good at the top of each step.

fell = Yes: bring it back to { $wanted }, and start the whole time again from nothing.
fell-any = Yes: bring it back to the pressure for your elevation, and start the whole time again from nothing.
fell-steady = Then hold it a little over the mark: small changes of the flame, no draught, no lid lifted. A drop below also pulls liquid out of the jars.
fell-late =
    Jars whose time was counted through a drop, and that were not started again, are not safe on the shelf: within 24 h
    process them again in full with new lids, or freeze or refrigerate them; after that discard them.
fell-why = The minutes are tested at that pressure without a break; a dip cools the middle of the jar, and what came before cannot be counted.

which-changes-here =
    Only the pressure: in a pressure canner the printed minutes stay at every elevation, and at { $place } vegetables and meat
    take { $wanted }.
which-changes = Only the pressure: in a pressure canner the printed minutes stay at every elevation, and the pressure goes up.
# Why a kettle's table goes by minutes and a canner's by pounds.
why-either =
    An open kettle gets no hotter than its boil, which is cooler up here, so only more minutes make up for it; a canner can be
    brought back to the tested 240 °F (115.5 °C) by more pounds, so its minutes stay.
why-either-because =
    The gauge shows what the canner adds to the air outside: thinner air, more pounds for the same heat. Acid food needs only
    the boil; low-acid food needs the 240 °F (115.5 °C), which no kettle reaches.
which-changes-why =
    More pressure on the gauge makes up for the thinner air, so the steam inside is as hot as in the test. In boiling
    water nothing makes up for it, and there the minutes go up.
