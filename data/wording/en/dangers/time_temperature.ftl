# What is said where a hazard of data/lexicon/danger/time_temperature.toml was heard, by its id: the verdict, what to
# do instead, why, and whom to ask. The verdict is the first sentence, and it holds no figure of what is refused.

power_cut =
    .verdict =
        Discard perishable food that has been above { TEMP(40) } for more than 2 hours: meat, fish, eggs, milk,
        leftovers, cooked rice, cut fruit.
    .caution =
        After a power cut, cook only food that stayed cold: discard perishable food that has been above { TEMP(40) } for
        more than 2 hours; no fire makes it safe again.
    .instead =
        A closed refrigerator holds about 4 h, a full freezer 48 h, a half-full one 24 h. What still has ice crystals or
        reads { TEMP(40) } or below may be refrozen or cooked. Hard cheese, butter, ketchup, jam and whole fruit keep.
    .why = Some germs leave poisons that no reheating destroys, and smell tells nothing.
    .ask = Your health inspector, where food is sold or served.

warm_thaw =
    .verdict = No. Never thaw on the counter, outside, in warm water or by a stove.
    .instead =
        In the refrigerator, a day for each 4 to 5 lb (2 kg); in cold water in a sealed bag, 30 min a pound (1 h a
        kilo), changed every 30 min, then cooked at once; in a microwave, then cooked at once. Or cook it from frozen
        and allow half as long again.
    .why = The outside is warm for hours before the centre has thawed. A cool room or cold day is no refrigerator.

foil_potato =
    .verdict = No. A baked potato in foil does not stand at room temperature.
    .instead =
        Serve it hot, or hold it above { TEMP(135) }; take the foil off and refrigerate it within 2 h. One that stood
        longer: discard it.
    .why = The foil keeps air out and warmth in, and spores of botulism that lived through the oven grow there.

warm_fridge =
    .verdict =
        No. That is too warm for perishable food: a refrigerator stays at { TEMP(40) } or below ({ TEMP(41) } by the
        food code).
    .instead =
        Discard meat, fish, dairy, eggs, cooked food and leftovers that were above it for more than 2 h, or 4 h by a
        kitchen's written time rule; move the rest to cold, and have it repaired.
    .why =
        Germs double in half an hour there, and reheating does not destroy the poisons of some. Elevation does not
        change it.
    .ask = Your health inspector, where food is sold or served.

held_too_cool =
    .verdict = No. Hot food is held at { TEMP(135) } or above ({ TEMP(140) } by USDA advice), at every elevation.
    .instead =
        Bring it to { TEMP(165) } and hold it hotter. What has been under the mark for more than 4 h, or for a time
        nobody knows: discard it. Egg sauces are made fresh for each service, or with pasteurised eggs.
    .why = Between there and { TEMP(41) } germs multiply, and some leave poisons that reheating does not destroy.
    .ask = Your health inspector, for a written time rule.

reheated_again =
    .verdict = No. Reheat once, and only what will be served.
    .instead =
        Take out the portion you need, heat it to { TEMP(165) } in the centre, and discard what is left of it. Keep the
        rest cold, 3 to 4 days.
    .why = Each round of cooling and warming gives germs another run, and some leave poisons that heat does not destroy.

reheated_low =
    .verdict = No. Leftovers are reheated to { TEMP(165) } in the centre, at every elevation.
    .instead =
        Heat it within 2 h, covered and stirred; soups and gravies to a full boil, which is hotter than that up here
        too.
    .why = The germs die by temperature, not by bubbles, and the mark does not drop because water boils cooler.

reheated_slowly =
    .verdict = No. Do not reheat in a slow cooker, a steam table, a warmer or a flask, and not to lukewarm.
    .instead =
        Heat it fast on the stove, in an oven or a microwave to { TEMP(165) } in the centre within 2 h; then it may be
        kept hot, above { TEMP(135) }. A flask: boiling water first, then food at the boil, eaten within a few hours
        while it is still above that.
    .why = They pass too slowly through the range where germs grow.

half_cooked =
    .verdict = No. Do not half-cook meat, poultry, fish or stuffing and finish it later.
    .instead =
        Keep it raw and cold and cook it in one go; or cook it through, to its safe temperature, cool it within 6 h, and
        reheat it to { TEMP(165) }.
    .why = Half-cooked meat sits warm enough for germs to grow and not hot enough to kill them; then it cools slowly.
    .ask = Your health inspector: kitchens need a written procedure for it.

raw_marinade =
    .verdict =
        Only if it is boiled: a marinade that held raw meat, poultry or fish is not used as a sauce, dip or last-minute
        baste as it is.
    .instead =
        Set some aside before the meat goes in; that is the better sauce. Or bring the used one to a full rolling boil
        for some minutes, longer here, and to at least { TEMP(165) }.
    .why = It holds the juices of the raw meat; lemon, vinegar, salt and spice do not kill them.

stuffing =
    .verdict =
        No. Stuffing is not put in the night before, in a frozen bird, a slow cooker, a smoker or a fryer, nor left
        underdone.
    .instead =
        Stuff loosely just before the oven, { TEMP(325) } or hotter, and take the centre of the stuffing to
        { TEMP(165) }; or bake it in a dish beside the bird, which is safer.
    .why = The middle of the stuffing is the last to get hot, and soaks up the juices of the raw bird.

stuffing_cool =
    .verdict = No. The centre of the stuffing must reach { TEMP(165) }, at every elevation, even when the bird is done.
    .instead = Spoon it into a dish and bake it on to { TEMP(165) } while the bird rests.
    .why = It holds the juices of the raw bird and is the last to get hot.

slow_cooker_frozen =
    .verdict = No. Never put frozen meat or poultry into a slow cooker.
    .instead =
        Thaw it in the refrigerator or in cold water first; or cook it from frozen in an oven, a pot at the boil or a
        pressure cooker.
    .why =
        It spends hours in the range where germs grow, and the boil that a slow cooker creeps up to is lower here. Meat
        that has lain in it for hours still cold: discard it.

warm_setting_cooking =
    .verdict = No. The warm setting only holds food that is hot already; it does not cook.
    .instead =
        Start on high for an hour, then low or high until the centre is at its safe temperature; beans of the kidney
        kind are boiled hard first.
    .why = It passes too slowly through the range where germs grow, and may never leave it.

cool_oven_poultry =
    .verdict = No. Poultry is not roasted in an oven under { TEMP(325) }.
    .instead =
        Set { TEMP(325) } or hotter and take the thickest part, and any stuffing, to { TEMP(165) } by thermometer. A
        smoker made for it runs at { TEMP(225) } to { TEMP(300) }.
    .why =
        In a cooler oven the bird stays too long in the range where germs grow, overnight above all. Elevation changes
        neither figure.

cool_oven_meat =
    .verdict = No. Do not cook raw meat for hours in an oven as cool as that.
    .instead =
        USDA roasts at { TEMP(325) } or hotter, to { TEMP(145) } and a 3 min rest for whole cuts, { TEMP(160) } for
        ground. For low and slow use a smoker made for it at { TEMP(225) } to { TEMP(300) }, or a covered braise that
        comes to a simmer.
    .why = The centre takes too long through the range where germs grow.

undercooked_poultry =
    .verdict = No. Poultry and stuffing are safe at { TEMP(165) } in the centre, at every elevation.
    .instead =
        Cook on until the thickest part, clear of bone, reads it. A lower temperature is safe only where a printed table
        gives the time it must be held there, as in a sous vide bath.
    .why = Salmonella dies by the temperature of the meat; that water boils cooler up here does not lower it.

undercooked_ground =
    .verdict =
        No. Ground meat is safe at { TEMP(160) } in the centre, ground poultry at { TEMP(165) }, at every elevation.
    .instead = Cook on until the centre reads it; colour tells nothing.
    .why = Grinding carries germs from the surface to the middle, and elevation does not lower what kills them.

undercooked_pork =
    .verdict =
        No. Pork, fresh ham included, is safe at { TEMP(145) } in the centre and 3 min of rest, at every elevation;
        ground pork at { TEMP(160) }.
    .instead = Put it back until the centre reads that, then rest it.
    .why = Germs and worms die by the temperature of the meat, not by that of boiling water.

undercooked_game =
    .verdict = No. Game is taken to { TEMP(160) } in the centre, game birds to { TEMP(165) }, at every elevation.
    .instead =
        Cook on, by thermometer; braise tough cuts. Whole cuts of farmed venison are held to { TEMP(145) } and a rest by
        the chart for farmed meat.
    .why = Wild meat carries worms and germs that the field and the freezer do not remove.

undercooked_fish =
    .verdict = No. Fish and shellfish are safe at { TEMP(145) } in the centre, at every elevation.
    .instead =
        Cook on until it reads that, or the flesh is opaque and flakes. Served cooler it is at the eater's own risk:
        only fish that was frozen for parasites, never for anybody pregnant, ill, old or small.
    .why = Worms and germs die by the temperature of the flesh, which does not drop with elevation.

pink_ground =
    .verdict =
        No. Ground meat is not served rare or pink by intent: { TEMP(160) } in the centre, ground poultry { TEMP(165) },
        at every elevation.
    .caution =
        Nobody eats it pink inside: ground meat is safe at { TEMP(160) } in the centre, ground poultry at { TEMP(165) },
        whatever the colour.
    .instead =
        Read a thermometer through the side into the middle. For raw or rare dishes ask your inspector for the rules on
        meat that is trimmed and ground to order, and never serve it to anybody at risk.
    .why =
        Grinding carries germs from the surface to the middle; colour does not tell, and elevation does not lower what
        kills them.

pink_poultry =
    .verdict =
        No. Not by colour: poultry is safe when its thickest part reads { TEMP(165) }, at every elevation; below that,
        cook on.
    .caution =
        Nobody eats it raw inside: poultry is safe when its thickest part reads { TEMP(165) }, whatever the colour.
    .instead =
        Read a thermometer in the thickest part, beside the bone if there is one, or in the middle of a patty or a filled
        dumpling. Pink at the bone of a young or smoked bird that reads { TEMP(165) } is harmless; raw or bloody flesh under
        it is not.
    .why = Salmonella dies by the temperature of the meat.

trichina =
    .verdict =
        Only if it reaches { TEMP(165) } in the centre: bear, boar, cougar, walrus and javelina carry worms, and
        freezing, smoking, drying or salting does not kill those of game.
    .instead = Braise it until tender and check with a thermometer in several places; keep raw meat apart.
    .why =
        The worms of wild animals stand the cold of a freezer. The boil is hotter than that mark wherever people live,
        so elevation does not change it.
    .ask = A doctor for fever, swollen eyelids or muscle pain after eating it.

pink_pork =
    .verdict =
        Only if the centre reads { TEMP(145) } and it has rested 3 min, at every elevation: then whole pork may be pink.
        Ground pork and sausage: { TEMP(160) }.
    .instead = Read a thermometer in the thickest part.
    .why = Colour does not tell. Wild pig is another matter: { TEMP(165) }.

pink_game =
    .verdict =
        No. Wild game is not served rare: { TEMP(160) } in the centre, game birds { TEMP(165) }, at every elevation.
    .instead =
        Cook it through by thermometer; braise what gets tough. Farmed venison in whole cuts is held to { TEMP(145) }
        and a 3 min rest.
    .why = Wild meat carries worms and germs that field dressing, hanging and freezing do not remove.

raw_fish =
    .verdict =
        Only if the fish was frozen for parasites and kept cold, and the eater is healthy: lime juice, salt, vinegar and
        cold smoke do not cook it.
    .instead =
        Freeze it { TEMP(-4) } for 7 days, or { TEMP(-31) } for 15 h, or buy it so treated; most home freezers are not
        cold enough. Wild freshwater fish: cook it to { TEMP(145) }. Serve it at once; not for anybody pregnant, ill,
        old or small.
    .why = Acid turns the flesh white and leaves worms and germs alive.

washing_poultry =
    .verdict = No. Do not wash raw poultry.
    .instead =
        Pat it dry with paper, discard the paper, wash hands and board, and cook the thickest part to { TEMP(165) }.
    .why = Water splashes germs over sink and salad; the heat is what kills them. Vinegar, lemon and salt do not.

cooled_slowly =
    .verdict = No. Do not let it cool by itself, overnight, covered in the pot, or hot and deep in the refrigerator.
    .instead =
        From { TEMP(135) } to { TEMP(70) } within 2 h and to { TEMP(41) } within 4 h more: shallow pans 2 in (5 cm)
        deep, an ice bath with stirring, ice as an ingredient, or an ice wand; then uncovered in the refrigerator until
        cold. What stood out overnight: discard it.
    .why =
        A deep pot stays warm for half a day, spores that lived through the boil grow in it, and some leave poisons that
        reheating does not destroy. Cool mountain air is not cold enough.

left_out =
    .verdict =
        Discard it: cooked and perishable food that stood out of the cold for more than 2 hours (1 hour above
        { TEMP(90) }) is not made safe by reheating.
    .instead =
        Next time keep it above { TEMP(135) } or chill it within 2 h, in shallow pans. Take food on the way in a cooler
        with ice, below { TEMP(40) }.
    .why =
        Germs of cooked rice, meat, stews and dairy leave poisons that stand any boil, and neither smell nor a cool room
        tells. Elevation does not change it.

safe_temperature_here =
    .verdict =
        No. Safe temperatures of food do not drop with elevation: in the centre poultry, stuffing and leftovers
        { TEMP(165) }, ground meat and egg dishes { TEMP(160) }, whole cuts and fish { TEMP(145) }.
    .instead =
        Read a thermometer in the thickest part. What simmers or steams takes longer to get there, and the boil up here is
        still hotter than any of these marks.
    .why = Germs die by the temperature of the food, whatever the air presses. It is only water that boils cooler.

slow_cooker_stopped =
    .verdict =
        Discard it: raw meat, or a dish half cooked, that stood in a slow cooker that was off, or waiting for its timer,
        for more than 2 hours.
    .instead =
        Start it when the food goes in, from the cold, on high for the first hour; or keep the food in the refrigerator
        until somebody can switch it on. Off for less than 2 h and still above { TEMP(135) }: finish it at once on the
        stove, to { TEMP(165) }.
    .why =
        Off, the pot passes through the range where germs grow, and cooking on does not destroy the poisons some leave.

marinade_warm =
    .verdict = No. Raw meat, poultry and fish marinate, brine and hang in the refrigerator, at { TEMP(40) } or below.
    .instead =
        Make room, or use a cooler with ice that you top up and check by thermometer. What stood warmer for more than 2
        h: discard it, marinade too.
    .why = Salt, buttermilk, lemon and spice slow few germs, and a garage, porch or cool kitchen is no refrigerator.

vac_weeks =
    .verdict = No. Food cooked in a sealed bag is not kept for weeks in a refrigerator.
    .instead =
        Chill the bag in ice water, keep it at { TEMP(38) } or below and eat it within a few days, a week at the most;
        or freeze it. Longer needs a written plan that the inspector has approved. Leave raw garlic out of the bag.
    .why = Without air, spores of botulism and listeria grow in the cold, and nothing smells.
    .ask = Your health inspector, for reduced-oxygen packing.

egg_sauce_held =
    .verdict =
        Discard hollandaise and other egg sauces that stood lukewarm for more than 2 hours; they are not mended by heat
        or hot water.
    .instead =
        Make small batches for each service, to { TEMP(160) }, or with pasteurised eggs; hold at { TEMP(135) } or above,
        in a flask or a bath with a thermometer, and discard what is left after 2 h.
    .why = Egg and butter at blood heat feed salmonella and staphylococci, and the poison of those stands any heat.

slow_cooker_cold =
    .verdict =
        Discard it: meat, beans or stew that stayed under { TEMP(140) } for hours in a slow cooker or a hay box is not
        mended by more heat.
    .instead =
        A slow cooker must pass { TEMP(140) } within about 3 h: check yours with water, and have it repaired. For a hay
        box boil everything through, at least 10 min and longer for beans and large pieces, pack it full and boiling,
        and bring it back to the boil if it reads less than { TEMP(140) }.
    .why = In that range germs multiply, and some leave poisons that boiling does not destroy.

cold_smoke =
    .verdict = No. Meat, sausage, poultry and fish are not cold smoked and eaten as they are.
    .instead =
        Hot smoke at { TEMP(225) } or more: poultry to { TEMP(165) }, sausage to { TEMP(160) }, fish to { TEMP(145) }.
        Cold smoke flavours food that is cooked afterwards, at once. Cured and cold smoked products need a tested recipe
        with weighed curing salt, and cold.
    .why =
        For hours it is as warm as a body, moist and short of air: what botulism, listeria and staphylococci need.
        Elevation does not change it.
    .ask = Your health inspector, or an extension office, for a tested cure.

cool_smoker =
    .verdict = No. A smoker for raw meat runs at { TEMP(225) } to { TEMP(300) }, at every elevation.
    .instead =
        Bring it up to that before the meat goes in, and use two thermometers, one for the smoker and one for the meat:
        poultry to { TEMP(165) }, ground meat to { TEMP(160) }, whole cuts to { TEMP(145) } at least. Poultry smokes
        unstuffed.
    .why = In cooler smoke the middle stays for many hours in the range where germs grow.

cool_bath_poultry =
    .verdict = No. A bath that cool is not for poultry or ground meat, however long it stays in.
    .instead =
        { TEMP(140) } or hotter, held by a printed table of time and thickness counted from when the centre gets there;
        { TEMP(150) } suits breast. Or cook to { TEMP(165) }, ground beef to { TEMP(160) }. Elevation does not change
        the bath. What lay in a cooler bath for more than 2 h: discard it.
    .why = Near body heat salmonella and clostridia multiply, and juicier flesh is no proof of a kill.

cool_bath =
    .verdict = No. No bath runs under { TEMP(130) } for more than a short warming: that is the range where germs grow.
    .instead =
        Whole cuts: { TEMP(130) } or hotter by a printed table of time and thickness; pork { TEMP(140) } or more; fish
        { TEMP(145) } in the centre for guests and anybody at risk. Elevation does not change the bath. What lay cooler
        for more than 2 h: discard it.
    .why = A sealed bag at blood heat feeds clostridia and listeria, and a longer time makes it worse.

undercooked_egg =
    .verdict = No. Eggs in creams, sauces and foams are taken to { TEMP(160) }, at every elevation; lukewarm is raw.
    .instead =
        Whisk yolks with the sugar over barely simmering water until a thermometer reads { TEMP(160) }; or use
        pasteurised eggs.
    .why = Salmonella sits in sound eggs too, and warmth short of that only feeds it.

raw_egg =
    .verdict = No. Cracked, dirty or warm-kept eggs are not used raw.
    .instead =
        Discard cracked ones. For creams, mayonnaise and the like take pasteurised eggs, or heat the yolks with sugar or
        liquid to { TEMP(160) }; keep it cold and eat it within a day or two.
    .why = Through a crack salmonella gets in, and neither spirits, coffee nor sugar kills it.

raw_liver =
    .verdict = No. Poultry liver is not left pink: { TEMP(165) } in the centre, at every elevation.
    .instead =
        Cook it gently until no pink is left and a thermometer in the thickest lobe reads that; then blend it with
        butter or cream, chill it fast, and keep it 3 to 4 days. A custard of raw livers is baked to the same mark.
    .why = Campylobacter lives inside the liver, not only on it; searing the outside does not reach it.

too_short =
    .verdict =
        No. Minutes, floating, colour and clear juices do not tell: poultry and its fillings are done at { TEMP(165) }
        in the centre, ground meat and pork fillings at { TEMP(160) }.
    .instead =
        Simmer on, covered, and read a thermometer in the thickest piece, clear of bone. Water boils cooler up here, so
        it takes longer than below, never less.
    .why = A raw centre lags far behind the water or the crust, and salmonella dies by the temperature of the meat.

shellfish_short =
    .verdict = No. Shellfish are not taken out at the first crack.
    .instead =
        Steam mussels and clams 4 to 9 min after the steam is up, oysters the same, longer up here; once they open, 3 to
        5 min more, until firm, { TEMP(145) } inside. Discard what was open and would not close before, and what stays
        shut after.
    .why = A shell opens long before its inside is hot enough for vibrio and norovirus.
    .ask = A doctor, before anybody with liver disease, diabetes or weak defences eats them at all.

thermometer_wrong =
    .verdict =
        No. Up here boiling water does not read what it does at sea level; a thermometer that was set to that now reads
        too high, and food that seems done is not.
    .instead =
        Set it in ice water, crushed ice with a little water, to { TEMP(32) }; or in boiling water to the boiling point
        of your elevation, which I can tell you. Cook by another thermometer until then: poultry to { TEMP(165) }.
    .why = The mark you turned it to belongs to sea level.

refrozen =
    .verdict = No. Raw food that thawed and grew warm is not frozen again, and a colder freezer does not mend it.
    .instead =
        Refreeze or cook only what still has ice crystals or reads { TEMP(40) } or below. What was warmer for more than
        2 h, or for a time nobody knows: discard it, shellfish and ground meat first.
    .why =
        Freezing stops germs and keeps every one of them; they go on when it thaws again, and some leave poisons that
        cooking does not destroy.

residual_heat =
    .verdict = No. Up here a bird left in its pot with the heat off is not cooked through by the water cooling.
    .instead =
        Keep it at a bare simmer, covered, until the thickest part of breast and thigh reads { TEMP(165) }; then lift it
        out, or chill it in ice water for a silky texture.
    .why =
        The boil starts cooler here and only falls from there, so the centre may stay raw at minutes that did at sea
        level.

delayed_start =
    .verdict = No. Raw meat does not wait in an unheated oven or pot for a timer to start it.
    .instead =
        Keep it in the refrigerator and start it when someone is home, or cook it the night before, chill it fast in
        shallow pans and reheat it to { TEMP(165) }.
    .why =
        It stands at room temperature for hours first; 2 h is the limit, and some germs leave poisons that the cooking
        after does not destroy.

cooled_outdoors =
    .verdict = No. A full pot stays warm in its middle for many hours, however cold it is outside.
    .instead =
        Split it into shallow pans or stand it in ice or snow and stir, so that it falls from { TEMP(135) } to { TEMP(70) } in
        2 h and to { TEMP(41) } in 4 h more, then put it under cover into the fridge. Heat it to { TEMP(165) } before it is
        served again.
    .why = Germs grow in what cools slowly, and weather and animals keep to no rule.

carried_warm =
    .verdict = No, not warm: more than 2 hours on the road is too long for cooked food that is neither cold nor hot.
    .instead =
        Chill it within 2 h in shallow pans, carry it at { TEMP(40) } or below in a cool box with ice, and heat it to
        { TEMP(165) } there. Or keep it at { TEMP(135) } or above all the way, in a box that is made for it.
    .why = Warm food grows germs all the way, and some leave poisons that reheating does not destroy.

carried_far =
    .verdict =
        No, not warm: more than 2 hours on the road is too long for cooked food that is neither cold nor hot.
    .caution =
        For the road: chill it within 2 h in shallow pans, carry it at { TEMP(40) } or below in a cool box with ice, and heat
        it to { TEMP(165) } there.
    .instead =
        Chill it within 2 h in shallow pans, carry it at { TEMP(40) } or below in a cool box with ice, and heat it to
        { TEMP(165) } there.
    .why = Warm food grows germs all the way, and some leave poisons that reheating does not destroy.

how_long_out =
    .verdict =
        Only if it is 2 hours or less in all, 1 hour above { TEMP(90) }: then it is chilled, heated to { TEMP(165) } and
        held hot, or discarded.
    .instead =
        Hold it at { TEMP(135) } or above on a warmer, or at { TEMP(40) } or below on ice, and it may stand longer. Put
        out small dishes and change them.
    .why =
        Between those temperatures germs double in minutes, and some leave poisons that reheating does not destroy.
        Elevation does not change it.
    .ask = Your health inspector, for a written time rule where food is sold or served.
