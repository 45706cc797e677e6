# Questions about the bake shop. $place says "at 7,000 ft (2,130 m)" or names a kitchen with it.

span = { $low } to { $high }
percent = { $percent } %
percents = { $low } to { $high } %
anything-from = anything from { $span }

powder =
    A layer cake from sea level has { $powder } of baking powder. How much { $place }? Answer in teaspoons.
powder-counts = the range of the tables, to 1/16 tsp
powder-why =
    The gas of the powder takes { $swell } times the room { $place }. The tables take { $less } off, which leaves { $left }.

a-cup = { $spoons } a cup
a-cup-counts = the range of the tables, to 1/4 tbsp
sugar = How many tablespoons of sugar come off each cup of a layer cake's { $place }? Answer in tablespoons.
sugar-why =
    Water leaves the batter faster and what stays is sweeter, which keeps the crumb from setting: the tables give { $spoons }
    { $place }.
liquid = How many tablespoons of liquid are added to each cup of a layer cake's { $place }? Answer in tablespoons.
liquid-why =
    Thin, dry air takes water out of the batter and out of stored flour: the tables give { $spoons } { $place }.

oven = A layer cake bakes at { $setting } at sea level. How hot is the oven set for it { $place }?
oven-why =
    Set it to { $settings }, { $low } to { $high } °F hotter, so that the crumb sets before its gas has swelled to { $swell }
    times its room. It is done sooner, too.

cake-time =
    A cake takes { $minutes } min at sea level. About how long in the oven that is set hotter for it { $place }? Answer in
    minutes.
cake-time-why = In the hotter oven it is done sooner, after { $time } { $place }. Look in at the early end.

first-change =
    A sea-level cake falls { $place }. In which order do you try the changes of the tables, one bake at a time?
less-powder = less baking powder
less-sugar = less sugar
more-liquid = more liquid
first-change-why =
    { CAPITAL($order) }: the tables name them in that order, and want one change at a time. The powder comes first, since it
    does most: { $less } less of it { $place }.

onset =
    From about which elevation do the tables change a cake at all? Answer in { $units ->
        [us] feet
       *[metric] metres
    }.
onset-counts = within 500 ft (150 m)
onset-why = Their first band is { $begin }, with { $less } less powder. Under it cakes come out as written.

times = { $times } times
gas = How many times the room of sea level does the same gas in a dough take { $place }?
gas-counts = within 6 %
gas-why =
    { $times } the room: gas swells as the air presses less, { $here } { $place } against { $sea } at sea level. Every batter
    and dough has to live with that.

proof =
    A dough doubles in { $minutes } min at sea level. With no less yeast and just as warm, about how long does it take
    { $place }? Answer in minutes.
proof-why =
    About { $time }: yeast works at its old pace, but its gas takes { $swell } times the room { $place }. Stop when it has
    doubled, whatever the clock says.

yeast = By how many per cent do bakers cut the yeast of a bread { $place }?
yeast-counts = the bakers' range, and 3 % beside it
yeast-why =
    About { $less } less { $place }, so that a dough which swells faster still has time to gather flavour and strength.

whites =
    A sponge from sea level calls for whites beaten to stiff peaks. How far do you beat them { $place }?
whites-soft = to soft peaks that just fold over
whites-stiff = until stiff, as written
whites-dry = past stiff, until dry
whites-frothy = only until frothy
whites-why =
    The air beaten in swells { $swell } times as far { $place } as at sea level. Soft peaks can stretch; a stiff foam has no
    stretch left and bursts.

fat = At sea level { $food } are fried in fat at { $fat }. How hot is the fat { $place }?
fat-why =
    Turn it down about 3 °F (1.7 °C) for each 1,000 ft (305 m): { $fat } { $place }. The water in the dough boils at { $boil },
    so in hotter fat the crust is dark before the middle is done. Fry a little longer.

candy = At sea level { $stage } is { $sea }. Where does it stand { $place }?
candy-why =
    { CAPITAL($stage) } stands at { $here } { $place }: as far under sea level's as the boil, { $drop }. Cooked to the
    sea-level reading it holds too little water and sets too hard.

recipe-candy =
    A recipe written at sea level boils sugar to { $sea }. To what temperature do you boil it { $place }?
recipe-candy-why =
    The boil is { $drop } lower { $place }, and so is the sugar with the same water in it: { $here }. Boil plain water first
    and trust what the thermometer reads there.

caramel = Soft ball stands lower { $place } than at sea level. Does dry caramel, cooked to amber?
caramel-why =
    No. By then the water is gone, and sugar melts and browns at its own { $caramel } { $place } as anywhere. Go by the
    colour.

jam = At which temperature does jam without added pectin reach its gel point { $place }?
jam-why =
    Water boils at { $boil } { $place }, and a syrup that sets boils { $rise } over it: { $gel }. At sea level that is { $sea }.
