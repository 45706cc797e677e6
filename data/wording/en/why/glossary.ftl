# What words of the trade mean, in one short paragraph each.
boiling-point =
    The boiling point is the temperature at which a liquid's steam can push the air above it away. For water that goes
    by the air pressure alone: { $boil } { $at }.
rolling-boil =
    A rolling boil is a boil that stirring cannot calm. It is no hotter than a gentle one, { $boil } { $at }; it only
    moves more and drives off more steam.
simmer =
    To simmer is to keep a liquid just under the boil, with small bubbles rising all over: about { $simmers } { $at }.
bare-simmer =
    A bare simmer lets a bubble rise now and then while the surface shivers: about { $shivers } { $at }. Stocks and
    braises are kept there.
poach =
    To poach is to cook in liquid that is hot but does not bubble, { $poaching } at any elevation, for food that is
    tender and falls apart easily.
blanch =
    To blanch is to dip food into a full boil for a short time, mostly to set its colour, loosen its skin or stop its
    enzymes before freezing, and then to chill it in ice water. In cooler boiling water it takes a little longer.
parboil =
    To parboil is to boil food part of the way and finish it by another method: potatoes before roasting, rice before
    baking, ribs before the grill. It is cooked through later, so go by half the usual time.
shock = To shock is to plunge hot food into ice water, so that it stops cooking at once and keeps its colour.
scald =
    To scald milk is to heat it until bubbles gather at the edge, about { TEMP(180) }; it is under the boil at all but
    the greatest heights.
steep =
    To steep is to leave something in hot liquid off the fire until it has given its flavour: tea, coffee, vanilla,
    stock herbs.
sweat =
    To sweat vegetables is to cook them gently in fat, lid on or off, until they are soft and have given their water,
    without colour.
deglaze = To deglaze is to pour liquid into a hot pan and scrape up what has browned on its floor, for a sauce.
reduce =
    To reduce is to boil water out of a liquid until it is thicker and stronger. The burner sets the pace, so it goes
    about as fast high up as at sea level.
nappe =
    Nappe is the point at which a sauce coats the back of a spoon and a finger drawn through it leaves a clean line. A
    custard sauce gets there at about { TEMP(180) }.
braise =
    To braise is to brown a tough cut and cook it covered in a little liquid just under the boil until its collagen
    has melted.
stew = To stew is to cook small pieces covered with liquid at a bare simmer, until they are tender.
confit =
    Confit is food cooked slowly in fat, well under the boil, and once upon a time kept under it. Today it is kept
    cold.
sous-vide =
    Sous vide is cooking in a sealed bag in water held at the temperature that the food shall have inside. As long as
    that is under the boil, elevation does not matter to it.
bain-marie =
    A bain-marie is a bath of hot water around or under a dish, which keeps it from getting hotter than the boil:
    { $boil } { $at }. On the pass the word stands for the wells that hold food hot.
double-boiler =
    A double boiler is a pan set over simmering water, for what must not scorch or curdle. What is in it stays a few
    degrees under the boil, about { $double_boiler } { $at }.
al-dente = Al dente is pasta that is cooked but still firm to the tooth, with a dot of white just gone from its core.
carry-over =
    Carry-over is what a roast goes on heating after it has left the oven, since its outside is hotter than its
    middle: some 5 to 10 °F (3 to 5 °C) for a big joint, next to nothing for a chop.
resting = To rest meat is to leave it off the heat before it is carved, so that it evens out and its juices thicken.
render = To render is to melt fat out of meat or skin over a gentle heat until only crisp bits are left.
clarify =
    To clarify is to make clear: butter by skimming off its foam and leaving its milk behind, stock by a raft of egg
    white.
smoke-point =
    The smoke point is the temperature at which an oil begins to smoke and break down. It does not change with
    elevation.
maillard =
    The Maillard reaction is the browning of protein with sugar in dry heat, from about { TEMP(285) } on the surface.
    It needs a surface that has lost its water, and elevation does not shift it.
latent-heat =
    Latent heat is the heat that turns water into steam without making it hotter, some { $heat_of_boil } kJ for each
    kilogram { $at }. Steam gives all of it back where it turns to water, which is why it cooks and scalds so well.
saturated-steam =
    Saturated steam is steam just as hot as the water it comes from at its pressure: { $boil } in an open steamer
    { $at }.
superheated-steam =
    Superheated steam is steam that has been heated further after leaving the water. It bakes and dries like hot air,
    and wet food in it still stands at the boil.
wet-bulb =
    The wet bulb is the temperature at which a wet surface settles while air blows over it and it dries: far under the
    oven around it, and lower in thin or dry air.
relative-humidity =
    Relative humidity is how much water the air holds as a share of what it could hold at that temperature. Heat the
    same air and the figure drops, which is why a heated kitchen in winter is so dry.
stall =
    The stall is the long stop in a smoked joint's climb, when its wet surface dries as fast as the smoker heats it.
    Wrapping ends it.
gauge-pressure =
    Gauge pressure is what a gauge shows: the pressure over that of the air outside. { $cooker_gauge } on the gauge
    { $at } is { $cooker_in_all } in all, and the steam is { $inside_cooker }.
absolute-pressure =
    Absolute pressure is counted from empty space: what the gauge shows and the air outside together. It alone decides
    how hot steam is.
vapour-pressure =
    Vapour pressure is how hard the steam of a liquid pushes at a given temperature. When it equals the air pressure,
    { $pressure } { $at }, the liquid boils.
station-pressure =
    Station pressure is what the air really weighs where you stand, { $standard_pressure } { $at } on an average day.
    It is the one that decides the boil; a weather report gives another, reduced to sea level.
sea-level-pressure =
    Sea-level pressure is what a weather report gives: the reading of the place turned into what it would be at the
    sea, so that maps can be compared. Do not work out a boil with it.
density-altitude =
    Pressure altitude is the elevation that belongs to the air pressure of the moment. On a stormy day a kitchen cooks
    as if it stood some hundred feet higher.
derating =
    Derating is taking something off a gas burner's rated heat for the thin air it burns in, about 4 % for each 1,000
    ft (300 m).
headspace =
    Headspace is the room left between food and lid in a jar: as much as the tested recipe prints, mostly 1/4 in (6
    mm) for jam, 1/2 in (13 mm) for fruit and 1 in (25 mm) for low-acid food.
gel-point =
    The gel point is where jam has enough sugar to set, 8 °F (4.5 °C) above the boil of plain water: { $gel_point }
    { $at }.
low-acid =
    Low-acid food has a pH over 4.6: vegetables, meat, fish, beans, soup. Botulism can grow in it, so in jars it needs
    a pressure canner, by a tested recipe.
acidified =
    Acidified food is low-acid food that has been given enough tested acid to bring its pH to 4.6 or under, such as
    pickles and tomatoes with lemon juice.
ph =
    pH tells how sour something is, from 0 to 14: 7 is water, lemon juice about 2. In preserving, 4.6 is the line,
    since botulism does not grow below it.
process-time =
    The processing time is how long filled jars stay in the canner at its full boil or full pressure, as the tested
    recipe prints it for your elevation.
boiling-water-canner =
    A boiling-water canner is a deep pot with a rack in which jars of acid food are boiled under an inch or two (2.5
    to 5 cm) of water.
weighted-gauge =
    A weighted gauge is a weight on the vent of a canner that rocks or jiggles at 5, 10 or 15 lb. Above 1,000 ft (305
    m) the next weight up is used.
dial-gauge =
    A dial gauge shows a canner's pressure by a needle, pound by pound. It is checked every year, because it can read
    wrong without looking it.
venting =
    Venting a canner is letting steam blow out freely, mostly for 10 minutes, before the weight goes on, so that no
    air stays inside to make it cooler than its gauge says.
siphoning =
    Siphoning is jars losing liquid in the canner, because the pressure fell too fast or the headspace was too small.
raw-pack =
    In a raw pack the jar is filled with uncooked food, in a hot pack with food that has been brought to the boil.
    They have different printed times.
pasteurise =
    To pasteurise is to heat food long enough to kill the germs that make people ill; spores stay alive, so it is kept
    cold.
sterilise =
    To sterilise is to kill everything that lives, spores included. Boiling water disinfects and does not sterilise.
d-value = A D-value is the time at one temperature that kills nine in ten of a kind of germ.
z-value =
    A z-value is how many degrees hotter something must be to go ten times as fast: about 10 °C for spores, more for
    the softening of food. It tells how much a cooler boil slows a food down.
danger-zone =
    The danger zone is { TEMP(41) } to { TEMP(135) }, where germs grow fast. Food goes through it quickly, hot or
    cold, and elevation does not move it.
brine = A brine is salt in water: weak to season meat and keep it moist, strong to keep pickles, cheese and fish.
cure = To cure is to preserve meat or fish with salt, and mostly nitrite, which also keeps it pink.
thread =
    Thread is the first stage of boiled sugar, { TEMP(230) } to { TEMP(235) } at sea level, when a drop pulls a thin
    thread. High up take off as much as water's boil has dropped.
soft-ball =
    Soft ball is boiled sugar that makes a soft, flat ball in cold water, for fudge and fondant: from { $soft_ball }
    { $at }, where the book says { $soft_ball_in_book }.
firm-ball =
    Firm ball is boiled sugar that makes a ball that holds its shape, for caramels: { TEMP(244) } to { TEMP(248) } at
    sea level, less by the drop of the boil high up.
hard-ball =
    Hard ball is boiled sugar that makes a hard ball, for nougat and marshmallow: { TEMP(250) } to { TEMP(265) } at
    sea level, less by the drop of the boil high up.
soft-crack =
    Soft crack is boiled sugar that bends before it breaks, for butterscotch and taffy: { TEMP(270) } to { TEMP(290) }
    at sea level, less by the drop of the boil high up.
hard-crack =
    Hard crack is boiled sugar that snaps like glass, for brittle and lollipops: { TEMP(300) } to { TEMP(310) } at sea
    level, less by the drop of the boil high up.
caramel =
    The caramel stage is sugar that has lost all its water and turns amber, from about { TEMP(320) }. It does not move
    with elevation.
brix =
    Degrees Brix are per cent of sugar by weight in a syrup or juice, as a refractometer shows. Jam sets at about 65.
inversion =
    Invert sugar is sugar split by acid and heat into glucose and fructose. It keeps candy from graining and cakes
    moist.
proof =
    To proof is to let shaped dough rise before it is baked. Go by its size, half as big again or nearly double, and
    not by the clock: in thin air it gets there sooner.
bulk = Bulk fermentation is the first rise, of all the dough in one piece, in which it gets its strength and flavour.
retard =
    To retard dough is to hold it cold, mostly overnight, so that it ripens slowly and can be baked when wanted. High
    up it tames a dough that races.
hydration =
    Hydration is the water in a dough as a share of its flour by weight: 700 g of water on 1,000 g of flour is 70 %.
    Dry mountain flour takes a few points more.
bakers-percentage = In baker's percentage every weight is told as a share of the flour, which is 100 %.
autolyse =
    An autolyse is a rest of flour and water alone before salt and yeast go in, so that the flour drinks and gluten
    forms by itself.
preferment =
    A preferment is a part of the dough that is fermented the day before for flavour: poolish wet, biga stiff, levain
    with sourdough.
windowpane =
    The windowpane test is stretching a bit of dough until light shines through; if it does not tear, it is kneaded
    enough.
oven-spring =
    Oven spring is the last rise of a loaf in its first minutes in the oven, when gas swells and steam joins it. In
    thin air there is more of it.
crumb = The crumb is the inside of a loaf or cake, open with big holes or tight with small ones.
gluten = Gluten is the net of protein that wheat flour makes when it is wetted and worked; it holds the gas in.
leavening =
    Leavening is what makes dough and batter rise: yeast, baking powder, soda with acid, steam, or beaten eggs.
creaming =
    Creaming is beating butter with sugar until it is pale, which fills it with small bubbles that the leavening then
    swells.
folding =
    Folding is turning a light mixture into a heavy one with a spatula, from below upwards, so that little air is
    lost.
ribbon = The ribbon stage is eggs and sugar beaten until what falls from the whisk lies on top for a moment.
soft-peaks =
    Soft peaks are whites or cream whipped until the peak bends over when the whisk is lifted. High up whites for
    cakes are stopped there.
stiff-peaks =
    Stiff peaks are whites or cream whipped until the peak stands upright. Whites that stiff burst in the oven high
    up.
blind-bake = To bake blind is to bake a pastry case empty, with weights on paper, before its filling goes in.
docking = Docking is pricking dough with holes, so that steam gets out and it stays flat.
par-bake = To par-bake is to bake bread until it is set but pale, and to finish it later.
bloom =
    To bloom is to let something swell or open: gelatine in cold water, coffee with its first pour, spices in hot fat.
    On chocolate, bloom is the grey film of fat or sugar that comes of warmth or damp.
temper =
    To temper chocolate is to melt, cool and rewarm it so that it sets with a snap; to temper eggs is to warm them
    with a little of the hot liquid before they go in, so that they do not curdle.
roux =
    A roux is flour cooked in as much fat, white to dark, to thicken a sauce. Its starch wants a full boil to do its
    work.
slurry = A slurry is starch stirred into cold water, to be poured into a boiling liquid that it thickens.
gelatinisation =
    Starch gelatinises when its grains take up hot water, swell and burst, from about { TEMP(140) } to a full set near
    { TEMP(203) }.
retrogradation =
    Retrogradation is starch setting firm again as it cools. It is what makes bread stale and rice hard in the fridge,
    and warming undoes it.
collagen =
    Collagen is the tough white tissue of hard-worked cuts. Kept hot and wet for hours it melts to gelatine, which is
    what makes a braise tender.
gelatine = Gelatine is melted collagen: it gives stock its body, and sets jellies in the cold.
pectin =
    Pectin is the glue between plant cells. It keeps vegetables firm until it loosens near the boil, and it sets jam
    with enough sugar and acid.
emulsion =
    An emulsion is fat in drops held in water, or the other way round, by yolk, mustard or protein: mayonnaise,
    hollandaise, vinaigrette.
mise-en-place = Mise en place is everything weighed, cut and set out before the cooking begins.
hotel-pan =
    A hotel pan is the steel pan of steam tables and ovens, of standard size: a full one is about 12 by 20 in (325 by
    530 mm).
conversion-factor =
    A time factor is what a sea-level time is multiplied by for a place: 1.3 means three tenths longer. Each food has
    its own.
