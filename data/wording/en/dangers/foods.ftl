# What is said where a hazard of data/lexicon/danger/foods.toml was heard, by its id: the verdict, what to
# do instead, why, and whom to ask. The verdict is the first sentence, and it holds no figure of what is refused.

puffer =
    .verdict = No. There is no time or heat that makes pufferfish safe.
    .instead = Leave it to a licensed cook where the law allows one; cook another fish.
    .why =
        Its poison, tetrodotoxin, is not destroyed by cooking and is in skin and organs, and where a knife slipped also
        in the flesh.
    .ask = Emergency services for tingling lips or weakness; the poison line.

poison_plant =
    .verdict = No. Do not eat it: no cooking, soaking or drying makes it safe.
    .instead = Throw it away and wash your hands, knife and board.
    .instead-2 = For the dish take a plant from a shop or a bed you planted yourself.
    .why = Its poison is not destroyed by heat, and water that boils cooler up here changes nothing.
    .ask = The poison line or emergency services, with a piece of the plant, if any was eaten: do not wait for signs.

rhubarb_leaf =
    .verdict = No. Never eat rhubarb leaves, raw, blanched or cooked: only the stalks are food.
    .instead = Cut the leaves off and throw them away; use the stalks.
    .instead-2 = For a green leaf take chard or spinach.
    .why =
        The leaves hold oxalic acid and other poisons; boiling does not take them out and washing soda makes them worse.
    .ask = The poison line or emergency services, with a piece of the plant, if any was eaten: do not wait for signs.

ackee =
    .verdict = No. Ackee that has not opened by itself on the tree is poisonous, and no boiling mends it.
    .instead =
        Use fruit that opened on the tree, the yellow arils only, without seed and pink membrane, boiled in plenty of
        water that is thrown away; or ackee from a tin.
    .why = Unripe fruit holds hypoglycin, which drops the blood sugar to coma and lives through cooking.
    .ask = Emergency services for vomiting or drowsiness after a meal; the poison line.

grass_pea =
    .verdict = No. Grass pea (khesari, guaya, almorta) is no daily food, however long it boils.
    .instead =
        Eat lentils, chickpeas or split peas instead, or mix it thinly with cereals and only now and then; soak it
        overnight and throw soaking and boiling water away.
    .instead-2 = Give it to nobody for weeks on end, children and young men least of all.
    .why = Its toxin stays in part after boiling and, eaten for weeks, lames the legs for good.
    .ask = A clinic or food-aid office where there is little else; a doctor at once for stiff or weak legs.

mad_honey =
    .verdict = No. There is no safe spoonful of mad honey, raw or cooked.
    .instead = Leave it out; sweeten with ordinary honey from a packer.
    .why =
        It carries grayanotoxins of rhododendron; strength varies from comb to comb, heat does not weaken it, and it
        slows the heart.
    .ask = Emergency services for dizziness, slow pulse or vomiting; the poison line.

toxic_herb =
    .verdict = No. Do not take that herb by mouth, as tea, tincture or food.
    .instead = Choose a kitchen herb, mint, ginger or lemon balm, for the cup.
    .instead-2 =
        If it was for a complaint, or you think you are pregnant, see a doctor or pharmacist: a tea is no treatment.
    .why = It harms the liver or the womb in small doses, and steeping or boiling does not take that out.
    .ask = The poison line, or emergency services for belly pain, bleeding or yellow skin.

toxic_flower =
    .verdict = No. Those flowers are poisonous or sprayed: keep them off food.
    .instead =
        Use flowers sold for eating, such as violas, nasturtiums, roses or marigolds from an edible-flower grower; or
        sugar flowers.
    .why = Poison and spray pass from stem and petal into cream and icing; washing does not take them out.
    .ask = The poison line or emergency services, with a piece of the plant, if any was eaten: do not wait for signs.

toxic_wood =
    .verdict = No. Do not cook on, stir with or smoke over that wood.
    .instead =
        Use metal or bought bamboo skewers; for smoke, bought oak, apple, beech or hickory. Throw away what has touched
        it.
    .why = Its poison goes into the food and the smoke; soaking and fire do not destroy it safely.
    .ask = The poison line or emergency services, with a piece of the plant, if any was eaten: do not wait for signs.

taro_raw =
    .verdict = No. Taro leaves and roots are never eaten raw or half cooked.
    .instead =
        Cook them until quite soft, leaves 45 min at the least and longer up here, and throw the water away; if the
        throat still itches, cook on. Wear gloves.
    .why = Needles of calcium oxalate burn mouth and throat and can swell them shut; only long cooking helps.
    .ask = Emergency services for swelling of tongue or throat.

bamboo_raw =
    .verdict = No. Fresh bamboo shoots are never eaten raw or from a quick fry.
    .instead =
        Peel, slice, boil uncovered in plenty of water until tender, 20 min and more and longer up here, throw the water
        away, and boil again if bitter; then use them. Tinned or vacuum-packed shoots are boiled already.
    .why = Raw shoots give off cyanide, which leaves with the boiling water and the open steam.
    .ask = The poison line for dizziness or headache after a meal.

cyanide_bean =
    .verdict = No. Wild, dark or bitter lima beans are not safe after a usual cook.
    .instead =
        Throw them away; buy white lima or butter beans, soak them, throw the water away and boil them in fresh water in
        an open pot.
    .why =
        Coloured and wild kinds can hold many times the cyanide of white ones; the taste of marzipan is its sign, and a
        closed cooker keeps it in.
    .ask = The poison line or emergency services for dizziness, gasping or vomiting.

bitter_gourd =
    .verdict = Discard it: a bitter courgette, squash, cucumber or bottle gourd is poisonous, and the dish with it.
    .instead =
        Do not mask it with honey, salt or more cooking. Taste a raw sliver of the next one and spit it out; save no
        seed of it.
    .why = The bitterness is cucurbitacin, which stands boiling and baking and has killed.
    .ask = The poison line for cramps, vomiting or diarrhoea; emergency services if there is blood.

nutmeg =
    .verdict = No. Spoonfuls of nutmeg are a poisoning, not a flavour.
    .instead = A pinch, at most a quarter teaspoon for a whole dish, is seasoning.
    .why = Two teaspoons can bring hours of vomiting, racing heart and delusions; heat changes nothing.
    .ask = The poison line or emergency services if that much was taken.

ergot =
    .verdict = Discard it: grain with dark spurs or dyed, dressed seed is not food, however long it is baked.
    .instead = Throw the whole lot away, mill it for nobody and feed it to no animal; buy cleaned grain from a mill.
    .why = Ergot poisons stand the oven and cut off the blood to hands and feet; seed dressing is poison too.
    .ask = The poison line for numb or burning fingers, cramps or confusion.

unripe_lychee =
    .verdict = No. Unripe lychees, and any number of them in place of a meal, are not for a child.
    .instead = Ripe ones, a few, after a proper supper; throw green ones away.
    .why = They stop the body making sugar, and a child who has not eaten can fall into fits by the morning.
    .ask = Emergency services for a child who is drowsy, vomiting or has fits.

raw_soy =
    .verdict = No. Soya milk that has only foamed is still raw.
    .instead =
        When it foams, lower the heat, stir the foam down, and keep it at a true boil 10 min or more, longer up here;
        only then drink it or set tofu.
    .why =
        Foam comes well under the boil; raw soya blocks digestion and makes people vomit, and the boil here is cooler
        too.
    .ask = A doctor for vomiting that does not stop.

ink_cap =
    .verdict =
        No. Inky caps from a lawn are not food until an expert has named them, and never with wine, beer or spirits.
    .instead = Leave them out, or take cultivated mushrooms for that sauce.
    .why = The common inky cap makes alcohol a poison for days, cooked or not, and its look-alikes are worse.
    .ask = The poison line for flushing, racing heart or sickness.

wild_mushroom =
    .verdict =
        No. I cannot give a time for mushrooms that an expert has not identified in the hand: no cooking makes a
        poisonous one safe.
    .instead =
        Have the whole mushroom, with its foot, identified by a local mycological society or inspector before it goes
        near a pan. Silver spoons, peeling caps, insects and taste prove nothing.
    .instead-2 = Even then cook wild mushrooms through, a small helping first, never raw.
    .why =
        Death caps and their kin taste good, and their poison lives through boiling, frying, drying and any elevation;
        harm shows after a day, when it is late.
    .ask = The poison line or emergency services at once if any was eaten, with what is left of it.

wood_ear =
    .verdict = Discard wood ear, snow fungus or fermented starch that soaked for many hours: no cooking makes it safe.
    .instead =
        Soak a fresh portion 1 to 2 h in cold water in the refrigerator, cook it the same day, and throw what is slimy
        away.
    .why = In long or warm soaks a germ makes bongkrekic acid, which has no taste, stands boiling and frying, and kills.
    .ask = Emergency services at once for belly pain, sweating or drowsiness after a meal.

bongkrek =
    .verdict = No. Do not make or eat fermented coconut cake (bongkrek), however it is fried.
    .instead = Make tempeh of soybeans with a bought starter.
    .why = Bongkrekic acid forms in fermenting coconut, stands boiling and frying, and has killed whole families.
    .ask = Emergency services at once if any was eaten.

raw_morel =
    .verdict = No. Never eat morels raw or barely cooked; dried or fresh, cook them right through.
    .instead =
        Identify them first (false morels stay poisonous however cooked), clean them, then cook them well, ten minutes
        or more at a simmer or until soft and sizzling, and throw the soaking water away.
    .why =
        Raw morels have made whole dining rooms ill; heat breaks most of what does it down, and up here it takes longer.
    .ask = The poison line for sickness after a meal of morels.

stone_kernel =
    .verdict = No. Do not eat or cook with the kernels of apricots, peaches, cherries, plums or bitter almonds.
    .instead =
        For the flavour use bought almond extract or sweet almonds; take stones out before fruit is crushed or blended,
        and steep none in spirit or milk.
    .why =
        Crushed they give off cyanide; roasting, soaking and short boiling do not remove it, and a few are enough to
        harm. They cure nothing.
    .ask = The poison line or emergency services if any were eaten.

elder_raw =
    .verdict = No. Elder is never used raw, and its leaves, bark, stems, roots and green berries not at all.
    .instead =
        Strip ripe black berries from every stem, simmer them well, strain out the seeds, and then use the juice. Flower
        heads for cordial are another matter.
    .why = Raw berries and all green parts give off cyanide and purge; red elder is worse than black.
    .ask = The poison line for sickness after drinking or eating it.

elderberry =
    .verdict = Only if by a tested recipe: elderberries are low in acid.
    .instead =
        Simmer ripe, stripped berries, strain, and freeze or refrigerate the juice; jelly with the lemon juice of a
        tested recipe.
    .why =
        Plain juice or low-sugar jelly in a jar can carry botulism, and raw berries, stems and leaves give off cyanide.
    .ask = Your extension office for a tested recipe.

bitter_cassava =
    .verdict = No. No boiling time makes bitter cassava or raw leaves and peelings safe.
    .instead =
        Leave bitter roots to people who grate, soak or ferment them for days, press and roast them as their region
        does. Buy sweet cassava, peel it thickly, boil it in plenty of water until soft right through, and throw the
        water away. Never eat it raw.
    .why = It holds cyanide that boiling alone does not take out, at any elevation.
    .ask = The poison line for dizziness or sickness after a meal.

fiddlehead =
    .verdict = No. Fiddleheads and ferns are never eaten raw, crisp or quickly fried.
    .instead =
        Ostrich fern only, identified and cleaned: boil 15 min or steam 10 to 12 min by health advice, longer here since
        the boil is cooler, throw the water away, and only then sauté. Leave bracken and other ferns alone.
    .why =
        Undercooked fiddleheads make people sick within hours, and bracken holds a poison that cooking does not fully
        remove.
    .ask = The poison line for sickness after eating them.

green_potato =
    .verdict =
        Discard potatoes that are green through, bitter or much sprouted, and never eat leaves, berries or tops of the
        plant: boiling and frying do not take the poison out.
    .instead =
        A small green spot or a few eyes on a firm potato: cut them out deep and peel thickly. Store them dark and cool.
    .why =
        Solanine sits under the green skin and lives through cooking at any temperature; bitter or stinging in the
        throat means too much.
    .ask = The poison line for cramps, headache or confusion.

foraged_plant =
    .verdict =
        No. Do not eat it unless somebody who knows the plant has had each piece in the hand: no cooking makes a
        poisonous plant safe.
    .instead =
        Leave out every leaf, root, bulb or berry that differs, stands single or lacks the smell. An app, a picture,
        birds eating it or a small taste is no identification.
    .instead-2 = Cook with the shop's or the garden's instead.
    .why =
        Hemlock looks like wild carrot and parsnip, lily of the valley, autumn crocus and false hellebore like wild
        garlic and ramps, death camas like onion; their poisons live through boiling.
    .ask = The poison line or emergency services at once if any was eaten, with a piece of the plant.

toxic_fish =
    .verdict =
        No. The poison of such a catch (ciguatera, red tide, Greenland shark, roe of barbel or gar) is not destroyed by
        cooking, freezing or canning.
    .instead =
        Take shellfish only from waters that are open today by the official notice; leave big reef fish such as
        barracuda alone.
    .why = The poisons stand any heat a kitchen has, and the food looks and tastes right.
    .ask = The fisheries or health office for closures; emergency services for tingling or weakness.

histamine =
    .verdict =
        Discard it: tuna, mackerel, mahi and their kin that stood warm, or that tingle on the tongue, cannot be cooked
        safe.
    .instead = Keep such fish on ice from the catch on, at { TEMP(40) } or below, and refuse a delivery that is not.
    .why = Germs turn it to histamine, which stands searing, smoking and canning, and which nobody can see or smell.
    .ask = A doctor for flushing, hives or headache after the meal; emergency services for trouble breathing.

carnivore_liver =
    .verdict = No. The liver of bear, seal, husky or shark is not food in any portion.
    .instead = Throw it away. For pâté take chicken, pig or calf liver, cooked to { TEMP(160) }.
    .why = It holds so much vitamin A that a single portion can poison, and heat does not lower it.
    .ask = A doctor or the poison line for headache, vomiting or peeling skin.

closed_shell =
    .verdict =
        Discard shells that gape and do not close when tapped before cooking, those still shut after it, and crab or
        crayfish that was dead before the pot; never eat shellfish raw or barely opened.
    .instead =
        Cook live mussels and clams 3 to 5 min, oysters the longer, after the shells have opened, and let them reach
        { TEMP(145) }; a little longer here, where steam is cooler. Beds you gather from must be open by the official
        notice.
    .why = Dead shellfish spoil in hours, and raw ones carry vibrio and norovirus; opening alone is not a kill.
    .ask = The fisheries office for closures; a doctor for sickness afterwards.

raw_fluke =
    .verdict =
        No. Freshwater crab, crayfish, snails, slugs and frogs are never eaten raw, drunken, cured or just seared.
    .instead =
        Boil or steam them right through, to { TEMP(145) } and beyond; wash knife and board that touched them raw.
    .why = They carry lung fluke and rat lungworm, which alcohol, vinegar, lime and a flash of heat do not kill.
    .ask = A doctor at once if any was swallowed, and say so: treatment early matters.

lectin_slow =
    .verdict =
        No, not before 10 min at a full boil, at the very least: dry beans of the kidney kind hold a lectin, and a slow
        cooker, a haybox, a blanket or any pot that only comes to the boil leaves it in them.
    .instead =
        Soak at least 5 h, throw the water away, boil hard in fresh water, 30 min by the careful advice and longer up
        here, until no bean is firm; then they may go into the slow cooker or the haybox. Tinned beans are safe as they
        are, and a pressure cooker does it in one go.
    .why =
        The lectin, phytohaemagglutinin, is destroyed only by a hard boil; warmed to less it grows stronger, and four or
        five beans make a person ill. The boil is cooler here, so the margin is smaller.
    .ask = A doctor or the poison line for vomiting within hours of a meal.

lectin_boil =
    .verdict =
        No. A boil this cool is not sure to destroy the poison of dry beans of the kidney kind, and they hardly soften in it.
    .instead =
        Soak at least 5 h, throw the water away, and cook them soft in a pressure cooker. Without one take tinned beans, or
        lentils; where water boils hotter, lower down, a soak and a hard boil of 30 min do it before any gentler cooking.
    .why =
        They hold a lectin, phytohaemagglutinin, that only a hard boil destroys; warmed to less it grows stronger, and
        four or five beans make a person ill.
    .ask = A doctor or the poison line for vomiting within hours of a meal.

lectin_raw =
    .verdict = No. Do not eat beans of the kidney kind raw, sprouted, milled raw, crunchy or without a hard boil.
    .instead =
        Soak at least 5 h, throw the water away, boil hard in fresh water, 30 min by the careful advice and longer up
        here, and cook until no bean is firm.
    .why =
        A lectin, phytohaemagglutinin, is destroyed only by boiling; warm, half-cooked beans can be worse than raw ones.
    .ask = A doctor or the poison line for vomiting within hours of a meal.

bitter_lupin =
    .verdict =
        No. Bitter lupin (tarwi, chocho) is not safe after a boil: it must be soaked and washed for days until no
        bitterness is left.
    .instead =
        Soak, boil until soft, then change the water several times a day for four to five days or keep it in running
        clean water; taste one seed and spit it out: bitter means not yet. Or buy it washed.
    .why = Its alkaloids are drawn out by water and not destroyed by heat.
    .ask = The poison line for dry mouth, blurred sight or confusion.

raw_milk =
    .verdict = Only if pasteurised: do not drink raw milk or make fresh cheese of it.
    .instead =
        Heat it to { TEMP(145) } for 30 min or { TEMP(161) } for 15 s with a checked thermometer, the same at every
        elevation, then cool it fast and refrigerate.
    .why =
        It can carry listeria, salmonella, brucella and E. coli from a healthy herd; a boil up here is still hotter than
        pasteurising needs, so it is the heating that counts.
    .ask = A doctor, for anybody pregnant, ill, old or small who has drunk it.

sprouts =
    .verdict = No. Sprouts are not for eating raw, home-grown or bought.
    .instead = Boil or stir-fry them until steaming hot; leave them out for anybody pregnant, ill, old or small.
    .why =
        The germs are in the seed, salmonella and E. coli, and the warmth that sprouts them breeds them; rinsing and ice
        do not take them off.

raw_flour =
    .verdict = No. Raw flour, dough, batter and cake mix are not for eating, eggs in it or not.
    .instead = Bake it, or make a dough meant to be eaten raw with heat-treated flour and pasteurised eggs from a shop.
    .why = Flour is a raw food and has carried E. coli and salmonella; raw egg adds its own.

mouldy_grain =
    .verdict =
        Discard them: musty or mouldy nuts, maize, grain or spices are not saved by sorting, washing, roasting or
        boiling.
    .instead = Throw out the whole batch, feed it to no animal, and keep the next one dry and cool.
    .why = Moulds leave aflatoxin through the lot; it stands any kitchen heat, has no taste, and harms the liver.
    .ask = A doctor for anybody who ate it and turns yellow, vomits or has belly pain.

mouldy =
    .verdict = Discard it if it is soft, moist or in a jar: jam, bread, cooked food, yogurt, soft cheese, meat.
    .instead =
        Hard cheese, hard salami and firm vegetables only: cut away 1 in (2.5 cm) all round and below. Do not sniff it.
    .why = Threads and poisons run deeper than the fuzz, and boiling does not destroy them.

blood_on_food =
    .verdict = Discard food that blood or a wound has touched; rinsing and cooking do not mend it.
    .instead =
        Wash and cover the cut, with a plaster and a glove over it, wash board, knife and counter with soap, then begin with fresh
        food. A cook with an infected cut, a fever or diarrhoea does not touch food.
    .why = Wounds carry staphylococci, whose poison no boil destroys, and blood may carry more.
    .ask = A doctor for a deep or dirty cut, or a plaster or blade that cannot be found.

spoiled_food =
    .verdict = Discard it: cooking, rinsing, vinegar or spice does not make spoiled food safe.
    .instead =
        Do not taste it. Keep raw meat and fish at { TEMP(40) } or below, 1 to 2 days for poultry, fish and ground meat,
        and 3 to 5 for whole cuts.
    .why = Some germs leave poisons that no boil destroys, here or at sea level.
    .ask = A doctor or the poison line for anybody who has eaten it and is ill.

raw_leaf =
    .verdict = No. Chaya is never eaten or juiced raw, nor just wilted.
    .instead =
        Boil the leaves in an uncovered pot that is not of aluminium, at a full boil for 20 min, longer up here, and
        stir now and then; then they are food.
    .instead-2 = For a raw green juice take spinach or lettuce.
    .why = Raw leaves give off hydrogen cyanide; it goes off with the steam of a long open boil.
    .ask = The poison line or emergency services for headache, dizziness or short breath after a raw drink.

wild_yam =
    .verdict =
        No. Wild and bitter yams such as nami are poisonous when cooked straight from the ground, boiled or fried.
    .instead =
        Leave them to people who slice, salt and wash them for days in running water and know the kind; for dinner take
        yam, sweet potato or taro from a market.
    .why = Their alkaloid (dioscorine) brings burning, dizziness and fits, and one boiling or frying leaves it in.
    .ask = The poison line or emergency services for a burning throat, dizziness or cramps.

ginkgo =
    .verdict = No. Ginkgo nuts are a garnish, never a snack by the handful, and never raw; children get none.
    .instead =
        Give an adult a few well-cooked nuts in a dish and no more in a day; for a bowl beside the drinks take chestnuts
        or edamame.
    .why = They hold a poison (ginkgotoxin) that roasting does not destroy and that brings vomiting and fits.
    .ask = Emergency services for fits; the poison line for vomiting after a plateful.

found_dead =
    .verdict =
        No. Discard it: an animal that died by itself, was sick or was found dead is not food, however long it cooks.
    .instead =
        Keep people and dogs away, do not open or skin it, wash your hands and tell the owner, the vet or the warden.
    .instead-2 = Cook meat or fish that was healthy when it was killed and cooled at once.
    .why =
        It may carry anthrax and other infections, poison or toxins of decay; spores and toxins outlive boiling, drying
        and smoking.
    .ask = A vet or the health office; a doctor for fever or a black sore after handling it.

sprayed_food =
    .verdict = No. Discard what was sprayed or baited: washing and cooking do not take the poison out.
    .instead =
        Gather well away from sprayed ground, or eat a crop after the waiting time on the label of what was sprayed.
    .why = Insecticides, weedkillers and baits sit in plant and insect and stand the heat of a pan.
    .ask = The poison line or emergency services for sweating, drooling, cramps or tight breath.

raw_mince =
    .verdict = No. Meat that a shop has ground is never served raw, whatever the seasoning, lemon or cold.
    .instead =
        For a raw dish have a butcher who knows what it is for trim one whole lean piece and grind it on a clean
        machine, or chop it yourself, and serve it within the hour; no children, pregnant, old or sick at that table.
    .instead-2 = Or shape it and cook it to { TEMP(160) } in the middle.
    .why =
        Grinding mixes the surface of many animals through the pack, with E. coli and salmonella, and neither spice nor
        elevation kills them.
    .ask = A doctor for bloody diarrhoea or fever after such a meal.
