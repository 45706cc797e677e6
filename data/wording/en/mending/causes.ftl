# What makes a dish go wrong, by the causes of data/tables/causes_common-practice.csv: of each why it does (because), and
# the change that mends it where that change has no size of its own (change).

too-much-leavening-because =
    The gas swells further than the walls of the crumb can stretch; they burst, and the bake coarsens and falls.

too-little-leavening-because = There is too little gas, or the leavening has gone stale.

stale-leavening-change = Open a fresh tin of leavening; a spoon of it must fizz hard in hot water.
stale-leavening-because = Leavening loses its gas in the cupboard, in a damp one within months.

leavening-tastes-because = More soda or powder than the acid can use up is what tastes of soap.

soda-in-lumps-change = Sift the leavening with the flour and whisk them together.
soda-in-lumps-because = Lumps of soda stay as yellow, bitter specks.

too-much-sugar-because = Sugar keeps the crumb from setting, and thin air concentrates it as the water leaves.

too-little-sugar-because = Sugar holds water and browns; with too little of it the bake is pale, dry and tough.

too-much-fat-because = Fat shortens the walls of the crumb, so that they hold less.

too-little-fat-because = Fat keeps gluten short; with too little of it the crumb is tough.

too-little-liquid-because = The crumb was left short of water.

too-much-liquid-because = More water than the flour and egg can bind leaves a wet, heavy streak.

too-little-flour-because = Flour is what gives the walls their strength; there is too little for the sugar and fat.

too-much-flour-because =
    A packed cup holds a fifth more flour than a spooned one, and flour stored in dry air takes up more water.

too-little-egg-change = Use extra-large eggs where the recipe has large.
too-little-egg-because = Egg sets the walls; a larger one strengthens them and brings water with it.

oven-too-cool-because = The crumb sets too late, when the gas is already past its best.

oven-dries-because = A crust browns once it is dry and hot; in a cool oven it dries for long and stays pale.

oven-browns-because = A crust browns by the heat of the oven; a cooler one leaves the inside time to catch up.

oven-too-hot-because = The outside sets and browns before the middle has had its heat.

oven-astray-change = Hang a thermometer in the oven and set the dial by it.
oven-astray-because = Ovens stray by 25 °F (14 °C) and more, and a dial does not show it.

baked-too-short-because = The middle was not yet set when it left the oven.

baked-too-long-because = It stayed in until it had lost more water than it could spare.

pan-too-full-change = Fill the pan half full, not two thirds.
pan-too-full-because = The batter had no room to swell in.

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
whites-too-stiff-because = A stiff foam has no stretch left; its cells burst as they swell.

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

too-much-yeast-because = The dough makes its gas sooner than the recipe reckons with.

too-little-yeast-because = The dough has too little yeast for the time it is given, or old yeast.

dead-yeast-change = Prove the yeast first; in water at 105 °F (41 °C) with a pinch of sugar it must foam in 10 minutes.
dead-yeast-because = Old yeast, or water over 130 °F (54 °C), raises nothing.

risen-too-long-because = Past double the walls are stretched thin, and the oven bursts them.

risen-too-short-because = A dough baked before it has doubled stays small and close.

dough-too-warm-change =
    Use cooler water, so that the dough is mixed to 75 °F (24 °C), or rise it in the refrigerator overnight.
dough-too-warm-because = Every 15 °F (8 °C) warmer doubles the pace of the yeast.

dough-too-cold-change = Rise it at 75 to 80 °F (24 to 27 °C), away from draughts.
dough-too-cold-because = Yeast in a cold dough works at half its pace or less.

knead-more-change = Knead until a piece stretches to a window without tearing.
knead-more-because = A slack gluten cannot hold the gas it is given.

dough-too-wet-because = A slack dough cannot carry its own weight.

dough-too-dry-because = Flour stored in dry air takes up more water, and a stiff dough rises little.

punch-down-change = Punch the dough down, shape it tightly and press out the large bubbles.
punch-down-because = Bubbles run together in a dough that is not knocked back.

oven-late-because = In a cool oven the dough goes on rising, until its cells run together.

baked-to-heat-change =
    Bake until a thermometer in the middle reads within 5 °F (3 °C) of the boil here, and the loaf sounds hollow.
baked-to-heat-because = Colour comes before the crumb has set.

cool-before-cutting-change = Let it cool for an hour before you cut it.
cool-before-cutting-because = The crumb goes on setting while it cools.

crust-dried-change = Keep the dough covered while it rises, and steam the oven for the first 10 minutes.
crust-dried-because = A skin that dries before the oven bakes thick.

butter-too-warm-change = Roll with butter at 55 °F (13 °C), and chill 30 minutes between the folds.
butter-too-warm-because = Butter that is softer than the dough is pressed out of it.

proofed-too-warm-change = Rise it under 78 °F (26 °C), below where butter melts.
proofed-too-warm-because = Butter melts at about 90 °F (32 °C) and softens well under that.

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

dry-the-shells-because = Shells that are not dry inside go soft and fold as they cool.

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
    The water under a double boiler is no hotter than the boil here, and starch thickens only near it.

boil-the-starch-change = Let it bubble for a full minute after it thickens, and stop stirring hard then.
boil-the-starch-because = Starch that has not come near the boil thins out again.

culture-warmth-change = Hold it at 108 to 112 °F (42 to 44 °C), undisturbed, for 8 hours.
culture-warmth-because = The culture works in a narrow band; warmer kills it, cooler stops it.

scald-the-milk-change = Hold the milk at 180 °F (82 °C) for 10 minutes before it cools and is set.
scald-the-milk-because = Heated whey proteins are what thicken it.

cooked-past-stage-because = A stage is how much water is left; cooked past it, the sugar holds too little.

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

undercooked-gel-because = Jam sets when enough water has left for the sugar to reach about 65 %.

overcooked-gel-because = Past its setting point too much water has gone, and it sets stiff.

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

needs-more-time-because = Food softens by time at heat, and a hard boil is no hotter than a soft one.

needs-cooker-because = A pressure cooker is hotter inside than any open pot.

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

pot-needs-water-because = The longer simmer boils off more.

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

meat-not-done-because = Collagen melts by time at heat, long after the meat is cooked through.

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
wider-room-because = A foam of starch or protein climbs higher where the bubbles swell more.

thicker-later-change = Take the lid off for the last half hour, or thicken it when the food is done.
thicker-later-because = What a closed pot does not lose it keeps as thin liquid.

thicken-boil-change = Stir in a slurry of starch and bring it to a bubble for a full minute.
thicken-boil-because = Starch gives its thickness only near the boil.

thin-it-because = More has boiled off than the recipe reckons with.

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

fat-too-hot-because = The crust browns before the heat has reached the middle.

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

egg-longer-because = The heat had not yet reached the middle.

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

hotter-water-because = Water that has stood off the boil draws little.

steep-longer-because = Cooler water draws more slowly.

moist-kernels-change =
    Keep the kernels in a tight jar; a spoon of water to a quart (1 l), shaken and left three days, revives dry ones.
moist-kernels-because = A kernel needs about 14 % of water to burst, and dry air takes it.

even-heat-change = Start with three kernels in the oil, add the rest when they pop, and keep them moving.
even-heat-because = Kernels that warm slowly leak their steam instead of bursting.

seal-ring-change = Clean the sealing ring and the rim, and replace a ring that is stiff or cracked.
seal-ring-because = Pressure builds only when no steam leaves but through the vent.

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

sweet-dough-spreads-because = Sugar melts to syrup before the dough sets, and carries it outwards.

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
