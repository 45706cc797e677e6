# What makes a dish go wrong, by the causes of data/tables/causes_common-practice.csv: of each why it does (because), and
# the change that mends it where that change has no size of its own (change).
# $high is yes where the place is known and high enough to matter: then $place, $boil (where water boils there), $gas (how
# many times the room the same gas takes up) $gel (where jam sets) and $crumb (the middle of
# a loaf that is done) are known too. $pressed is yes where it was cooked
# under pressure at such a place.

too-much-leavening-because =
    { $high ->
        [yes] At { $place } the gas takes up { $gas } times its room; it bursts the walls of the crumb before they set,
        and the bake coarsens and falls.
       *[no] The gas swells further than the walls of the crumb can stretch; they burst, and the bake coarsens and
        falls.
    }

too-little-leavening-because = There is too little gas, or the leavening has gone stale.

stale-leavening-change = Open a fresh tin of leavening; a spoon of it must fizz hard in hot water.
stale-leavening-because = Leavening loses its gas in the cupboard, in a damp one within months.

leavening-tastes-because = More soda or powder than the acid can use up is what tastes of soap.

soda-in-lumps-change = Sift the leavening with the flour and whisk them together.
soda-in-lumps-because = Lumps of soda stay as yellow, bitter specks.

too-much-sugar-because =
    { $high ->
        [yes] In the thin air of { $place } water leaves fast and the sugar grows strong, which keeps the crumb from
        setting.
       *[no] Sugar keeps the crumb from setting, and thin air concentrates it as the water leaves.
    }

too-little-sugar-because = Sugar holds water and browns; with too little of it the bake is pale, dry and tough.

too-much-fat-because = Fat shortens the walls of the crumb, so that they hold less.

too-little-fat-because = Fat keeps gluten short; with too little of it the crumb is tough.

too-little-liquid-because =
    { $high ->
        [yes] In the thin, dry air of { $place } the crumb loses more water, and is left short of it.
       *[no] The crumb was left short of water.
    }

too-much-liquid-because = More water than the flour and egg can bind leaves a wet, heavy streak.

too-little-flour-because = Flour is what gives the walls their strength; there is too little for the sugar and fat.

too-much-flour-because =
    A packed cup holds a fifth more flour than a spooned one, and flour stored in dry air takes up more water.

too-little-egg-change = Use extra-large eggs where the recipe has large.
too-little-egg-because = Egg sets the walls; a larger one strengthens them and brings water with it.

oven-too-cool-because = The crumb sets too late, when the gas is already past its best.

oven-dries-because =
    { $high ->
        [yes] A crust stays near the boil, { $boil } at { $place }, until it is dry, and browns only then.
       *[no] A crust browns once it is dry and hot; in a cool oven it dries for long and stays pale.
    }

oven-browns-because = A crust browns by the heat of the oven; a cooler one leaves the inside time to catch up.

oven-too-hot-because = The outside sets and browns before the middle has had its heat.

oven-astray-change = Hang a thermometer in the oven and set the dial by it.
oven-astray-because = Ovens stray by 25 °F (14 °C) and more, and a dial does not show it.

baked-too-short-because = The middle was not yet set when it left the oven.

baked-too-long-because = It stayed in until it had lost more water than it could spare.

pan-too-full-change = Fill the pan half full, not two thirds.
pan-too-full-because =
    { $high ->
        [yes] At { $place } a batter swells further, and this one had no room.
       *[no] The batter had no room to swell in.
    }

pan-wrong-change = Bake in a light metal pan on the middle rack; dark metal and glass want 25 °F (14 °C) less.
pan-wrong-because = Dark pans and glass pass on heat faster at the edge than the middle can take it.

pan-wider-change = Bake it in a wider pan, so that it stands no more than 1½ in (4 cm) deep.
pan-wider-because = A deep middle gets its heat last.

cover-edge-change = Lay foil loosely over the top when it is brown, and give the middle its time.
cover-edge-because = The edge has its heat long before the middle.

door-opened-change = Leave the oven door shut for the first three quarters of the time.
door-opened-because = Cool air stops the gas before the walls have set.

stood-too-long-change = Put the batter in the oven as soon as it is mixed.
stood-too-long-because = Powder gives off its gas in the bowl, and what has gone does not raise the bake.

overbeaten-air-change = Beat less, and stop when the batter is just smooth.
overbeaten-air-because = The air that is beaten in swells too, and stretches the walls.

overmixed-change = Stir only until the flour is wet, about fifteen strokes; lumps may stay.
overmixed-because = Stirring makes gluten, which toughens the crumb and draws tunnels through it.

underbeaten-change = Cream fat and sugar longer, until they are pale and light.
underbeaten-because = The first air comes from creaming; powder only swells it.

undermixed-change = Scrape the bowl down twice and mix until no streak is left.
undermixed-because = What is not mixed in sinks, and bakes to a wet layer.

whites-too-stiff-change = Beat the whites only to soft peaks that just fold over.
whites-too-stiff-because =
    { $high ->
        [yes] Bubbles grow { $gas } times as far at { $place }, and a stiff foam has no stretch left: its cells burst.
       *[no] A stiff foam has no stretch left; its cells burst as they swell.
    }

whites-too-soft-change =
    Beat the whites in a clean dry bowl until the tip of a peak just folds over, the sugar a spoon at a time.
whites-too-soft-because = A trace of fat, or sugar in too early, keeps a foam from building.

pan-greased-change = Leave the pan ungreased and let the cake hang upside down until it is cold.
pan-greased-because = A foam cake climbs by its grip on the pan, and hangs by it while it sets.

grease-the-pan-change = Grease the pan well and line its floor with paper.
grease-the-pan-because = Where water leaves fast the sugar at the edge is strong, and it glues.

left-in-the-pan-change = Turn it out after 10 minutes, while it is warm.
left-in-the-pan-because = In the pan a cooling bake sweats, shrinks on to the metal and sticks.

cool-on-a-rack-change = Take it out of the pan and cool it on a rack.
cool-on-a-rack-because = Steam that cannot leave goes back into the crust.

warm-dough-change = Chill the shaped dough for 30 minutes before it goes in.
warm-dough-because = Warm fat runs before the oven can set the edge.

hot-tray-change = Use a cold tray with paper, not a greased one.
hot-tray-because = Dough on a warm or greased tray runs before it sets.

moist-sugar-change = Change half of the white sugar for brown, and take them out while the centre still looks soft.
moist-sugar-because = Molasses holds water; white sugar sets crisp.

handled-too-much-change = Handle the dough lightly; pat it, cut straight down and do not twist.
handled-too-much-because = Kneading tightens the dough, and a twisted edge seals the layers.

cut-fat-cold-change = Keep the fat cold and in pieces the size of peas.
cut-fat-cold-because = Fat that has melted into the flour cannot lift it in layers.

too-much-yeast-because =
    { $high ->
        [yes] At { $place } the same gas fills { $gas } times the room, so the dough is ready sooner than the recipe
        reckons with.
       *[no] The dough makes its gas sooner than the recipe reckons with.
    }

too-little-yeast-because = The dough has too little yeast for the time it is given, or old yeast.

dead-yeast-change = Prove the yeast first; in water at 105 °F (41 °C) with a pinch of sugar it must foam in 10 minutes.
dead-yeast-because = Old yeast, or water over 130 °F (54 °C), raises nothing.

risen-too-long-because =
    { $high ->
        [yes] At { $place } the gas takes up { $gas } times its room, so the dough is past double before its time; the
        walls are stretched thin, and the oven bursts them.
       *[no] Past double the walls are stretched thin, and the oven bursts them.
    }

risen-too-short-because = A dough baked before it has doubled stays small and close.

dough-too-warm-change =
    Use cooler water, so that the dough is mixed to 75 °F (24 °C), or rise it in the refrigerator overnight.
dough-too-warm-because = Every 15 °F (8 °C) warmer doubles the pace of the yeast.

dough-too-cold-change = Rise it at 75 to 80 °F (24 to 27 °C), away from draughts.
dough-too-cold-because = Yeast in a cold dough works at half its pace or less.

knead-more-change = Knead until a piece stretches to a window without tearing.
knead-more-because = A slack gluten cannot hold the gas it is given.

dough-too-wet-because = A slack dough cannot carry its own weight.

dough-too-dry-because =
    { $high ->
        [yes] Flour kept in the dry air of { $place } takes up more water, and a stiff dough rises little.
       *[no] Flour stored in dry air takes up more water, and a stiff dough rises little.
    }

punch-down-change = Punch the dough down, shape it tightly and press out the large bubbles.
punch-down-because = Bubbles run together in a dough that is not knocked back.

oven-late-because = In a cool oven the dough goes on rising, until its cells run together.

baked-to-heat-change =
    Bake until a thermometer in the middle reads within 5 °F (3 °C) of the boil here, and the loaf sounds hollow.
baked-to-heat-because = Colour comes before the crumb has set.

cool-before-cutting-change = Let it cool for an hour before you cut it.
cool-before-cutting-because = The crumb goes on setting while it cools.

crust-dried-change = Keep the dough covered while it rises, and steam the oven for the first 10 minutes.
crust-dried-because =
    { $high ->
        [yes] The thin, dry air of { $place } draws a skin on the dough before it bakes, and that bakes thick.
       *[no] A skin that dries before the oven bakes thick.
    }

butter-too-warm-change = Roll with butter at 55 °F (13 °C), and chill 30 minutes between the folds.
butter-too-warm-because = Butter that is softer than the dough is pressed out of it.

proofed-too-warm-change = Rise it under 78 °F (26 °C), below where butter melts.
proofed-too-warm-because =
    Butter softens well under the 90 °F (32 °C) at which it melts, and a warm dough rises fast: both want it cooler.

sealed-badly-change = Bake hotter for the first 15 minutes, so that the layers set before the butter runs.
sealed-badly-because = Layers that are set hold what melts between them.

blind-bake-change = Bake the crust blind until it is dry, then fill it.
blind-bake-because = A raw crust takes up the filling before it can set.

hot-stone-change = Bake on a stone or steel heated for 45 minutes, low in the oven.
hot-stone-because = The base must be set before the topping's water reaches it.

less-topping-change = Drain what goes on top or inside, and use a third less of it.
less-topping-because = Wet fillings weep more water than a crust can boil away.

pastry-water-change = Add the water a spoon at a time and stop when a handful just holds.
pastry-water-because = Water and kneading make gluten; a crust wants little of both.

pastry-thirsty-because = Flour kept in dry air needs more water to hold together.

rest-pastry-change = Rest the dough 30 minutes in the cold after rolling, and ease it in without stretching.
rest-pastry-because = Stretched gluten draws back in the heat.

thicken-filling-change = Let the filling bubble in the middle for 5 minutes before it comes out, and cool it fully.
thicken-filling-because = Starch thickens only near the boil, and sets only when it is cold.

dry-the-paste-change = Cook the paste until it films the pan, and add egg only until it falls from the spoon in a V.
dry-the-paste-because = A wet paste has no strength to stay up.

dry-the-shells-because =
    { $high ->
        [yes] Steam swells the shells { $gas } times as far at { $place }, and walls that are not dry right through fold
        as they cool.
       *[no] Shells that are not dry inside go soft and fold as they cool.
    }

pierce-the-shells-change = Pierce each shell and give it 10 minutes more in the open oven.
pierce-the-shells-because = Steam that is shut in softens the walls from within.

stronger-base-change = Make the base a little thicker, with a spoon more flour for each cup of milk.
stronger-base-because = A thin base cannot carry the foam.

serve-at-once-change = Bake it to order and carry it straight out.
serve-at-once-because = It is held up by hot gas, and shrinks as that cools.

dry-day-change = Work on a dry day, and cool and wrap it at once.
dry-day-because = Sugar draws water out of damp air.

spread-on-hot-change = Spread it on a hot filling, and out to the crust.
spread-on-hot-because = A cold filling leaves raw white underneath, and that weeps.

sugar-undissolved-change = Beat until no grain can be felt between the fingers.
sugar-undissolved-because = Sugar that has not dissolved draws water later.

bake-drier-because = An oven that is too hot squeezes beads of syrup out of it.

rest-the-shells-change = Rap the tray, rest the shells until a skin forms, and fold the mixture a little more.
rest-the-shells-because = Large bubbles under a skin that is not dry burst or hollow it.

slow-cooling-change = Turn the oven off while the middle still trembles, and cool it there with the door ajar.
slow-cooling-because = A top that cools quickly shrinks and tears.

cheesecake-too-hot-change =
    Take it out at 145 to 155 °F (63 to 68 °C) in the centre, still trembling, and let it cool slowly.
cheesecake-too-hot-because = Egg squeezes its water out and shrinks when it is cooked past setting.

custard-too-hot-change = Take it out at 175 to 180 °F (79 to 82 °C) inside, and bake it in a bath that does not boil.
custard-too-hot-because = Egg squeezes its water out when it is cooked past setting.

custard-not-set-because = The middle has not reached the heat at which egg sets.

temper-the-egg-change = Stir half of the hot milk into the egg first, and keep the pan under a simmer.
temper-the-egg-because = Egg that meets heat at once sets in lumps.

double-boiler-change = Cook it over direct heat, stirring, until it bubbles; not in a double boiler.
double-boiler-because =
    { $high ->
        [yes] A double boiler gets no hotter than { $boil } at { $place }, and starch thickens only near that.
       *[no] The water under a double boiler is no hotter than the boil here, and starch thickens only near it.
    }

boil-the-starch-change = Let it bubble for a full minute after it thickens, and stop stirring hard then.
boil-the-starch-because = Starch that has not come near the boil thins out again.

culture-warmth-change = Hold it at 108 to 112 °F (42 to 44 °C), undisturbed, for 8 hours.
culture-warmth-because = The culture works in a narrow band; warmer kills it, cooler stops it.

scald-the-milk-change = Hold the milk at 180 °F (82 °C) for 10 minutes before it cools and is set.
scald-the-milk-because = Heated whey proteins are what thicken it.

cooked-past-stage-because =
    { $high ->
        [yes] Water boils at { $boil } at { $place }, so at the reading printed for sea level far more water has gone,
        and the sugar sets harder.
       *[no] A stage is how much water is left; cooked past it, the sugar holds too little.
    }

cooked-under-stage-because = It left the heat with too much water in it.

thermometer-off-change = Boil the thermometer in plain water first, and take every stage from what it reads there.
thermometer-off-because = A thermometer that is off by 3 °F (2 °C) is off by a whole stage.

stirred-while-hot-change = Do not stir after it boils, and leave it alone until it has cooled to 110 °F (43 °C).
stirred-while-hot-because = A stirred hot syrup throws coarse crystals.

seed-crystals-change = Dissolve all the sugar before it boils, and wash the side of the pan down with a wet brush.
seed-crystals-because = One crystal from the side sets off all the rest.

add-glucose-change = Put in a tablespoon of corn syrup for each cup of sugar.
add-glucose-because = Another sugar gets in the way of the crystals.

lower-the-flame-change = Cook it over a lower flame in a heavier pot.
lower-the-flame-because = Where the floor of the pot is far hotter than the food, it burns there first.

undercooked-gel-because =
    { $high ->
        [yes] Jam sets near { $gel } at { $place }, when enough water has left for the sugar to reach about 65 %.
       *[no] Jam sets when enough water has left for the sugar to reach about 65 %.
    }

overcooked-gel-because =
    { $high ->
        [yes] At { $place } jam is set at { $gel }; cooked to the 220 °F (104 °C) of sea level too much water has gone,
        and it sets stiff.
       *[no] Past its setting point too much water has gone, and it sets stiff.
    }

too-little-acid-change =
    Use fruit that is just ripe, or a tested recipe with added pectin; add the lemon juice the recipe has, no less.
too-little-acid-because = Pectin sets only with enough acid, and overripe fruit has little of either.

batch-too-large-change = Make one batch at a time, of 4 to 6 cups (1 to 1.5 l) of juice.
batch-too-large-because = A doubled batch boils too long before it is strong enough, and pectin breaks down.

too-much-pectin-change = Use riper fruit.
too-much-pectin-because = Fruit that is not ripe has more pectin than the recipe reckons with.

slow-boil-change = Cook at a rapid boil, and wipe the side of the pot before you fill the jars.
slow-boil-because = Jam that cooks slowly or long throws crystals, and sugar on the side seeds them.

gel-sugar-measured-change = Measure the sugar as the tested recipe has it, and dissolve all of it.
gel-sugar-measured-because = Excess or undissolved sugar comes out as crystals.

needs-more-time-because =
    { $high ->
        [yes] Water boils at only { $boil } at { $place }, and food softens slowly at that, however hard it boils.
       *[no] Food softens by time at heat, and a hard boil is no hotter than a soft one.
    }

needs-cooker-because =
    { $pressed ->
        [yes] The gauge counts from the thinner air of { $place }, so it is cooler inside the cooker as well.
       *[no] { $high ->
            [yes] An open pot gets no hotter than { $boil } at { $place }, and that softens it very slowly; under pressure
            it is far hotter.
           *[no] A pressure cooker is hotter inside than any open pot.
        }
    }

soak-in-salt-change = Soak overnight in salted water, 1½ tbsp of salt to 8 cups (1.9 l) for 1 lb (450 g).
soak-in-salt-because = Water must reach the middle before the heat can soften it, and salt softens the skins.

acid-too-early-change = Hold back tomato, wine, vinegar and molasses until they are soft.
acid-too-early-because = Acid and lime hold the walls of the plant together.

old-or-hard-water-change =
    Use this year's crop, and ¼ tsp of baking soda for each pound (450 g) where the water is hard.
old-or-hard-water-because = Old seeds and hard water never soften fully.

simmer-gently-change = Keep it at a bare simmer, where the surface only trembles.
simmer-gently-because = A hard boil is no hotter than a soft one; it only knocks the food about.

skins-not-soaked-change = Soak 12 to 24 hours in salted water.
skins-not-soaked-because = Skins that have not taken up water burst when the middle swells.

pot-needs-water-because =
    { $high ->
        [yes] At { $boil } it simmers longer, and boils off more.
       *[no] The longer simmer boils off more.
    }

less-water-because = What it cannot take up stays on the surface as paste.

rinse-the-starch-change = Rinse until the water runs clear, and do not stir while it cooks.
rinse-the-starch-because = Loose starch on the surface is the glue.

rest-covered-change = Take it off the heat and leave it covered for 10 minutes.
rest-covered-because = The water that is left evens out by itself.

keep-the-lid-change = Put on a lid that fits, and turn the burner down until it only trembles.
keep-the-lid-because = An open pot loses its water to the room, and a harder boil only loses it faster.

start-in-cold-change = Start whole roots in cold water and cut them to one size.
start-in-cold-because = The outside must not be done before the middle is warm.

cut-smaller-change = Cut the pieces half as thick.
cut-smaller-because = Heat takes four times as long to reach twice as deep.

stop-sooner-because = It has simply had more heat than it needed.

big-pot-change = Use 4 quarts (4 l) of boiling water to a pound (450 g), and stir for the first 2 minutes.
big-pot-because = Starch thickens a small pot, and the strands touch before they are set.

dress-at-once-change = Sauce it as soon as it is drained.
dress-at-once-because = Starch sets as it cools and glues strand to strand.

hold-the-boil-change = Bring it back to a full boil under a lid, in smaller batches.
hold-the-boil-because = A pot that stops boiling soaks the food without cooking it.

make-smaller-change = Make them smaller, and cover the pot.
make-smaller-because = The middle gets its heat last.

meat-not-done-because =
    { $high ->
        [yes] The pot gets no hotter than { $boil } at { $place }, so its collagen melts more slowly: it is only not
        done yet.
       *[no] Collagen melts by time at heat, long after the meat is cooked through.
    }

meat-boiled-hard-change = Hold the liquid at a bare tremble, or the oven at 300 °F (150 °C).
meat-boiled-hard-because = Meat squeezes its water out when it boils; collagen melts well below that.

wrong-cut-change = Choose a cut with more sinew and fat, such as shoulder, shank or short rib.
wrong-cut-because = A lean cut has no gelatin to put back what it loses.

meat-overcooked-change = Go by a thermometer, take it out as it reaches its safe temperature inside, and let it rest.
meat-overcooked-because = Every degree past done squeezes out more juice.

salt-ahead-change = Salt it a day ahead, or brine it for some hours.
salt-ahead-because = Salt lets the meat hold more of its water.

air-dries-it-change = Cover it for the first two thirds, or put a pan of water beside it.
air-dries-it-because = Thin dry air takes more water from the surface.

wider-room-change = Use a pot twice as deep as what is in it, and lay a wooden spoon across.
wider-room-because =
    { $high ->
        [yes] A foam of starch or protein climbs { $gas } times as high at { $place }.
       *[no] A foam of starch or protein climbs higher where the bubbles swell more.
    }

thicker-later-change = Take the lid off for the last half hour, or thicken it when the food is done.
thicker-later-because = What a closed pot does not lose it keeps as thin liquid.

thicken-boil-change = Stir in a slurry of starch and bring it to a bubble for a full minute.
thicken-boil-because = Starch gives its thickness only near the boil.

thin-it-because =
    { $high ->
        [yes] At { $boil } it simmered longer and more has boiled off than the recipe reckons with.
       *[no] More has boiled off than the recipe reckons with.
    }

season-more-because = Above about 7,000 ft (2,130 m) less of the aroma reaches the nose.

add-acid-change = Finish with a little lemon or vinegar.
add-acid-because = Acid lifts flavours that long simmering has dulled.

skim-it-change = Start in cold water, skim as it comes up, and never let it boil.
skim-it-because = A boil beats fat and protein into the liquid.

strain-it-change = Ladle it through a wet cloth without pressing.
strain-it-because = Pressing sends the fine particles through.

fat-too-cool-because = In cool fat the crust forms late, and fat follows the water that leaves.

smaller-batches-change = Fry fewer pieces at a time, and let the fat come back between.
smaller-batches-because = Each cold piece takes heat from the fat.

fat-too-hot-because =
    { $high ->
        [yes] The water inside boils at { $boil } at { $place } and holds the middle there, while hot fat browns the
        crust at its old pace.
       *[no] The crust browns before the heat has reached the middle.
    }

finish-in-oven-change = Brown it in the fat and finish it in the oven, by a thermometer.
finish-in-oven-because = The oven heats the middle without darkening the crust.

change-the-fat-change = Strain the fat after every use and change it when it darkens or foams.
change-the-fat-because = Crumbs and old fat foam, and smoke at a lower temperature.

dry-the-food-change = Pat the food dry and fill the pot no more than half with fat.
dry-the-food-because = Water that meets hot fat turns to foam at once.

older-eggs-change = Start them in boiling water or steam, and cool them at once in ice water.
older-eggs-because = White that is heated quickly lets go of the shell; the ice bath shrinks it away.

week-old-eggs-change = Use eggs that are a week or two old.
week-old-eggs-because = In a fresh egg the white clings to the skin of the shell.

egg-longer-because =
    { $high ->
        [yes] The water is only { $boil } at { $place }, so heat comes to the middle later.
       *[no] The heat had not yet reached the middle.
    }

egg-shorter-because = Iron from the yolk meets sulfur from the white when both have been hot too long.

egg-ice-bath-change = Cool them in ice water the moment their time is up.
egg-ice-bath-because = They go on cooking in their own heat.

egg-gently-change = Lower them in with a spoon and keep the water at a simmer.
egg-gently-because = Shells crack on each other and on the pot.

egg-warmed-change = Let them stand at room temperature for 20 minutes first.
egg-warmed-because = Air in a cold egg swells faster than it can leak out.

safe-inside-change = Put it back and cook it until a thermometer in the thickest part reads its safe temperature.
safe-inside-because = Colour tells nothing certain; the thermometer does.

slower-heat-change = Use a lower heat and more time.
slower-heat-because = The outside is done long before heat has reached the middle.

finer-grind-change = Grind one step finer.
finer-grind-because = Finer grounds give up more in the same time.

more-grounds-change = Brew with 55 g of coffee to the litre (2 oz to the quart).
more-grounds-because = Too few grounds give a thin cup however hot the water is.

hotter-water-because =
    { $high ->
        [yes] Water boils at only { $boil } at { $place } and draws less; water that has stood off the boil draws less
        still.
       *[no] Water that has stood off the boil draws little.
    }

steep-longer-because = Cooler water draws more slowly.

moist-kernels-change =
    Keep the kernels in a tight jar; a spoon of water to a quart (1 l), shaken and left three days, revives dry ones.
moist-kernels-because = A kernel needs about 14 % of water to burst, and dry air takes it.

even-heat-change = Start with three kernels in the oil, add the rest when they pop, and keep them moving.
even-heat-because = Kernels that warm slowly leak their steam instead of bursting.

seal-ring-change = Clean the sealing ring and the rim, and replace a ring that is stiff or cracked.
seal-ring-because = Pressure builds only when no steam leaves but through the vent.

valve-seat-change =
    Off the heat, when it is cool: lift out the valve, wash it and its little seal, turn the lid until it locks, and set the
    weight or the knob to sealing.
valve-seat-because =
    Steam that keeps coming from the valve means that it does not seat, or the lid is not locked home. Thin air is not
    the cause: it only makes the climb slower, and a gauge counts from it.

come-up-heat-change = Bring it up over the highest heat, and turn it down only when the pressure is there.
come-up-heat-because =
    Until the valve closes the steam has to come faster than it leaves, and a weak flame never gets there; gas burns weaker
    in thin air.

caught-on-base-change =
    Cancel, let the pressure down, scrape the bottom clean and stir in a cup (240 ml) of thin liquid; lay tomato, starch
    and thick sauce on top and do not stir them in.
caught-on-base-because =
    The sensor feels a base that is too hot: something thick has caught there, or too little water is left, and more of it
    boils off here before the lid closes.

vent-and-fill-change = Check that the vent is clear and that there is a cup (240 ml) of thin liquid at the bottom.
vent-and-fill-because = Without steam there is no pressure.

headspace-change = Leave the headspace of the tested recipe, press out the air bubbles and wipe the rim.
headspace-because = Food that swells pushes itself and its liquid under the lid.

steady-pressure-change = Hold the pressure steady, and let the canner cool by itself before you open it.
steady-pressure-because = Pressure that falls suddenly draws the liquid out of the jars.

new-lids-change = Use a new lid and an unchipped jar, and test every seal when the jars are cold.
new-lids-because = A lid seals once; a chip or a crumb on the rim breaks the seal.

tested-process-change = Follow a tested recipe, with the time and pressure printed for your elevation.
tested-process-because = Spoilage after canning means that the process was too short, or the seal failed.

soft-water-change = Use canning salt and soft water.
soft-water-because =
    Fillers in table salt and the minerals of hard water cloud a brine harmlessly; spoilage looks the same.

sweet-dough-spreads-because =
    { $high ->
        [yes] At { $place } the dough is pushed out and runs before it sets: sugar melts to syrup and carries it
        outwards.
       *[no] Sugar melts to syrup before the dough sets, and carries it outwards.
    }

fat-dough-spreads-because = Fat melts before the dough sets, and carries it outwards.

weak-dough-spreads-because = Flour is what holds the dough up while the fat melts.

double-tray-change = Bake on the middle rack, with a second tray under the first.
double-tray-because = The floor of the oven and a thin dark tray pass on too much heat from below.

flour-held-back-change = Wet your hands and fold it, instead of adding flour.
flour-held-back-because = Dough that is folded tightens by itself; flour kneaded in makes it dry.

sauce-too-hot-change = Keep it under 150 °F (65 °C), over warm water that does not boil.
sauce-too-hot-because = Above that the egg sets and lets go of the fat.

fat-too-fast-change = Whisk the broken sauce into a spoon of warm water, a little at a time.
fat-too-fast-because = Fat that comes in faster than it is beaten runs together.

slurry-cold-change = Stir the starch into cold liquid first, and whisk while it heats.
slurry-cold-because = Starch that meets hot liquid dry is sealed in lumps.

strain-lumps-change = Press it through a fine sieve.
strain-lumps-because = What is lumpy already does not stir out.

salt-at-the-end-change = Salt at the end, when it has boiled down as far as it will.
salt-at-the-end-because = What boils off is water; the salt stays.

dilute-because = Only more of everything else makes a dish less salty.

wrap-it-change = Wrap it in paper or foil until it climbs again.
wrap-it-because = Water leaving the surface cools it as fast as the smoker heats it.

wait-the-stall-change = Leave it alone, hold the smoker steady and go by tenderness.
wait-the-stall-because = The stall ends by itself when the surface has dried.

dry-the-skin-change = Salt the skin and leave it uncovered in the refrigerator overnight.
dry-the-skin-because = Skin browns only when it is dry.

finish-hot-because = Skin needs more heat than the meat under it.

pancake-gas-because =
    { $high ->
        [yes] At { $place } the gas takes up { $gas } times its room and is gone before the batter sets, so they rise and fall
        flat.
       *[no] The gas is gone before the batter sets, so they rise and fall flat.
    }

pancake-thicker-change =
    Stir in 1 to 2 tbsp more flour for each cup, only until it is wet, and let the batter rest 5 to 10 minutes.
pancake-thicker-because =
    { $high ->
        [yes] A thin or overstirred batter cannot hold the gas that swells to { $gas } times its room at { $place }, and stays
        flat and gummy.
       *[no] A thin or overstirred batter cannot hold its gas, and stays flat and gummy.
    }

griddle-medium-change = Cook on a medium griddle, 350 to 375 °F (177 to 190 °C), and turn once, when the edge is dry.
griddle-medium-because = On too hot a griddle the face is brown while the middle is still batter.

steam-longer-because =
    { $high ->
        [yes] Steam at { $place } is only { $boil }, so the middle sets later.
       *[no] Steam is cooler up high, so the middle sets later.
    }

steamed-lid-change =
    Wrap a cloth round the lid, or cover the basin with pleated foil tied tight, so that no drop falls on the
    dough.
steamed-lid-because = Steam that condenses on the lid drips back and leaves the top wet.

steam-full-change =
    Put it over water at a full boil, leave the lid shut to the end, and then let it stand 3 to 5 minutes with
    the lid ajar.
steam-full-because = Steam that is let out lets the middle cool, and a sudden draught makes the tops fall in.

top-up-boiling-change = Keep the water at a full boil, half way up the basin, and top it up from a boiling kettle.
top-up-boiling-because = A pot that goes off the boil stops cooking, and up high it boils away sooner.

crumbly-dry-because =
    { $high ->
        [yes] At { $place } flour is drier and the dough is short of water, so nothing binds it.
       *[no] The dough is short of water, so nothing binds it.
    }

crust-hotter-because =
    { $high ->
        [yes] A crust browns only once it is dry, and until then it stays near the boil, { $boil } at { $place }; in a cool
        oven it dries for long and stays pale.
       *[no] A crust browns only once it is dry; in a cool oven it dries for long and stays pale.
    }

bake-to-colour-because = It came out by the clock, before the crust had dried and taken colour.

vent-the-steam-change =
    Steam the oven for the first 10 minutes only, then let the steam out and finish dry; cool the loaf on a
    rack.
vent-the-steam-because = Steam makes a crust shine and then keeps it soft and pale.

slash-deeper-change = Slash it ½ in (1 cm) deep, and steam the oven for the first 10 minutes.
slash-deeper-because =
    { $high ->
        [yes] The gas takes up { $gas } times its room at { $place }, and a crust that has set splits where it is weakest.
       *[no] A crust that has set before the loaf stops growing splits where it is weakest.
    }

wetter-flatbread-because =
    { $high ->
        [yes] Flour kept in the dry air of { $place } needs more water, and a stiff dough cracks and does not puff.
       *[no] A stiff dough cracks and does not puff.
    }

rest-flatbread-change =
    Rest the dough 30 minutes under a cloth, roll it even and thin, and keep the cooked ones wrapped.
rest-flatbread-because = Dough that has not rested springs back and tears.

hotter-griddle-change =
    Bake it on a griddle so hot that flour browns on it in a few seconds, and press the edge with a cloth when
    it bubbles.
hotter-griddle-because = It puffs only where steam is made faster than it gets out.

batter-warmth-change =
    Keep it at 80 to 90 °F (27 to 32 °C), by the oven light left on or a pan of hot water beside it, until it
    has doubled, up to 24 h.
batter-warmth-because = A batter in a cold kitchen hardly ferments: every 15 °F (8 °C) cooler halves the pace.

batter-starter-change =
    Grind in ½ tsp of fenugreek for each cup of urad, leave the salt out until it has risen, and mix it by hand.
batter-starter-because =
    The wild yeasts of the pulse do the work; chlorinated water, salt and old urad hold them back.

batter-ground-change = Grind the urad alone with ice-cold water until it is fluffy and floats.
batter-ground-because = Only a light, smooth batter holds the gas.

bottom-rack-change =
    Bake it on the lowest rack, on a tray or stone heated for 30 minutes, and go on until the underside is
    brown.
bottom-rack-because =
    { $high ->
        [yes] The underside stays at the boil of the juice, { $boil } at { $place }, until it has dried, and a small or cool
        oven never gets that far.
       *[no] The underside cannot brown until it has dried, and the heat must come from below.
    }

oven-tested-change =
    Heat it 30 minutes, then put in a sheet of white paper: in 5 minutes it is pale gold at 350 °F (177 °C),
    brown at 425 °F (218 °C).
oven-tested-because = An oven without a thermometer is often far cooler than its flame looks.

precook-fruit-change =
    Cook the slices 5 to 10 minutes in their juice and a spoon of butter before they go in, and cool them.
precook-fruit-because =
    { $high ->
        [yes] Inside the crust the fruit gets no hotter than the boil, { $boil } at { $place }, and softens slowly.
       *[no] Inside the crust the fruit gets no hotter than its juice can boil.
    }

slice-thin-change = Slice the fruit ¼ in (6 mm) thick, and cover the crust with foil for the last third.
slice-thin-because = Thick pieces need longer than the crust can stand.

oven-start-hot-because =
    { $high ->
        [yes] It is steam that lifts them, and in a slow oven the paste dries before it has swelled; it boils off at { $boil }
        at { $place }.
       *[no] It is steam that lifts them, and in a slow oven the paste dries before it has swelled.
    }

oven-softer-because =
    { $high ->
        [yes] The outside sets while the steam inside still swells, { $gas } times as far as at sea level, and it tears open.
       *[no] The outside sets while the steam inside still swells, and it tears open.
    }

softer-paste-change = Beat in half an egg more, until the paste falls from the spoon in a V.
softer-paste-because = A stiff paste cannot stretch, and cracks.

pipe-even-change = Pipe with a fine star nozzle and smooth the tips with a wet finger.
pipe-even-because = Ridges let it spread all round; a smooth skin opens at one place.

tin-hot-change =
    Heat the oiled tin in a 450 °F (230 °C) oven until a drop of batter sizzles, fill it half, and do not open
    the door for 20 minutes.
tin-hot-because = They rise by one burst of steam, and a tin that is not hot lets it seep away.

popover-egg-change = Use one more egg, or two more whites, and water for half of the milk.
popover-egg-because =
    { $high ->
        [yes] At { $place } the steam swells further than weak walls can hold; egg is what makes them strong.
       *[no] Egg makes the walls that hold the steam.
    }

popover-batter-change = Let the batter stand 30 minutes, at room temperature, and use it no thicker than cream.
popover-batter-because = A cold, thick batter sets before it has risen.

scald-the-starch-change =
    Bring the milk, oil and salt to a full rolling boil, pour it over the starch at once and beat it smooth; add
    the egg when it is lukewarm.
scald-the-starch-because =
    { $high ->
        [yes] The starch must be scalded to swell, and at { $place } even a full boil is only { $boil }.
       *[no] Starch that was not scalded does not swell and hold the steam.
    }

egg-by-feel-change = Beat in egg until the dough is soft and shiny and just holds its shape.
egg-by-feel-because = A stiff dough has too little steam and cannot stretch.

sour-starch-change = Use sour tapioca starch for half of it.
sour-starch-because = Sour starch stretches and puffs; sweet starch makes it dense.

souffle-smaller-change = Bake it in cups of 6 oz (180 ml), set low in the oven on a hot tray.
souffle-smaller-because = In a large dish the rim is done long before the middle.

dry-meringue-because = It left the oven before the middle had dried.

folded-too-far-change = Stop folding when a ribbon sinks back in 10 to 20 seconds.
folded-too-far-because = A mixture folded too far has lost its air and runs.

off-at-180-change =
    Take it off at 180 °F (82 °C) by a thermometer, stirring all the time, and strain it into a cold bowl at
    once.
off-at-180-because =
    { $high ->
        [yes] Egg curdles from about 185 °F (85 °C), and at { $place } milk simmers at about { $boil }: by the time it steams
        and shivers there is little left before it curdles.
       *[no] Egg curdles from about 185 °F (85 °C), long before milk boils.
    }

on-to-180-change = Go on to 180 °F (82 °C), stirring, until it coats a spoon and a finger leaves a line.
on-to-180-because = Egg thickens between 170 and 180 °F (77 and 82 °C), at any elevation; it was taken off too soon.

cool-bath-change = Cool it over ice, stirring, as soon as it is off the heat.
cool-bath-because = A hot pan goes on cooking it.

boil-pastry-cream-change = Bring it to a real boil and let it bubble 1 to 2 minutes, whisking hard.
boil-pastry-cream-because =
    { $high ->
        [yes] Unboiled yolk has an enzyme that eats the starch overnight, and at { $place } the boil is only { $boil }, so it
        needs the whole 2 minutes.
       *[no] Unboiled yolk has an enzyme that eats the starch overnight.
    }

more-starch-change = Use 1 to 2 tsp more starch for each cup (240 ml) of milk.
more-starch-because =
    { $high ->
        [yes] At { $boil } starch does not swell as far as at sea level.
       *[no] There is too little starch for the milk.
    }

bath-slower-because =
    { $high ->
        [yes] The bath boils at { $boil } at { $place }, and less at its edge, so the middle comes later to the 175 °F (79 °C)
        at which egg sets.
       *[no] The middle has not come to the 175 °F (79 °C) at which egg sets.
    }

bath-filled-hot-change =
    Fill the bath with boiling water half way up the cups, start with a warm mixture, and set the oven to 325 °F
    (163 °C).
bath-filled-hot-because = A bath filled cold, or an oven at 300 °F (150 °C), takes half the time to warm up.

chill-it-change = Chill it 4 hours, or overnight, before you judge it.
chill-it-because = It sets fully only when it is cold.

chill-longer-change = Chill it 4 hours at least, overnight for a large mould, at the back of the refrigerator.
chill-longer-because = Gelatine sets by cold, which is the same at any elevation, and slowly.

gelatine-dissolve-change =
    Soak the gelatine 5 minutes in cold water, then stir it into liquid of about 140 °F (60 °C) until no grain
    is left; do not boil it.
gelatine-dissolve-because =
    Gelatine that is not dissolved stays on the bottom, and a long boil weakens it; elevation does not come into
    it.

raw-fruit-change = Cook pineapple, kiwi, papaya, fig and ginger first, or use them from a tin.
raw-fruit-because = Those fruits, raw, have an enzyme that cuts gelatine up.

gelatine-more-change =
    Use ¼ oz (7 g, one envelope) of gelatine for 2 cups (480 ml); a third more where it is sour or strong in
    spirits.
gelatine-more-because = Too little gelatine for the liquid, or acid and spirits that weaken it.

gelatine-less-change = Use a quarter less gelatine, and measure the liquid after it has cooked.
gelatine-less-because = Too much gelatine for what is left of the liquid.

less-starch-change = Use a quarter less starch, or thin it with warm milk before it cools.
less-starch-because =
    { $high ->
        [yes] A longer simmer at { $boil } has boiled off more of the milk, and starch sets stiff as it cools.
       *[no] Starch sets stiff as it cools, and more so the longer it has simmered.
    }

cover-the-surface-change = Lay film or buttered paper on the surface while it cools.
cover-the-surface-because = A skin forms where the surface dries.

curd-hot-acid-change =
    Heat the milk to 185 °F (85 °C), add 2 tbsp of vinegar or lemon juice to the quart (litre), stir twice and
    leave it 10 minutes.
curd-hot-acid-because =
    { $high ->
        [yes] Milk curdles by acid and heat together, and at { $place } it boils at about { $boil }: by the thermometer, not
        by the boil.
       *[no] Milk curdles by acid and heat together.
    }

milk-not-uht-change = Use fresh pasteurised milk, not long-life.
milk-not-uht-because = Milk that was heated very hot no longer makes firm curds.

more-acid-change = Add acid a teaspoon at a time until the whey runs clear and green.
more-acid-because = Lemons differ, and some milk wants more.

milk-at-the-end-change = Stir milk, cream or yogurt in at the end, off the boil, warmed with a ladle of the pot first.
milk-at-the-end-because = Milk protein clots where it meets acid or a hard boil.

richer-milk-change = Use heavy cream, or whisk 1 tsp of starch into each cup of milk or yogurt.
richer-milk-because = Fat and starch keep the protein apart.

soda-foams-because =
    { $high ->
        [yes] The gas of the soda takes up { $gas } times its room at { $place }, so the same spoon foams that much higher.
       *[no] The gas of the soda swells the syrup to many times its size.
    }

candy-deep-pot-change = Use a pot four times as deep as the syrup, sift the soda in and stir only three strokes.
candy-deep-pot-because =
    { $high ->
        [yes] Foam climbs to { $gas } times its height at { $place }.
       *[no] The foam has to have room.
    }

fresh-soda-change = Use fresh soda, sifted, and pour the candy out within seconds.
fresh-soda-because = Old soda gives little gas, and a foam that is stirred or left standing falls.

further-to-crack-because = The syrup held too much water to set round the bubbles.

water-in-chocolate-change = Melt it in a dry bowl, over water that does not touch it, and keep the steam away.
water-in-chocolate-because = A few drops of water make the sugar clump; elevation does not come into it.

chocolate-too-hot-change = Melt it no hotter than 115 °F (46 °C), milk and white chocolate 110 °F (43 °C).
chocolate-too-hot-because = Above 120 °F (49 °C) chocolate thickens and scorches.

ganache-warm-change = Bring both to 90 to 105 °F (32 to 41 °C) and stir from the middle outwards.
ganache-warm-because = Fat runs out of it when it is too hot or too cold; elevation does not come into it.

candy-even-heat-change = Cook it over a medium flame in a heavy pot, and never let the heat jump.
candy-even-heat-because = Butter parts from the syrup where it is heated or cooled unevenly.

candy-stir-steady-change = Stir it slowly all the time, with 1 tbsp of corn syrup to the cup of sugar.
candy-stir-steady-because = A steady stir keeps the butter in the syrup.

cooker-clicks-off-because =
    { $high ->
        [yes] A rice cooker switches off when its pan runs dry, and at { $place } water boils at { $boil }, so by then the
        grain is not soft.
       *[no] A rice cooker switches off when its pan runs dry, soft or not.
    }

rice-wants-water-because =
    { $high ->
        [yes] At { $boil } rice cooks longer, and its water has gone before the middle is soft.
       *[no] Its water has gone before the middle is soft.
    }

rest-on-warm-change = Leave it shut on warm for 15 minutes before you open it.
rest-on-warm-because = The steam that is left goes on softening it.

cook-on-the-stove-change = Cook it in a lidded pot on the stove, or under pressure, for the time it needs.
cook-on-the-stove-because = A cooker that goes by dryness cannot be told to go on.

cooker-half-full-change = Rinse the rice until the water is clear, and fill the cooker no more than half.
cooker-half-full-because =
    { $high ->
        [yes] Starchy foam climbs { $gas } times as high at { $place }.
       *[no] Starchy foam needs room.
    }

mash-by-hand-change =
    Press floury potatoes through a ricer while hot, fold the butter in first, and never use a blender.
mash-by-hand-because = Starch that is beaten out of its cells turns to glue, at any elevation.

dry-the-potato-change = Drain them and shake them over the heat for 2 minutes before mashing.
dry-the-potato-because = Wet potatoes make a heavy, sticky mash.

fry-twice-change = Soak and dry them, fry once pale at 300 °F (150 °C), cool, then once brown and crisp.
fry-twice-because =
    { $high ->
        [yes] The middle cooks no hotter than { $boil } at { $place }, so one frying browns them before they are dry.
       *[no] One frying browns them before they are dry.
    }

bind-more-change =
    Work in 1 tbsp more flour, crumbs or semolina for each cup, rest it 30 minutes, and cook one to test before
    the rest.
bind-more-because = A mixture with more water than its starch and egg can hold goes to pieces.

middle-late-change = Make them half the size, and cook them in one layer at a bare simmer under a lid.
middle-late-because =
    { $high ->
        [yes] Water at { $place } is only { $boil }, so the middle firms late and the outside soaks off before that.
       *[no] The outside soaks off before the middle is firm.
    }

steam-them-change = Steam them instead, 5 minutes longer than they simmer.
steam-them-because = Steam is as hot as the water and knocks nothing off.

seal-edges-change = Press the air out, wet the edge and seal it twice.
seal-edges-because =
    { $high ->
        [yes] The air inside swells as it heats, further at { $place }, and opens the weakest seam.
       *[no] The air inside swells as it heats, and opens the weakest seam.
    }

less-filling-change = Fill them with less, and with a filling that is cold and not wet.
less-filling-because = A wet filling makes steam.

line-the-steamer-change = Line the steamer with oiled paper or cabbage, and leave a finger between them.
line-the-steamer-because = Starch glues what touches while it is hot.

jerky-cooler-change = Heat the strips to 160 °F (71 °C) first, then dry them at 130 to 140 °F (54 to 60 °C).
jerky-cooler-because = Too much heat at the start dries a shell that shuts the water in, or makes it brittle.

stop-when-it-bends-because =
    { $high ->
        [yes] Thin, dry air at { $place } takes the water faster than the recipe reckons with.
       *[no] It has dried longer than it needed.
    }

slice-across-change = Slice it ¼ in (6 mm) thick, across the grain, half frozen.
slice-across-because = Long fibres are tough, and thin edges turn brittle.

dry-until-it-cracks-because = It is dry when a cooled strip cracks on bending and does not break.

dry-on-because = The middle still holds water; sugar makes it feel sticky when warm.

condition-it-change =
    Cool a piece before you judge it; then keep them a week in a jar two thirds full, shaken daily, and dry on
    if beads form.
condition-it-because = Pieces dry unevenly, and even out in a closed jar.

dry-the-surface-change = Pat the meat dry, salt it an hour ahead, and lay it into a pan that just smokes.
dry-the-surface-because =
    { $high ->
        [yes] Nothing browns while it is wet, and water holds it at { $boil } at { $place } until it is gone.
       *[no] Nothing browns while it is wet.
    }

pan-not-crowded-change = Cook it in two lots, with a finger between the pieces, and do not move it for 2 minutes.
pan-not-crowded-because = A full pan goes cold and stews in its own juice.

hotter-pan-change = Use a heavier pan, heated 5 minutes, and oil with a high smoke point.
hotter-pan-because =
    { $high ->
        [yes] Gas burners give less heat in the thin air of { $place }.
       *[no] A thin pan goes cold when the meat goes in.
    }

bind-and-chill-change = Press it firmly, chill it 30 minutes, and turn it only when a crust lets go of the pan.
bind-and-chill-because = What is loose and warm breaks when it is moved.

poach-first-change = Simmer them 10 minutes in water that only trembles, then brown them gently.
poach-first-because = The skin shrinks in a fierce heat before the filling has set.

more-bones-change = Use knuckles, feet or wings for a third of the bones, just covered with water.
more-bones-because = Only skin, joints and sinew give gelatine.

reduce-more-change = Boil the strained stock down by a third.
reduce-more-because = There is enough gelatine, in too much water.

draw-longer-because =
    { $high ->
        [yes] At { $boil } bones give up their gelatine more slowly.
       *[no] Bones give up their gelatine slowly.
    }

butter-sauce-heat-change =
    Take the pan off the heat, whisk in the butter cold and in cubes, and keep it between 110 and 135 °F (43 and 57 °C).
butter-sauce-heat-because = Butter holds together by its milk solids, and near the boil its fat runs out of them; that is the same at any elevation.

reduction-too-dry-change = Leave 2 tbsp of liquid in the pan before the butter goes in, and add a spoon of cream or warm water when it looks oily.
reduction-too-dry-because =
    { $high ->
        [yes] In the thin air at { $place } the little liquid that holds the butter boils and dries away sooner.
       *[no] Butter has too little water to hang in once the wine has boiled away.
    }

egg-sauce-heat-change = Keep it between 120 and 150 °F (49 and 65 °C), over water that steams but does not boil.
egg-sauce-heat-because = The egg set and let go of the butter; that is the same at any elevation.

egg-sauce-slowly-change = Whisk the fat in by drops at first, no more than ¾ cup (180 ml) to a yolk.
egg-sauce-slowly-because = Fat that comes in faster than it is beaten runs together.

cheese-off-the-boil-change = Melt the cheese under 160 °F (71 °C), off the boil, a handful at a time.
cheese-off-the-boil-because = Boiled cheese tightens, squeezes out its fat and turns stringy.

cheese-starch-change =
    Toss the cheese with 1 tbsp of starch to the pound (450 g), and put in a spoon of lemon or white wine.
cheese-starch-because = Starch keeps the fat in, and acid keeps it from pulling into strings.

skim-the-fat-change = Chill it and lift the fat off, or skim it at a bare simmer, drawn half off the flame.
skim-the-fat-because =
    { $high ->
        [yes] A hard boil at { $boil } is no hotter than a simmer, and beats the fat in.
       *[no] A hard boil beats the fat in.
    }

trim-the-fat-change = Trim the meat and pour off the fat after browning.
trim-the-fat-because = More fat came in than the liquid can carry.

make-thinner-change = Make them a third thinner.
make-thinner-because = Heat takes long to reach a thick middle.

steam-trapped-change =
    Pipe or shape it without air, with a star nozzle or a pricked top, no thicker than ½ in (12 mm), and let the
    skin dry 10 minutes.
steam-trapped-because =
    { $high ->
        [yes] The water inside boils at { $boil } at { $place } and makes more steam than a smooth, set skin lets out.
       *[no] The water inside turns to steam behind a skin that has set, and bursts out.
    }

cook-the-paste-change = Cook the paste until it films the pan, so that it holds less loose water.
cook-the-paste-because = Lumps of raw, wet paste burst.

flour-it-first-change = Dry it, flour it, shake it off, then dip it, and let it stand 15 minutes before frying.
flour-it-first-because = A wet surface steams the coat off.

let-it-set-change = Lower it in away from you and leave it alone for the first minute.
let-it-set-because = A coat that is touched before it has set slides off.

fresh-eggs-change = Use the freshest eggs, and drain the thin white off in a sieve.
fresh-eggs-because = The thin white of an older egg runs off.

poach-gently-change =
    Hold the water where it only trembles, and slip them in from a cup; a spoon of vinegar to the quart helps.
poach-gently-because =
    { $high ->
        [yes] Up here the water must be near its boil, { $boil }, and a hard boil tears the white.
       *[no] A hard boil tears the white.
    }

eggs-off-early-change = Take them off while they still look a little wet, and cook them over a low flame.
eggs-off-early-because = Egg that is cooked past setting squeezes its water out, at any elevation.

coarser-grind-change = Grind one step coarser.
coarser-grind-because = Fine grounds give up their bitter part too.

shorter-brew-because = It has drawn too long.

vent-the-lid-change = Leave the lid ajar while it pops, and tip it out at once.
vent-the-lid-because = Steam that stays in the pot softens it.

lid-on-change = Put a lid on, heat no more water than you need, and keep the wind off.
lid-on-because =
    { $high ->
        [yes] It only has to reach { $boil } at { $place }, so what is slow is the flame: an open pot gives its heat to the
        air.
       *[no] An open pot gives its heat to the air.
    }

burner-weak-change = Use the largest burner, or have a gas burner set for the elevation.
burner-weak-because =
    { $high ->
        [yes] A gas burner gives about 4 % less for every 1,000 ft over 2,000 ft unless it is set for the thin air of { $place
        }.
       *[no] A gas burner gives less in thin air.
    }

jar-shock-change =
    Put hot jars with hot food into hot water, on a rack, and let them cool on a towel out of the draught.
jar-shock-because = Glass cracks where it is suddenly heated or cooled.

jar-flawed-change = Use canning jars without a chip, filled to the headspace of the recipe.
jar-flawed-because = Old or thin glass breaks at the bottom.

hot-pack-fruit-change = Pack it hot: heat the fruit in its syrup for a few minutes before it goes into the jar.
hot-pack-fruit-because =
    Raw fruit is full of air and lighter than the syrup; it is safe so, if it had its full process.

lighter-syrup-change = Use ripe, firm fruit and a lighter syrup.
lighter-syrup-because = Fruit floats higher in a heavy syrup.

blossom-end-change = Cut 1/16 in (2 mm) off the blossom end, and pickle within a day of picking.
blossom-end-because = An enzyme of the blossom end softens the whole.

tested-brine-change =
    Use vinegar of 5 % and the salt of a tested recipe, and no longer in the canner than the table has for your
    elevation.
tested-brine-because = A weak brine lets germs soften them, and too long a boil cooks them.

calcium-firms-change = Put in calcium chloride as its label says, or soak them in ice water for 4 hours first.
calcium-firms-because = Calcium holds the walls of the plant together.

ferment-cool-change = Ferment it at 70 to 75 °F (21 to 24 °C), 3 to 4 weeks; above 80 °F (27 °C) it goes soft.
ferment-cool-because = Warmth lets the wrong germs in, and they soften it; elevation does not.

salt-by-weight-change = Weigh the salt: 3 tbsp of canning salt (about 2¼ %) to 5 lb (2.3 kg) of cabbage.
salt-by-weight-because = With too little salt the cabbage softens before it is sour.

keep-it-under-change = Keep it under its brine by a weight, and covered.
keep-it-under-because = What stands out of the brine goes soft and slimy.

brine-too-strong-change =
    Start with the weaker brine of a tested recipe, and bring salt, sugar and vinegar up in steps.
brine-too-strong-because = A strong brine draws the water out faster than it goes in.

fresh-cucumbers-change = Pickle within a day of picking; hollow ones float, and go into relish.
fresh-cucumbers-because = Cucumbers that have lain dry out inside.

parboil-the-slices-change =
    Simmer the slices 5 to 8 minutes in their milk or broth before they go into the oven, and cover the dish for
    two thirds of the time.
parboil-the-slices-because =
    { $high ->
        [yes] The liquid gets no hotter than { $boil } at { $place }, so the middle softens slowly, and the top is brown long
        before.
       *[no] The middle gets no hotter than its liquid, and the top is brown long before.
    }

more-oven-time-because =
    { $high ->
        [yes] Starch and roots soften slowly at { $boil }.
       *[no] It needs longer than the top suggests.
    }

custard-pie-early-change =
    Take it out at 170 to 175 °F (77 to 79 °C) in the middle, while that still trembles, and let it cool slowly.
custard-pie-early-because =
    Egg squeezes its water out when it is cooked past setting; the temperature is the same at any elevation.

custard-pie-cooler-because = The rim is overdone before the middle has set.

spread-them-out-change =
    Dry them, toss them with oil and spread them in one layer on a hot tray, without salt until they are brown.
spread-them-out-because =
    { $high ->
        [yes] Nothing browns until its water is gone, and at { $place } that leaves at { $boil }.
       *[no] Nothing browns until its water is gone.
    }

pan-hot-first-change = Heat the pan first, then the fat, dry the food, and do not touch it until it lets go by itself.
pan-hot-first-because = Wet, cold protein bonds to the metal before a crust has formed.

wide-pan-change = Use the widest pan you have, without a lid, at a hard boil, and skim it.
wide-pan-because =
    { $high ->
        [yes] How fast it boils down depends on the flame and the surface, not on the { $boil } at which it boils.
       *[no] How fast it boils down depends on the flame and the surface.
    }

gas-drives-because =
    { $high ->
        [yes] At { $place } the gas takes up { $gas } times its room, and drives the batter further than it should go.
       *[no] The gas drives the batter further than it should go.
    }

less-starter-change = Use a third less starter, or mix it with cool water and let it rise in the refrigerator overnight.
less-starter-because =
    { $high ->
        [yes] At { $place } the same gas fills { $gas } times the room, so the dough is ready long before the morning.
       *[no] The dough makes its gas sooner than the recipe reckons with.
    }

custard-pie-on-because = The middle has not come to the 170 to 175 °F (77 to 79 °C) at which egg sets, the same at any elevation.

rest-the-batter-change = Let the batter rest 30 minutes, put in one more egg, and turn it only when the edge lifts by itself.
rest-the-batter-because = Flour that has not taken up its water, and a pan that is not hot, leave it too tender to turn.

feed-the-starter-change =
    Feed the starter twice a day with equal weights of flour and water, at 75 to 80 °F (24 to 27 °C), until it doubles within
    4 to 6 hours; then bake with it.
feed-the-starter-because = A starter that does not double after a feed cannot raise a loaf.

temper-it-change =
    Melt dark chocolate to 115 °F (46 °C), cool it to 82 °F (28 °C) stirring in solid pieces, and warm it to 88 to 90 °F (31 to
    32 °C) to work with; milk and white two degrees lower.
temper-it-because = Only tempered cocoa butter sets firm and shiny, which is the same at any elevation.

cool-room-change = Let it set at 60 to 68 °F (16 to 20 °C), away from steam.
cool-room-because = In a warm or damp room it sets slowly and dull.

deck-cooler-because =
    { $high ->
        [yes] The top browns by the heat above it as fast as ever, while the moist dough gets no hotter than the boil, { $boil }
        at { $place }.
       *[no] The top browns before the dough under it is done.
    }

topping-late-change = Bake the base bare for a minute or two first, then use less cheese, drier and cold, and move it lower in the oven.
topping-late-because = Cheese that goes on late is still pale when the dough is done.

custard-sets-cold-change = Take it out when the rim is set and the middle trembles like jelly, and let it cool 3 hours before you cut it.
custard-sets-cold-because = Egg goes on setting as it cools; a filling judged hot always seems too thin.

sugar-pie-on-because =
    { $high ->
        [yes] Egg in so much sugar sets late, near 200 °F (93 °C) in the book, and at { $place } water itself boils at { $boil }:
        go by a middle that trembles like jelly under a set, puffed rim.
       *[no] Egg in so much sugar sets late, near 200 °F (93 °C); it is done when the middle trembles like jelly.
    }

shell-cooled-fast-change = Leave it in the oven, switched off and shut, until it is cold.
shell-cooled-fast-because = A crisp shell that cools fast shrinks and cracks; a few cracks go under the cream.

hang-at-once-change = Skewer it and hang it within a minute of leaving the oven, for 10 hours or overnight.
hang-at-once-because = A rich crumb holds itself up only when it is cold.

rich-core-change =
    { $high ->
        [yes] Pull it when the middle reads { $crumb }.
       *[no] Pull it when the middle reads 198 to 201 °F (92 to 94 °C).
    }
rich-core-because =
    { $high ->
        [yes] Its middle stops at the boil, { $boil } at { $place }, so that counts as baked through; under it the crumb tears.
       *[no] Under that the crumb tears.
    }

core-out-of-reach-change = Pull it at about { $crumb } in the middle, with a brown crust, and a hollow knock or a clean skewer.
core-out-of-reach-because =
    A moist middle gets no hotter than water boils, { $boil } at { $place }, so the book's reading never comes; waiting for it
    only dries it out.

soft-cheesecake-on-because = The middle has not had its heat, and a high oven browns the top long before.

soft-cheesecake-chill-change = Keep the oven hot, take it out while it wobbles like jelly, and chill it overnight before you judge it.
soft-cheesecake-chill-because = It is meant to be creamy, and it sets in the cold.

caramel-chilled-change = Warm it over a low flame until it melts again, then go on; have the fruit dry and warm, or the cream hot, before it goes in.
caramel-chilled-because =
    Cold, wet fruit or cream chills hot sugar into a lump at any elevation; caramel is cooked by its colour everywhere.

eggs-whipped-far-change = Whip whole eggs and sugar only to a soft ribbon that sinks in within 3 seconds, and whites to soft peaks.
eggs-whipped-far-because =
    { $high ->
        [yes] Bubbles grow { $gas } times as far at { $place }; a foam beaten to the full bursts, falls and bakes rubbery.
       *[no] A foam beaten to the full has no stretch left; it bursts, falls and bakes rubbery.
    }

roll-it-hot-change = Turn it out at once onto a sugared cloth, roll it up hot in that, and unroll it when it is cold.
roll-it-hot-because = A thin sheet dries and stiffens within minutes, sooner in dry air.

milk-dough-tight-change =
    Make the dough softer than seems right, with milk by the spoonful, rest it 10 minutes under a cloth, and roll balls
    without one crease.
milk-dough-tight-because = Milk solids go on drinking, and a dry or creased ball opens along its cracks.

fry-milk-balls-gently-change =
    Fry at 265–285 °F (130–140 °C), where a crumb of dough rises slowly, and keep the balls turning.
fry-milk-balls-gently-because = In hot fat the skin sets before the middle has swelled, and tears.
