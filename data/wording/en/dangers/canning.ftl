# What is said where a hazard of data/lexicon/danger/canning.toml was heard, by its id: the verdict, what to
# do instead, why, and whom to ask. The verdict is the first sentence, and it holds no figure of what is refused.

spoiled_jar =
    .verdict =
        Discard it, unopened and untasted: a can or jar that bulges, leaks, spurts, foams, smells off or lost its seal
        can hold botulism.
    .instead =
        Put on gloves, bag it, tape it shut, and put it where no person or animal gets at it; if it is open or has
        leaked, ask me how to get rid of it: it is boiled out of harm before it is thrown away. Wash all it touched with
        diluted bleach and discard the cloths.
    .why =
        The poison cannot always be seen, smelled or tasted, and a spoonful kills. No boil in a kitchen, here or at sea
        level, is a reason to eat it.
    .ask =
        Emergency services at once for blurred sight, drooping lids, slurred words or weakness after eating; your
        extension office for disposal.

jar_disposal =
    .verdict =
        Discard them closed and untasted: in a heavy bag, taped shut, in a bin that no person or animal gets at.
    .instead =
        Jars that leak, bulge or stand open, with gloves, by CDC guidance: lay them with their lids in a pot, cover them with
        water, boil 30 min with the lid on, let them cool, then bag them too. Not to chickens, dogs or the compost, and not
        down the drain.
    .instead-2 =
        Wash what they touched with 1 part of household bleach to 5 parts of water, leave it on for 30 min, rinse, and
        discard the cloths and gloves.
    .why = The poison can be there without a sign and kills animals too; boiling makes it fit for the bin, never for eating.
    .ask = Your extension office or health department.

wrong_pressure =
    .verdict =
        Discard low-acid jars that were processed at too little pressure or time, if it came out after more than 24
        hours; they are not safe however they look.
    .instead =
        Within 24 hours they may be processed again, new lids, for the full time and pressure of your elevation, counted
        from zero, or refrigerated and eaten within days, or frozen. If pressure falls during a process, bring it back
        and start the whole time again.
    .instead-2 =
        Jars of jam or pickles that missed the minutes for elevation: within 24 hours process again in full; later
        discard them, or ask your extension office.
    .why =
        Too little pressure is too little heat, and low-acid food that was short of it can carry botulism with no sign.
        The services differ: Utah State allows a day, Iowa State and Nebraska 2 hours; the shorter is the safer.
    .ask = Your extension office, with the food, jar, time and pressure that you used.

unsealed_jar =
    .verdict = No. Do not shelve a jar that did not seal: refrigerate it now and eat it within days, or freeze it.
    .instead =
        Or process it again within 24 hours, but only if the whole tested process was right: food reheated, clean jar,
        new lid, the full process for your elevation. Found later, or if the process fell short, discard it.
    .instead-2 =
        Two extension services allow only 2 hours after a process that was not right; ask yours before you keep such a
        jar.
    .why =
        Air and germs get in where the lid is loose. If the boil or the pressure fell while the clock ran, that process
        counts from nothing.

untested_gauge =
    .verdict =
        Only if the dial gauge has been tested this year: do not can by one that is untested, damaged, sticks or reads
        off by more than 2 psi.
    .instead =
        Have it tested at an extension office or by the maker, replace it, or use a weighted gauge, for your elevation
        by a tested recipe.
    .why = Two pounds too little leave the jars cooler than the tested process, and up here you need every pound.
    .ask = Your extension office or the maker of the canner.

oil_storage =
    .verdict =
        No. Garlic, herbs, chillies, tomatoes or any fresh vegetable in oil are not kept at room temperature, on a shelf
        or in a sealed jar.
    .instead =
        Make a small amount, refrigerate it at once at { TEMP(40) } or colder and use it within 4 days, or freeze it.
        For oil that keeps, use fully dried herbs only, or garlic acidified by a tested recipe.
    .why =
        Oil shuts out air, the food is low in acid, and botulism grows there without sign; no cooking time in the
        kitchen kills its spores.
    .ask = Your extension office, for a tested way to acidify.

confit =
    .verdict =
        Only if it is eaten the same day, or refrigerated at once and used within 4 days, or frozen: garlic, herbs and
        vegetables in oil never stand at room temperature or go into sealed jars.
    .instead =
        Cook it gently, cool it within 2 h, keep it covered with oil in the refrigerator at { TEMP(40) } or colder, and
        date it.
    .why =
        Oil shuts out air, the food is low in acid, and spores of botulism live through the gentle heat of a confit, at
        any elevation.
    .ask = Your extension office; the health inspector where it is sold or served.

oven_canning =
    .verdict = No. Do not process or sterilise filled jars in an oven.
    .instead = Acid food by a tested recipe in a boiling-water canner, all other in a pressure canner; or freeze it.
    .why =
        Dry air heats jars slowly and unevenly, they burst, and the food never gets past the boil, which is lower up
        here.
    .ask = Your extension office, for a tested recipe.

odd_canner =
    .verdict =
        No. A microwave, dishwasher, slow cooker, bath circulator, air fryer, the sun or a fire does not can food.
    .instead =
        Acid food by a tested recipe in a boiling-water canner, all other in a pressure canner; or freeze, dry or
        refrigerate it.
    .why = They heat unevenly or stay under the boil; a lid that pulls down shows a vacuum, not a kill.
    .ask = Your extension office, for a tested recipe.

electric_canner =
    .verdict = No. Do not can in an electric pressure cooker, whatever its buttons say.
    .instead =
        Use a stove-top pressure canner that holds at least four quart jars, with a gauge or weight, by a tested recipe.
        Or freeze the food.
    .why =
        Tested times count on the slow heating and cooling of a full-size canner; electric cookers were measured to fall
        short, most of all at elevation.
    .ask = Your extension office.

small_cooker =
    .verdict =
        No. Do not can in a pressure cooker or saucepan: it takes a pressure canner, one that holds four quart jars or
        more.
    .instead =
        If yours holds four quart jars upright and has a gauge or a weight, it is a canner: say so, and I read the table
        for it. If not, freeze the food.
    .why =
        It heats up and cools down faster than the canners that times were tested in, and whistles tell no pressure.
    .ask = Your extension office.

open_kettle =
    .verdict = No. Filling jars hot, turning them over, or sealing with wax is not canning, jam included.
    .instead =
        Jam and other acid food: process every jar in boiling water by a tested recipe, for the time at your elevation.
        Vegetables, meat, stock, sauces with meat: never so, only in a vented pressure canner by a tested recipe.
    .instead-2 =
        Or keep it refrigerated and eat it within days (jam within weeks), or freeze it. Jars already kept warm that
        way: discard them, untasted.
    .why = A lid that pops down proves a vacuum and not a kill; moulds and spores go in with the air.
    .ask = Your extension office, for a tested recipe.

never_canned =
    .verdict = No. There is no tested process for that in a jar, in boiling water or under pressure.
    .instead = Freeze it, refrigerate it, or can its parts by a tested recipe and add the rest when you serve.
    .why =
        Too low in acid, too thick, too fat or too starchy for heat to reach the centre in any time that was tested;
        elevation narrows the margin.
    .ask = Your extension office.

low_acid_boiled =
    .verdict =
        No. Vegetables, meat, fish, beans, soup and stock are never canned in boiling water or open steam, for any
        length of time.
    .instead =
        Use a pressure canner by a tested recipe for this food and jar, at the pressure for your elevation; or freeze
        it, dry it, or pickle it by a tested recipe.
    .why =
        They are low in acid, and spores of botulism live through the boil; it is cooler here than at sea level, and
        hours do not make up for it.
    .ask = Your extension office. Jars already made this way: do not taste them, discard them.

canning_cut =
    .verdict =
        No. A tested process is not shortened, and nothing in it is changed: time, pressure, venting, acid, headspace,
        jar and recipe belong together.
    .instead =
        Jars that had too little: within a day process them again from the start, new lids, or refrigerate or freeze them;
        after that discard them, sealed or not. Give the full time and pressure of your elevation, in the jar that the
        recipe names, with its acid. Milder
        taste: add sugar, or freeze it. Other ingredients: another tested recipe.
    .why =
        Each was tested with the others; take one away and the margin is gone. Water boils cooler here, so the addition
        for elevation is part of the process.
    .ask = Your extension office.

own_canning_recipe =
    .verdict = No. I give no process for a recipe that has not been tested, whoever it comes from.
    .instead = Use a current tested recipe as it stands; or make yours and freeze or refrigerate it.
    .why =
        Acid, thickness and jar decide how long the centre takes, and only a laboratory can tell; years without illness
        are luck, and elevation narrows it.
    .ask = Your extension office, for the nearest tested recipe; a process authority where food is sold.

botulism_signs =
    .verdict = No. Do not wait and treat nothing at home: call emergency services now and say botulism.
    .instead =
        Blurred or double sight, drooping lids, slurred words, trouble swallowing or breathing, weak arms: say what was
        eaten and when, and go to hospital even if it seems mild. Keep the can or jar closed in a bag for the doctors,
        and warn all who ate of it.
    .why =
        The poison paralyses from the face downwards and can stop the breath within hours or days; an antitoxin helps,
        and the sooner the better. No drink or remedy does.
    .ask = Emergency services, then a poison centre; the health department.

topped_up =
    .verdict = No. A processed jar is not opened, filled up and closed again.
    .instead =
        Sealed jars that lost liquid in the canner stay closed: they keep, use them first. Jars that lost half or more
        go into the refrigerator and are eaten within days, or into the freezer. Jars that were opened: refrigerate,
        freeze, or within 24 hours process again, in full, with new lids.
    .why = What you add carries germs in and breaks the seal, and no heat follows.
    .ask = Your extension office.

left_in_canner =
    .verdict = Discard low-acid jars that cooled in the closed canner overnight; they are not trusted on a shelf.
    .instead =
        Another time take the canner off the heat, let the pressure fall to zero by itself, wait 10 minutes, open it and
        lift the jars out to cool in the room.
    .why =
        Closed up they stay warm for hours, and bacteria that live through the process sour the food; the seal tells
        nothing of that.
    .ask = Your extension office, for the food and the hours.

pickled_eggs =
    .verdict =
        No. Pickled eggs, sausages, fish and the like are kept in the refrigerator, never on a counter, bar or shelf.
    .instead =
        Cover them with a tested brine of vinegar of 5 % acidity, refrigerate at { TEMP(40) } or colder from the first
        hour, and put out no more than is eaten within 2 h. What stood warm: discard it.
    .why =
        Acid reaches the middle slowly, and botulism has come from pickled eggs left at room temperature. No home
        process makes them keep on a shelf.
    .ask = Your extension office, for a tested refrigerator recipe.

fermented_fish =
    .verdict =
        No. Fish that ferments or cures warm, ungutted, closed up or with little salt is one of the surest ways to
        botulism; I give no days for it.
    .instead =
        Buy it from a licensed maker, or gut the fish and freeze it, or salt it by a tested recipe at refrigerator
        temperature, { TEMP(38) } or colder. Discard what was made, untasted.
    .instead-2 =
        Freeze it, dry it or cook it instead. Where it is tradition: never plastic or a shut lid, only the old open way
        in the cold ground, by those who know it, and boiled before it is eaten.
    .why =
        The spores are in the gut and gills of the fish, and warmth without air and salt lets them grow; smell and taste
        do not tell.
    .ask = The food safety or health department; emergency services for blurred sight or drooping lids.

fermented_curd =
    .verdict = No. Bean curd or beans are not fermented at home closed up in the warm.
    .instead =
        Buy it made, or keep fresh bean curd refrigerated in changed water and eat it within days. Discard what stood
        sealed and warm.
    .why = It is moist, low in acid and without air, and home-fermented tofu has given botulism.
    .ask = The food safety or health department.

spoiled_ferment =
    .verdict =
        Discard the whole ferment, untasted: slime, pink or black colour, fuzz all through or a rotten smell means that
        it has failed.
    .instead =
        Wash crock and weights hot, and begin anew with salt weighed at 2 to 3 % for cabbage, everything under the
        brine, at { TEMP(65) } to { TEMP(72) }.
    .why = Boiling, rinsing or skimming takes no mould poisons away, and the acid that should protect it did not form.
    .ask = Your extension office.

unsalted_ferment =
    .verdict = No. Vegetables are not fermented warm without enough salt.
    .instead =
        Weigh 2 to 3 % of salt for cabbage and kimchi, as much as a tested recipe says for brines, and keep it all
        under. For little salt make a fresh slaw or a quick vinegar pickle and refrigerate it. What has stood for days
        without: discard it.
    .why =
        Salt holds back the wrong bacteria until acid has formed; without it rot and poison come first, at any
        elevation.
    .ask = Your extension office, for a tested recipe; the doctor where sodium is limited.

curing_salt =
    .verdict =
        No. Curing salt is weighed by a tested recipe, never doubled, guessed by the spoon, swapped or taken from a feed
        store.
    .instead =
        For cure no. 1, of 6.25 % nitrite, weigh 0.25 % of the meat for sausage and dry-rubbed cuts that you cook; for
        brines as the tested recipe says. Cure no. 2 holds nitrate too and is for dry sausage and ham that age for
        months, not for bacon. What was cured with the wrong kind or amount: discard it.
    .why =
        A few grams of nitrite poison, too little lets botulism grow, and nitrate in fried bacon makes cancer-causing
        compounds. Colour tells nothing.
    .ask = Your extension office; poison control or emergency services for blue lips or faintness.

warm_curing =
    .verdict = No. Meat and sausage are not cured or hung in a warm room, closed in plastic, or without salt and cure.
    .instead =
        Weigh salt, and curing salt by a tested recipe, cure in the refrigerator at { TEMP(40) } or colder, and dry
        whole muscles in a chamber at { TEMP(50) } to { TEMP(59) } and 75 % moisture. Or cook or freeze it. What hung
        warm: discard it.
    .why =
        The middle stays moist and without air while it warms, where botulism, listeria and worms live on; thin dry
        mountain air dries the skin and closes the inside up.
    .ask = Your extension office, or a licensed maker.

warm_drying =
    .verdict =
        No. Thick or unsalted meat is not dried in warmth or damp, and what smells, feels sticky or stayed wet is
        discarded.
    .instead =
        Heat strips to { TEMP(160) } first, poultry to { TEMP(165) }, then dry them at { TEMP(130) } to { TEMP(140) },
        no thicker than 6 mm. For biltong use salt and vinegar by a tested recipe, thin pieces and a cool, moving, dry
        air; or freeze the meat.
    .why =
        The outside dries and the inside stays warm and wet for days, time enough for salmonella, botulism and maggots.
    .ask = Your extension office.

cool_jerky =
    .verdict = No. Jerky is not made safe by the warmth of a dehydrator alone.
    .instead =
        Bring the meat to { TEMP(160) } inside first, poultry to { TEMP(165) }, steamed, roasted or in the marinade,
        then dry it at { TEMP(130) } to { TEMP(140) } until it cracks and does not break. A machine that gets no warmer
        than its lowest setting is not used for meat.
    .why =
        Meat cools itself while it dries, and germs that dry slowly become hardy and live on; minced meat carries them
        all through.
    .ask = Your extension office.

raw_freeze_dried =
    .verdict = No. Freeze-dried raw meat, egg or milk is still raw, and is not eaten without cooking.
    .instead =
        Cook it before drying, or after it has taken up its water: poultry to { TEMP(165) }, ground meat and egg to
        { TEMP(160) }. Keep raw and cooked packs apart and labelled.
    .why = Freeze drying takes the water and leaves the germs alive.
    .ask = Your extension office.

waterglass =
    .verdict = No. Washed, bought or cracked eggs do not go into lime water.
    .instead =
        Keep them in the refrigerator, or beat them and freeze them. Only clean, unwashed, uncracked eggs of the day are
        put up so, and they are then cooked through.
    .why = Washing takes the bloom from the shell, germs and lime get in, and a warm year does the rest.
    .ask = Your extension office.

pickling_lime =
    .verdict = No. Food that was soaked in pickling lime is never put in vinegar without rinsing and soaking.
    .instead =
        Drain it, rinse, soak it for 1 hour in fresh water, and do so three times over. Or leave lime away: calcium
        chloride, or ice water and a tested recipe, keep cucumbers crisp.
    .why = Lime that stays in the food takes the acid away that keeps botulism down.
    .ask = Your extension office.

metal_vessel =
    .verdict =
        No. Sour food is not kept, soaked or fermented in copper, brass, zinc, aluminium or glazed clay of unknown
        glaze.
    .instead =
        Use glass, food-grade plastic, stainless steel or a crock that is sold as free of lead. Discard what stood in
        the other. Green and crisp pickles come from fresh cucumbers and a tested recipe.
    .why = Acid dissolves copper, zinc and lead into the food; nothing shows, and boiling takes none of it out.
    .ask = Poison control if it was eaten; the maker for the glaze.

smoked_shelf =
    .verdict =
        No. Smoked fish, meat and cheese are not kept at room temperature or in a vacuum pack outside the refrigerator.
    .instead =
        Refrigerate it at { TEMP(38) } or colder and eat it within days, or freeze it. To eat it longer from a shelf,
        only smoked fish in a pressure canner by its tested recipe. What lay warm: discard it.
    .why =
        Home smoke neither cooks nor dries it enough; without air botulism grows in it, and listeria even in the cold.
    .ask = Your extension office.

vacuum_shelf =
    .verdict =
        No. Taking out the air is not canning: moist or cooked food in a vacuum pack, pouch or jar does not stand on a
        shelf.
    .instead =
        Chill it within 2 h and refrigerate at { TEMP(38) } or colder for days, or freeze it. Only food that is dry
        enough to snap goes in a pack with an oxygen absorber.
    .why =
        Without air is what botulism needs, and a bath or a boil in the bag leaves its spores alive. Factory pouches are
        heated under pressure.
    .ask = Your extension office.

canning_powder =
    .verdict = No. Aspirin, canning powders, borax and the like preserve nothing in a jar, in whatever amount.
    .instead =
        Acid food with its lemon juice or vinegar by a tested recipe in boiling water, all other in a pressure canner;
        or freeze it. Jars made so: discard them.
    .why = They neither make the food acid nor kill spores, and some are poisons.
    .ask = Your extension office.

wax_seal =
    .verdict = No. Wax is no seal for jam, jelly or anything else.
    .instead =
        Fill hot jars to the headspace of a tested recipe, put on new two-piece lids, and process them in boiling water
        for the time at your elevation; or refrigerate or freeze it. Melt wax in a double boiler if you need it for
        something else: over a flame it catches fire.
    .why = Wax shrinks, cracks and leaks; mould grows underneath and its poisons go down into the jelly.
    .ask = Your extension office.

three_days_boiling =
    .verdict = No. Boiling jars again on the next days does not make vegetables, meat, fish or soup safe.
    .instead =
        Use a pressure canner by a tested recipe for the food and jar, at the pressure for your elevation; or freeze it.
        Jars already made so: discard them, untasted.
    .why = Spores do not wake all together, some live through every boil, and water boils cooler up here.
    .ask = Your extension office.

acid_left_out =
    .verdict =
        No. Never leave the acid out: tomatoes, figs and the like are not canned without it, and fresh lemons or a taste
        do not take its place.
    .instead =
        Put it in every jar: 2 tablespoons of bottled lemon juice or 1/2 teaspoon of citric acid for a quart of
        tomatoes, half for a pint; for other food as its tested recipe says. Too sour: add sugar. Without acid: freeze
        it, or use a tested pressure recipe, which for tomatoes asks for acid too.
    .why =
        Many lie at the edge where botulism can grow; colour and taste do not show it, fresh lemons vary, and no longer
        boil makes up for it.
    .ask = Your extension office. Jars made without: refrigerate or freeze within 24 hours, later discard them.

weak_vinegar =
    .verdict = No. Vinegar in a pickle is not cut, thinned or replaced by one of unknown or lower strength.
    .instead =
        Use vinegar of 5 % acidity and no more water than a tested recipe says. Milder: add sugar, choose a sweet
        pickle, or make it weak, keep it in the refrigerator and eat it within days.
    .why = The acid alone keeps botulism out of a pickle; a longer boil does not replace it.
    .ask = Your extension office, for a tested milder recipe.

venting =
    .verdict =
        Only if it blew a full, steady jet of steam for 10 minutes first: a pressure canner is never closed without
        venting.
    .instead =
        Heat it on high with the vent open, wait until steam streams evenly, count 10 minutes, then close the vent or
        set the weight, and begin the time when the pressure for your elevation is reached. Jars run without: within 24
        hours process them again in full, later discard low-acid ones.
    .why = Air that stays inside makes the gauge read right and leaves the jars cooler than the process was tested at.
    .ask = Your extension office.

jar_size =
    .verdict = No. There is no tested time for that jar, and none can be worked out from a smaller one.
    .instead =
        Use pints or quarts as the tested recipe says, with the pressure or time for your elevation; half gallons only
        for apple and grape juice. Or freeze it.
    .why = Heat takes much longer to the middle of a big jar, and not in proportion.
    .ask = Your extension office.

headspace =
    .verdict = No. Jars are not filled to the rim.
    .instead =
        Leave what the tested recipe says, mostly 1 inch under pressure, 1/2 inch for fruit and pickles, 1/4 inch for
        jam. Take food out before it goes in; if they have been processed, look at every seal, and refrigerate or freeze
        what leaked.
    .why = Food swells and boils out, carries bits under the lid and spoils the seal; longer time does not help.
    .ask = Your extension office.

wrong_jars =
    .verdict =
        No. Only canning jars with new lids that fit are processed: no mayonnaise, coffee or sauce jars, drink bottles,
        tins closed by hand, or used lids.
    .instead =
        Take jars made for home canning, without chips, with new flat lids; bands may be used again. Keep the others for
        the refrigerator, the freezer or dry food.
    .why =
        Other glass breaks under heat and pressure, and old lids and caps do not seal; tested times count on the size
        and shape of canning jars.
    .ask = Your extension office.

above_tables =
    .verdict = No. I give no pressure or time beyond the end of the tested tables, and none worked out from them.
    .instead =
        Freeze, dry or refrigerate the food, or can it lower down, where the tables hold. Acid food in boiling water:
        only if its tested table has a row for all heights above a limit.
    .why =
        Nobody has tested it, canners here come near the top of what they can hold, and a figure drawn on from a line is
        a guess.
    .ask = Your extension office.

changed_recipe =
    .verdict =
        No. Nothing is added to, swapped in or mashed in a tested recipe, and its time does not hold for the changed
        one.
    .instead =
        Can it as it is written, and add meat, noodles, rice, flour, starch, cream or more vegetables when you open it.
        Dried spices and less salt may vary. What is changed already: refrigerate it and eat it within days, or freeze
        it.
    .why =
        More vegetables take acid away, and starch, fat and mash keep the heat from the middle; only a test can tell the
        time.
    .ask = Your extension office, for the nearest tested recipe.

low_acid_shelf =
    .verdict =
        No. Vegetables, beans, meat, fish, soup or stews in a closed jar do not keep on a shelf unless they went through
        a pressure canner by a tested recipe.
    .instead =
        Refrigerate it within 2 h and eat it within days, freeze it, dry it, or pressure can it by a tested recipe for
        your elevation. Jars that already stand there: discard them, untasted.
    .why =
        They are low in acid, a closed jar has no air, and botulism grows there without sign, however hot it was filled.
    .ask = Your extension office.

pressure_not_raised =
    .verdict =
        No. That pressure is for lower down; above 1,000 ft (300 m) a weighted gauge runs at 15 lb, and a dial gauge
        goes up by 1 lb for each 2,000 ft (600 m).
    .instead =
        Keep the time of the tested recipe and raise the pressure: say the food, the jar, your gauge and your elevation,
        and I look up the row. Jars that were run too low: discard them, or refrigerate and eat them where the process
        was less than 24 h ago.
    .why = The air outside pushes less up here, so the same reading is a cooler canner, and spores of botulism may live.
    .ask = Your extension office.

killed_vine =
    .verdict = No. Tomatoes from a dead or frost-killed vine are not canned, with acid or without.
    .instead =
        Eat or freeze the sound ones now, cooked. Green tomatoes picked before the frost, and ripe ones from a living vine, are
        canned by their tested recipe with the acid in every jar.
    .why = Fruit on a dead vine loses acid and is open to germs, so the tested process no longer holds.
    .ask = Your extension office.
