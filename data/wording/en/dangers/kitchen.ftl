# What is said where a hazard of data/lexicon/danger/kitchen.toml was heard, by its id: the verdict, what to
# do instead, why, and whom to ask. The verdict is the first sentence, and it holds no figure of what is refused.

oil_fire =
    .verdict =
        No water, ever: turn the heat off, slide a lid or a baking sheet over the pan, and leave it covered until it is
        cold.
    .instead =
        If there is no lid, smother it with baking soda or use a class K or class B extinguisher or a fire blanket. Do
        not carry the pan.
    .instead-2 =
        Fire in an oven or microwave: keep the door shut and switch it off. If it does not go out in seconds, get
        everybody out and call the fire brigade.
    .why =
        Water sinks under burning fat, flashes to steam and throws the fire across the room. Elevation changes none of
        it.
    .ask = Emergency services, at once, if it spreads.

burn_injury =
    .verdict = No butter, ice or paste on a burn: cool it now under cool running water for 20 minutes.
    .instead =
        Take off rings and clothing that does not stick; leave hardened sugar on the skin until the water has cooled it,
        and do not pull it off.
    .instead-2 = Then cover it loosely with cling film or a clean, dry cloth.
    .why = Sugar and oil hold their heat and go on burning; ice and grease damage the skin or keep the heat in.
    .ask =
        A doctor for a burn larger than a hand, blistered, on face, hand or joint, or of a child; emergency services for
        a deep or large one.

water_in_oil =
    .verdict = No. Never let water, ice or anything dripping near hot oil.
    .instead =
        To cool it, turn the heat off and wait, or take the pan off the flame if it can stand safely; add a little cool,
        dry oil at most.
    .instead-2 = Dry food, shake loose ice off frozen food before it nears the fryer, and lower a small batch slowly.
    .why = Water turns to steam under the oil and throws it out of the pot, onto skin and flame, at any elevation.

frozen_turkey_fryer =
    .verdict = No. Never lower a frozen, part-frozen or wet bird into hot oil.
    .instead =
        Thaw it right through in the refrigerator, a day for each 4 to 5 lb (2 kg), dry it inside and out, and fry it
        outdoors away from walls, with the burner off while you lower it.
    .instead-2 = If it is still frozen today, roast it from frozen in the oven and allow half as long again.
    .why = Ice flashes to steam in the oil and the pot boils over onto the flame.
    .ask = Your fire service has advice on turkey fryers.

pressure_frying =
    .verdict = No. Do not fry under pressure: a pressure cooker is not made for oil.
    .instead =
        Fry in an open, deep pot with a thermometer, no more than half full; or cook the chicken under pressure in water
        or stock and crisp it in an oven afterwards.
    .instead-2 = Browning in a spoonful of oil with the lid off, before the liquid goes in, is fine.
    .why = Gaskets and valves fail at the heat of frying fat, and the lid lets go with the oil.

opening_under_pressure =
    .verdict = No. Do not open or force a pressure cooker while any pressure is in it.
    .instead =
        Turn the heat off and leave it; or run cold water over the rim of a stove-top cooker if its maker allows that.
        The lid turns easily once the pin has dropped and nothing hisses from the valve.
    .instead-2 =
        If it stays stuck when it is stone cold, lift the weight to let air in and try again; never with a lever, a
        hammer or a blade.
    .why = The water inside is well above its boil here and goes over into steam all at once when the lid comes off.
    .ask = The maker of the cooker, or a repair shop, if it will not open cold.

plugged_valve =
    .verdict = No. Never plug, weigh down, wire or bypass the valve or vent of a pressure cooker.
    .instead = Use the weight that belongs to it and cook longer: that is the way to make up for elevation.
    .instead-2 =
        If the vent is blocked or a part is missing or worn, clean it or fit the maker's part before it goes on the heat
        again.
    .why =
        The valve is what keeps the pot from bursting; it was set for the strength of its lid, and elevation does not
        change that.
    .ask = The maker, for parts.

over_pressure =
    .verdict =
        No. Do not run a pressure cooker above the pressure it was made for, 15 psi (103 kPa) at most in household
        cookers.
    .instead =
        Keep it at its mark and cook longer: about 5 % more time for each 1,000 ft (300 m) above 2,000 ft (600 m), as
        common practice has it.
    .why =
        The air outside is thinner, so the same gauge reading is cooler inside; the lid and its lock were still made for
        that reading.
    .ask = The maker, for the limit of your model.

overfilled_cooker =
    .verdict =
        No. Fill a pressure cooker two thirds at most, and half for beans, lentils, grains, pasta, oats, fruit and all
        that foams.
    .instead = Cook it in two batches, with a spoon of oil in beans and lentils, and let the pressure drop by itself.
    .why = Foam and skins climb into the vent and block it; then nothing limits the pressure.

dry_cooker =
    .verdict = No. A pressure cooker needs liquid: never run it dry.
    .instead = Use at least the maker's least amount, most often 1 to 2 cups (250 to 500 ml), and a little more here.
    .why = Without water there is no steam to hold the heat down; food burns, gasket and plug melt.

smoking_oil =
    .verdict =
        No food goes in now: oil that smokes is close to catching fire. Turn the heat off and let it cool, with a lid at
        hand.
    .instead =
        Do not move the pan and add nothing wet. Fry at no more than { TEMP(375) }, by thermometer; throw out oil that
        has smoked hard.
    .why = Smoke, then flash, then fire: these points belong to the oil and do not move with elevation.

gas_indoors =
    .verdict = No. Never burn charcoal, gas, petrol or a camp stove in a tent, hut, vehicle, garage or closed room.
    .instead =
        Cook outside, well clear of doors, windows and vents. A built-in stove needs its own flue or hood, an open
        window and a carbon monoxide alarm.
    .instead-2 = Headache, dizziness, sickness: everybody out into the air at once.
    .why =
        Burning fuel makes carbon monoxide, which has no smell; the thinner air up here makes it worse. A window ajar is
        not enough.
    .ask =
        Emergency services for anybody who feels ill or drowsy; a gas fitter for a kitchen without working extraction.

heating_with_stove =
    .verdict = No. Do not heat a room with an oven, a hob, a grill or a camp stove.
    .instead =
        Put on layers, close off one room, and use a heater that is made for indoors, with a flue and a carbon monoxide
        alarm.
    .why =
        An oven or burner left on fills a closed room with carbon monoxide and starts fires; thin air makes both the
        burning and the breathing worse.
    .ask = Emergency services for a headache, sickness or drowsiness; your utility or the town for warm shelter.

heated_canister =
    .verdict = No. Never warm a gas canister or cylinder with a flame, on a stove or in hot water.
    .instead =
        Keep the canister in your jacket or sleeping bag before use, stand it in a bowl of cool water, or take a stove
        that burns liquid fuel or feeds the gas upside down.
    .why = Pressure in the can rises steeply with heat and it bursts as a fireball.

sealed_can =
    .verdict = No. Never heat a closed can, tin or jar: not in water, in an oven, on coals or in a pressure cooker.
    .instead =
        Open it, pour the food into a pot and heat it there. For dulce de leche cook the milk in an open pan, a double
        boiler or an open dish under foil.
    .why =
        Pressure builds inside with nowhere to go; it bursts, most often when somebody leans over it or opens it. Water
        that boils cooler up here does not make it safe.

egg_in_microwave =
    .verdict = No. Do not heat an egg in its shell, or a whole boiled egg, in a microwave.
    .instead = Warm it in hot water, or halve it first and heat it gently under a cover.
    .why = Steam has no way out; the egg bursts in the oven or, worse, at the first bite.

superheated_water =
    .verdict =
        Only if something is in it: put a wooden stick, a spoon made for microwaves or the tea bag in before you heat
        it, and let it stand half a minute.
    .instead = Stop it short of the boil, do not heat it twice, and keep your face away. A kettle is the better tool.
    .why =
        Still water in a smooth cup can pass its boil without a bubble and then leap out; the boil is lower here, so it
        comes sooner.

still =
    .verdict = No. I do not help with distilling spirits, whatever it is for.
    .instead =
        Buy spirits that were made under licence; ask me how ethanol and water boil, if it is the physics you want.
    .why =
        It needs a licence, the vapour burns and explodes, an improvised pot can burst, and what comes over first can
        hold methanol.
    .ask = The licensing authority of your country.

cleaning_mix =
    .verdict = No. Never mix cleaners: bleach with acid, vinegar, descaler or ammonia gives off poison gas.
    .instead =
        Use one product, rinse well with water, and air the room. If it has been mixed: everybody out, open doors from
        outside.
    .why = Chlorine and chloramine gas harm the lungs within breaths.
    .ask = Poison line or emergency services if anybody coughs or wheezes.

sealed_dry_ice =
    .verdict = No. Never close dry ice or liquid nitrogen in a sealed vessel, car or small room, and never serve it.
    .instead =
        Keep it in a vented box in moving air, handle it with gloves, and wait until all of it has gone off before
        anybody drinks or eats.
    .why =
        The gas takes hundreds of times the room of the solid: vessels burst, air is driven out, and a swallowed piece
        injures.

flambe_from_bottle =
    .verdict =
        Only if the spirit is measured into a cup away from the stove, the hood is off and a lid is at hand; never pour
        from the bottle.
    .instead =
        Take the pan off the flame, add the spirit, light it with a long match at arm's length, and let it burn out.
    .why = A flame runs up the stream into the bottle.

glass_shock =
    .verdict = No. Glass and stoneware do not take a sudden change of heat, nor a flame or a broiler.
    .instead =
        Bring it to room temperature first, put it into an oven that has come to heat, never add cold liquid to a hot
        dish, and use metal on the stove, the grill and under the broiler.
    .instead-2 = Jars: warm jars into hot water, cool jars into cool water.
    .why = One side swells faster than the other and it shatters.

unattended =
    .verdict = No. Hot oil, a pressure cooker and a canner are never left alone.
    .instead = Turn the heat off before you leave; a slow cooker or an oven made to run by itself is another matter.
    .why = Oil reaches its flash point within minutes of the last look, and a cooker that boils dry melts its plug.

hot_sugar_touch =
    .verdict = No. Never touch or taste hot sugar; it burns deeper than boiling water.
    .instead =
        Use a thermometer, corrected for your elevation, or drop a little from a spoon into cold water and feel it
        there.
    .instead-2 = A bowl of cold water stands by for skin; 20 minutes under cool running water for a burn.
    .why = It is 50 to 70 °C above the boil, sticks, and goes on giving off heat.

lye_water =
    .verdict =
        Only if the lye goes into cold water, little by little, with gloves and goggles; never water onto lye, never hot
        water, never aluminium.
    .instead =
        Follow a tested recipe by weight, rinse the food as it says, and keep vinegar away until the end: on skin use
        running water for 20 minutes.
    .why = It heats the water to the boil and spits; water boils sooner up here.
    .ask = The poison line or emergency services for eyes, skin or swallowing.

oil_fire_lid =
    .verdict = No. Leave the lid on and the heat off until the pan is stone cold, an hour or more.
    .instead = Do not lift it to look and do not move the pan; stand by with a second lid or a fire blanket.
    .why = The oil is still hot enough to light again the moment air reaches it.
    .ask = Emergency services if it burns on or spreads.

duct_fire =
    .verdict = No: turn the fan and the gas off, never feed the fire with air, and get everybody out.
    .instead =
        Pull the hood's suppression system if there is one, shut the doors behind you, and do not open the duct or put
        in water.
    .instead-2 = Nothing is lit under that hood again until it has been cleaned and inspected.
    .why = Grease burns inside the duct where nobody sees it, and a running fan draws the fire into roof and walls.
    .ask = Emergency services, at once, also if it seems to be out.

appliance_fire =
    .verdict = No. Keep it shut, switch it off at the wall or the gas, and let the fire starve.
    .instead =
        Do not open it, pull the food out, fan it, or put in water, flour or a fork; smother what burns on an open grill
        with a lid or a dry metal tray.
    .instead-2 =
        If it is not out within seconds or fills the room with smoke, get everybody out and call the fire brigade.
    .why =
        Opening the door feeds it air; water throws burning fat about and, like a fork, makes live electric parts
        deadly.
    .ask = Emergency services, at once, if it does not go out.

fire_show =
    .verdict = No. I give no figure for setting fat, flour or spirit alight on purpose.
    .instead =
        For a smoky wok taste use small batches in a very hot, thin pan; for a show carve, grate or finish at the table
        with a gas torch on the food.
    .why = Burning fat cannot be steered, and flour, starch or sugar dust in the air goes off as a fireball.
    .ask = Your fire service, before any flame in front of guests.

petrol_on_fire =
    .verdict =
        No. Never put petrol, diesel, meths, thinner or lighter fluid on a fire, or on coals that are or were alight.
    .instead =
        Use dry kindling, a chimney starter with newspaper, or firelighters made for food, and give it 20 to 30 minutes.
    .why = The vapour lights all at once, runs back up the stream into the can, and the fumes taint the food.
    .ask = Emergency services if anybody was splashed or burnt.

gas_leak =
    .verdict =
        No flame, no switch, no spray: open doors and windows, shut the gas off at the bottle or meter, and get
        everybody out.
    .instead = Do not relight the pilot or look for the leak with a flame; call from outside.
    .why = A spark from a switch is enough to light gas in a room; bottled gas gathers at floor level.
    .ask = The gas emergency line or the fire brigade, from outside; a gas fitter before it is lit again.

co_symptoms =
    .verdict =
        No. Put the stove or fire out and get everybody into the open air now: this may be carbon monoxide, not the
        height.
    .instead = Leave doors and flaps open, count heads, and let nobody lie down inside again. Cook outside.
    .why =
        Carbon monoxide has no smell, feels like mountain sickness and kills in sleep; several people ill together
        indoors is its sign.
    .ask =
        Emergency services for all who feel ill, even if they feel better outside; say that it may be carbon monoxide.

sooty_flame =
    .verdict =
        No. A gas flame that burns yellow or orange, lazy or sooty is not right at any elevation: it gets too little air and
        gives off carbon monoxide.
    .instead =
        Turn it off and air the room; have a gas fitter clean the burners, open the air shutters and fit the jets and the
        regulator for your elevation. Until then cook with the windows open and the hood on, or on something electric; fit a
        carbon monoxide alarm. A flame that is right is blue and steady, with at most a yellow flicker at its tips.
    .why =
        Each breath of thin air holds less oxygen, so jets cut for sea level burn too rich; unburnt gas becomes soot and
        carbon monoxide.
    .ask = A gas fitter; emergency services for headache, sickness or drowsiness, and get out first.

sooty_flame_named =
    .verdict = Only if the burners burn blue: yellow, orange or sooty flames give off carbon monoxide.
    .caution =
        Flames that burn yellow, orange or sooty get too little air and give off carbon monoxide: turn them off, air the
        room, and have a gas fitter set shutters and jets for your elevation; it wastes gas too. Fit a carbon monoxide alarm.
    .instead =
        Have a gas fitter clean the burners, open the air shutters and fit the jets for your elevation; air the room.
    .why = Thin air holds less oxygen, so jets cut for sea level burn too rich.

co_alarm =
    .verdict =
        No. Do not silence it: put out the fire, get everybody out into the air, and go back only when it is found why.
    .instead =
        Let a gas fitter or chimney sweep look at flue, burner and room; a tandoor, grill or coals belong outdoors.
    .why = The alarm is the only thing in the room that notices carbon monoxide.
    .ask = The fire brigade or the gas emergency line; emergency services for headache, sickness or drowsiness.

dry_canner =
    .verdict = No. Put no water into it: turn the heat off and let it cool by itself, lid on, until it is cold.
    .instead = Discard the food in the jars, and have gasket, plug and gauge looked at before the pot is used again.
    .why = Cold water on glowing metal flashes to steam, warps the pot and shatters the jars.
    .ask = The maker of the cooker, whether it can still be used.

cooker_in_water =
    .verdict = No. An electric pressure cooker never goes under a tap, into a sink or into snow.
    .instead =
        Switch it off and let it drop by itself, or open its own valve with a long spoon where the recipe allows it.
    .why = Water and mains current do not go together, and its lid is not made to be cooled from outside.
    .ask = The maker, if it does not come down by itself.

canner_cooled_fast =
    .verdict =
        No. A canner is never vented, cooled with water or opened early: leave it until it stands at zero by itself.
    .instead = Heat off, do not touch the weight; at zero wait ten minutes more, then lift the lid away from you.
    .why =
        A sudden drop boils the jars over, breaks them and spoils the seals, and the cooling down is part of the
        process; the lid can let go with the steam.
    .ask = Your extension office, about jars that were cooled fast.

makeshift_pressure =
    .verdict =
        No. Never make a pressure vessel of a pot or a keg, and never wire, clamp, tie or weigh a lid shut: it can burst.
    .instead =
        Use a pressure cooker that was made as one, with its own lock and valve, or cook longer in an open pot; beans
        soften with a long soak in salted water.
    .why =
        It has no valve that knows its strength; a pot holds until it bursts, and thin air outside does not make it
        stronger.

broken_cooker =
    .verdict =
        No. A pressure cooker with a bad gasket, lock, handle or lid stays off the heat until the part is replaced.
    .instead =
        Fit the maker's own part: no dough, tape, sealant or cloth in its place. Until then cook in an open pot, longer
        for your elevation.
    .why = The lid can slip or blow off under pressure, and a leaking one boils dry and never reaches its heat.
    .ask = The maker or a repair shop, for the part.

foaming_release =
    .verdict = No quick release: let the pressure of a full or starchy pot drop by itself.
    .instead =
        Switch it off, keep hands and face away from the valve, and wait until the pin has dropped, half an hour for a
        full pot. Next time fill it to half.
    .why = Starch foams up when the pressure falls and sprays out of the valve as scalding glue, or blocks it.

wrong_in_cooker =
    .verdict = No. Popcorn and spirits do not go into a closed pressure cooker.
    .instead =
        Pop corn in a deep pan with the lid ajar; braise in stock or water with a splash of spirit that was boiled for
        some minutes in the open pot.
    .why = Kernels block the vent, and spirit vapour comes out of the valve above a flame and lights.

overfilled_fryer =
    .verdict = No. Fill a frying pot half full of oil at most, and the basket half full too.
    .instead =
        Lower the bird or a full basket into the cold pot with water first, mark the level, then dry everything and fill
        with oil to that mark.
    .why = Food pushes the oil up and its water foams it; what runs over meets the flame.

child_at_heat =
    .verdict = No. Hot oil and hot sugar are not for children, nor for bare hands of any age.
    .instead =
        Let them shape, bread, roll or decorate, well away from the stove; an adult lowers food in with a spoon or tongs
        and hands it on when it is cool.
    .instead-2 = A bowl of cold water stands by; a burn goes under cool running water for 20 minutes.
    .why =
        Oil splashes and sugar sticks, both far hotter than boiling water, and a child's skin burns through in a second.
    .ask = Emergency services for any large or deep burn of a child.

moving_hot_oil =
    .verdict = No. Hot oil is not carried, poured into plastic or sent down a sink.
    .instead =
        Turn the heat off and leave it where it is until it is cool to the touch, some hours, with the lid on; then
        strain it, or take it to a collection in a metal can that closes.
    .why = Plastic melts, a stumble burns to the bone, and water in a drain throws it back and then blocks the pipe.

bypassed_guard =
    .verdict = No. Switch it off and do not use it with a limit, lock or safety switch bridged, taped or taken out.
    .instead =
        Leave it unplugged or the gas shut until a technician has mended it: a limit that trips often says that
        something is wrong.
    .why = It is the last thing that stands between the thermostat and a fire.
    .ask = A qualified service technician.

microwave_door =
    .verdict = No. Do not run a microwave oven empty, sparking, or with a bad door, latch or seal.
    .instead = Unplug it and warm the food on the stove, to steaming throughout.
    .why = The door lock is what stops the waves when it opens; tape does not.
    .ask = A qualified service technician; do not open it yourself.

microwave_oil =
    .verdict = No. Do not heat oil for frying, or boil sugar, in a microwave or in plastic.
    .instead = Use a heavy pan on the stove with a thermometer and a lid at hand, and do not leave it.
    .why =
        Nothing tells you how hot it is; it goes past its smoke point or burns through the bowl, and splashes when it is
        moved.

microwave_chilli =
    .verdict = No. Do not toast dried chillies in a microwave.
    .instead =
        Toast them in a dry pan on low heat, seconds a side, with the window or hood open, and take them off as soon as
        they smell.
    .why = They scorch from inside, catch fire, and their smoke chokes the room.

overheated_oil =
    .verdict = No. Frying oil stays at { TEMP(375) } or below.
    .instead =
        Fry in small batches and give the oil time to come back; at elevation food loses its water sooner, so a little
        lower, not higher.
    .why = Above that it smokes, breaks down, and soon catches fire; these points do not move with elevation.

fryer_under_cover =
    .verdict = No. Deep frying over a burner is not done on a wooden deck or porch, or under any roof or awning.
    .instead =
        Set the burner on bare, level ground or concrete, ten feet (3 m) from walls and anything that burns, with a lid
        and an extinguisher for fat at hand.
    .why = Oil that boils over lights at the burner and sets the wood and the roof on fire.

egg_in_oil =
    .verdict = No. Never put an egg in its shell, or a whole wet boiled one, into hot oil.
    .instead =
        Boil it, peel and dry it, prick or halve it, coat it, and lower it in with a long spoon; or fry it out of the
        shell.
    .why = Steam has no way out; the egg bursts and throws the oil.

bursting_skin =
    .verdict = No. Score every chestnut, and prick every potato, before it meets heat.
    .instead =
        Cut a cross through the shell on the flat side; take what is in the fire out with long tongs only when it has
        stood back, and cover the pan.
    .why = Steam builds up under the skin and it goes off like a shot, more so in dry thin air.

refuelling_lit =
    .verdict = No. Never add fuel to a burner, or change its canister, while it is lit or hot.
    .instead =
        Put it out, let it cool until you can hold it, move away from any flame, fill it, wipe what was spilled, and
        only then light it.
    .why = An alcohol flame can hardly be seen; it runs up the stream and the bottle bursts into flame in the hand.
    .ask = Emergency services for burns.

blocked_flue =
    .verdict = No. Light nothing on a stove or range whose chimney or flue is blocked, loose or unswept.
    .instead =
        Put it out, open the windows, and cook on something electric or outdoors until it has been swept and checked;
        fit a carbon monoxide alarm.
    .why = What does not go up the chimney stays in the room, carbon monoxide with it, even if it seems to draw a bit.
    .ask = A chimney sweep or gas fitter; emergency services for headache, sickness or drowsiness.

swollen_hot_can =
    .verdict = No. Do not touch, pierce or open it: heat off, stand back, and let it cool where it is for hours.
    .instead = Then discard it unopened, wrapped, and cook the milk or the food in an open pan next time.
    .why = A can that has swollen in the heat is about to burst, and sprays scalding food when it is pierced.
    .ask = Emergency services for a burn in the face.

bottle_bomb =
    .verdict = No. Do not warm, shake or handle bottles of a lively ferment that are closed.
    .instead =
        Put on goggles and thick gloves, wrap them in a towel, chill them in the refrigerator, and then let the gas out
        slowly over a sink.
    .instead-2 =
        Do not heat closed bottles to pasteurise them; keep the next batch cold and in bottles made for pressure.
    .why = Warmth drives gas out and yeast on, and glass goes off as splinters; the thinner air up here adds to it.

loaded_siphon =
    .verdict = No. Do not unscrew, force, heat or overcharge a siphon that has gas in it.
    .instead =
        Hold it upright, head in a towel, and press the lever until nothing hisses; if it is blocked, chill it and let
        it stand, and send it to the maker. Two chargers to a litre at most, as its maker says.
    .why = The head flies off with the force of the gas.
    .ask = The maker of the siphon.

hot_blender =
    .verdict = No. Never close hot liquid in a full blender.
    .instead =
        Let it cool some minutes, fill it a third, take the cap out of the lid, hold a folded towel over the hole, and
        start slow; or use a stick blender in the pot.
    .why = The steam that the blades set free blows the lid off and the soup with it.

sealed_vessel =
    .verdict = No. Never heat a flask, jar or bottle that is closed.
    .instead = Take the lid off, or pour it into an open pot; a double-walled flask never goes on a fire, not even open.
    .why = Steam has no way out and the vessel bursts, the sealed gap of a vacuum flask too.

glass_in_food =
    .verdict = Discard it all: food with broken glass in it cannot be saved by a sieve, a filter or a blender.
    .instead = Discard everything that stood open near it too, wipe up with damp paper, and start with clean pots.
    .why = Splinters too small to see pass through any sieve and cut mouth and gut.
    .ask = A doctor if somebody has eaten of it and has pain or bleeding.

boiling_spirit =
    .verdict = No. Never boil off or evaporate strong spirit over a flame or in a closed kitchen.
    .instead = Let flowers or herbs draw in it cold, or add a measured splash to a sauce off the flame.
    .why = Its vapour is heavier than air, creeps to the burner and goes off.
    .ask = Your fire service, for any work with solvents.

oven_cleaner_heat =
    .verdict = No. Nothing is cooked in or on it until it is cold, wiped out and rinsed twice.
    .instead =
        Switch it off, open windows, let it cool, wipe with plenty of clean water, then heat it empty with the hood
        running before food goes in.
    .why = Cleaner on hot metal gives off caustic fumes, and what stays behind gets into the food.
    .ask = Poison line for coughing, burning eyes, or food that was eaten.

false_lye =
    .verdict = No. Drain opener, oven cleaner and building lime never go into food.
    .instead =
        Use food-grade lye or calcium hydroxide by weight from a tested recipe; for noodles bake baking soda for an hour
        at { TEMP(250) } and use that.
    .why = They hold aluminium, bleach, solvents and metals that no rinsing takes out.
    .ask = The poison line, if any has been eaten.

chemical_eye =
    .verdict =
        No vinegar or other neutraliser: rinse it at once with running water, an eye for 20 minutes with the lids held
        open.
    .instead =
        Take off soaked clothes and contact lenses while you rinse. If it was swallowed, rinse the mouth and do not make
        anybody vomit.
    .why = A neutraliser makes heat in the wound; only much water carries lye and cleaner off before they eat deeper.
    .ask = Emergency services or the poison line now, while you rinse; have the pack at hand.

chemical_in_food =
    .verdict = Discard it: heat does not take a cleaner, fuel or poison out of food or drink.
    .instead =
        Stop serving, keep the bottle, warn all who have had some, and wash the pot in plenty of fresh water before you
        cook anew.
    .why = Boiling makes it stronger, not weaker; and many burn the throat or poison in small amounts.
    .ask =
        The poison line at once, with the product's name; emergency services for burning, sickness or trouble breathing.

wet_stones =
    .verdict = No. Stones from a river, lake or beach, or any that are wet, never go into a fire.
    .instead =
        Use dry, dense volcanic or granite stones without cracks from high ground, heat them slowly, and keep people
        back; a steel plate does as well.
    .why = Water shut in the stone turns to steam and it bursts into flying splinters.

nonstick_fumes =
    .verdict = No food goes in: turn it off, open the windows, and take people and birds out of the room.
    .instead =
        Let the pan cool where it is; throw it out if the coating has browned or flakes. For high heat use bare steel or
        iron.
    .why = An empty nonstick pan on full heat gives off fumes that kill birds within minutes and make people feverish.
    .ask = A vet for the bird, now; a doctor or the poison line for a tight chest, chills or fever.

toxic_metal =
    .verdict =
        No. Do not cook, soak or store food in galvanised or zinc ware, bare copper, pewter or old lead-glazed pottery.
    .instead = Use stainless steel, sound enamel, glass, food-grade plastic or tin-lined copper.
    .why =
        Acid, salt and heat draw zinc, copper, lead, cadmium or antimony into the food; a glaze may look sound and still
        give off lead.
    .ask = The poison line, if food from it has been eaten.

toxic_plastic =
    .verdict =
        No. Bin bags, drain pipes, foam, carrier bags and hardware-store plastics never hold hot food, nor food that
        stands.
    .instead =
        Use bags sold for cooking at that heat, food-grade buckets, bamboo, steel or glass; a lidded pot does without a
        bag.
    .why = They soften and give off plasticisers, dyes, lead and what they were treated with.
    .ask = The poison line, if food from it has been eaten.

tainted_wood =
    .verdict =
        No. Do not cook over treated or painted wood, pallets or poisonous twigs, nor in a drum that held oil, paint or
        chemicals.
    .instead =
        Burn plain, dry hardwood or lump charcoal; use a cooker or a new, unlined steel drum that never held anything.
    .why =
        Arsenic, copper, lead, solvents and plant poisons go with the smoke into the food, and a drum with a rest of
        solvent can go off.
    .ask = The poison line, if food from it has been eaten.

sugar_splash =
    .verdict = No. Never put cold liquid all at once into hot caramel, and never lean over it.
    .instead =
        Take it off the heat, use a pan that is a third full at most, warm the cream or water, and add it in a thin
        stream at arm's length.
    .instead-2 = If it smokes and is black, leave it off the heat to cool and start anew.
    .why = Sugar is far hotter than the boil: liquid turns to steam at once and the pot foams over and spits.
    .ask = Emergency services for a burn in the face.

cloth_on_hob =
    .verdict = No. Never dry or lay cloth, gloves, boots or paper on or above a hob, in an oven or in a microwave.
    .instead = Hang them well away from the heat, or wring and dry them on a line.
    .why = They are alight within minutes, and grease in a kitchen cloth makes it faster.

wrong_fuel =
    .verdict = No. A stove burns only the fuel it was made for, and a throw-away canister is never refilled.
    .instead =
        Look for the fuel on its plate or in its manual, and buy that; until then cook on another stove, in the open
        air.
    .why = Petrol in a kerosene or spirit stove boils in the tank and goes off as a jet of flame.
    .ask = The maker of the stove, for the fuels it takes.

bursting_in_oil =
    .verdict =
        No. Do not drop gnocchi, soaked pearls or other wet, tight-skinned dough into hot oil: they burst and throw it.
    .instead =
        Boil them first, dry them well and crisp them in a shallow pan with a little oil, or bake them oiled in a hot
        oven.
    .why =
        The water inside turns to steam under a skin that holds it, until it gives way all at once; frozen ones are
        worse.

chemical_additive =
    .verdict = No. That is a chemical, not a food: it goes into nothing that is eaten or drunk, in no amount.
    .instead =
        Keep fish and meat on ice, ripen fruit in a paper bag with a banana, and make extracts and liqueurs with a
        spirit sold for drinking.
    .instead-2 = Discard what it went into.
    .why = Boiling, filtering or diluting does not take the poison out.
    .ask = The poison line, at once, if somebody has had some of it.

sealed_pack =
    .verdict = No. Never heat food in a shell of clay, bamboo or anything else that is sealed all round.
    .instead = Leave a hole or a loose end for the steam, and stand back when you open it.
    .why = Steam that cannot leave bursts the shell and throws pieces and scalding food.

electric_shock =
    .verdict = No. Switch it off at the wall and unplug it before anything else; do not go on with it as it is.
    .instead = A toaster: unplug it, let it cool and shake the bread out; no metal in it.
    .instead-2 =
        A frayed cord, a hot plug or a crackling adaptor: take it out of use, and give each strong heater a wall socket
        of its own.
    .why = Bare metal in a live appliance can kill, wet hands make it worse, and an overloaded lead starts a fire.
    .ask = An electrician, or the maker for a new cord.

blocked_moka =
    .verdict = No. Do not heat a moka pot with a blocked valve or tamped grounds: it can burst.
    .instead = Free the valve with vinegar and water, and see that it moves; if it does not, replace the pot.
    .instead-2 = Fill the basket loosely, level it, and keep the water below the valve.
    .why = The valve is all that lets the pressure go when the coffee holds it back; that is so at any elevation.

blade_hand =
    .verdict = No. Keep bare hands and fingers away from the blade: use the guard, a pusher or a cut glove.
    .instead =
        Without a guard cut the last piece with a knife on a board. Unplug a machine before you clear it, and use a
        spoon or spatula.
    .instead-2 =
        Open oysters on a folded towel, the point away from the palm, with a knife that is dry and tight in its handle.
    .why = One slip takes a fingertip, and a plugged-in motor can start under your hand.

gas_tamper =
    .verdict = No. Do not alter jets, lay a gas cylinder down or let gas collect before you light it.
    .instead = Gas from the maker's jets for your elevation, fitted by a gas fitter; cylinders upright.
    .instead-2 =
        Match or lighter first, then open the gas. If it did not light, shut it off and air the room for five minutes.
    .why = Too much gas burns with carbon monoxide, liquid gas flares out of the burner, and collected gas explodes.
    .ask = A gas fitter; the emergency line if you smell gas.

fumes_indoors =
    .verdict = No. Do not use fumigation tablets or burn sulfur where people live, sleep or keep open food.
    .instead =
        Freeze grain and flour for four days against insects and store them in tight tins; dry fruit without sulfur, or
        dip it in lemon water.
    .instead-2 = If it has begun, get everybody out and air the place.
    .why = The gas kills people as it kills weevils, and it creeps through walls and lids.
    .ask = The poison line or emergency services for anybody who coughs, is sick or feels weak.

oily_rags =
    .verdict = No. Do not stack, bag or warm oily cloths: they can catch fire by themselves.
    .instead =
        Wash them hot with plenty of detergent, end the dryer on a cool cycle, and let them lie open until they are
        cold.
    .instead-2 = Rags with linseed or other drying oil: spread flat outdoors, or under water in a lidded metal bin.
    .why = Oil on cloth goes on heating as it takes up air, and a pile holds that heat.

green_oven =
    .verdict = No. Do not fire a new or damp masonry oven hard: steam in the walls can burst it.
    .instead =
        Let it dry for a week or more, then light small fires for a week, each a little hotter, until no steam leaves
        the walls.
    .why = Water boils inside the clay before it can get out; up here it does so even sooner.
    .ask = The maker, for its curing fires.

microwave_metal =
    .verdict = No. No foil, metal twist, cutlery or sparking grapes in a microwave.
    .instead =
        Use glass or ceramic made for it and cover with a plate; if it sparks, switch it off and keep the door shut.
    .why = Metal arcs, sets paper alight and ruins the oven.

oxygen_flame =
    .verdict = No. Nobody who breathes oxygen cooks at a flame or comes near one, and no loose sleeves at a hob.
    .instead =
        Somebody else cooks, or the tank is off and well away; keep it ten feet (3 m) from gas, candles and hot fat.
        Cold dishes or a microwave are safer.
    .why = Oxygen soaks into hair and cloth, and a spark is enough.
    .ask = The oxygen supplier, for the rules at home.

opening_cooker =
    .verdict =
        Only if the pin has dropped, nothing hisses from the valve and the lid turns without force: then tilt it away
        from your face.
    .instead =
        Turn the heat off and let the pressure fall by itself for beans, grains, soups and all that foams; release it by
        the valve, hand and face clear of the steam, for vegetables and quick dishes, if the maker's book allows it.
    .instead-2 =
        If the lid will not turn, wait until it is cold; lift the weight to let air in; never a lever, a hammer or a
        blade.
    .why = What is inside is well above its boil here, and goes over into steam all at once while there is pressure.
    .ask = The maker of the cooker, if it will not open cold.
