# What is said where danger of a family was heard and not which; see kitchen.ftl for the form of this file.
# rule: what is added to the words on a hazard of the family, in case the one that was heard is not all.

general_kitchen =
    .rule =
        Also: nothing closed is heated (tins, jars, bottles); no water, ice or frozen bird in hot oil; no valve weighed
        down or plugged, no lid forced, no pot overfilled or run dry; no charcoal, gas or camp stove in a tent, hut,
        vehicle or closed room (carbon monoxide); hot oil is not left alone; spirits are not distilled at home.
    .caution =
        Nothing closed is heated, no water goes into hot oil, no valve is plugged, no stove or charcoal burns in a closed
        room, and hot oil is not left alone.
    .verdict =
        No. I would not do that: it can burn, burst, poison the air or set the place alight, and no figure of mine would
        make it safe.
    .instead =
        Closed tins, jars and bottles are never heated: open them, and cook the food in an open pot. No water, ice or
        frozen bird goes into hot oil; a pan that burns is covered, heat off, never doused or carried.
    .instead-2 =
        Pressure cookers and canners: the weight and gasket that belong to them, two thirds full at most, half for what
        foams, opened only when the pin is down, never plugged, weighed down, forced, dry or used for frying.
    .instead-3 =
        Charcoal, gas and camp stoves burn outside, never in a tent, hut, vehicle, garage or closed room: carbon
        monoxide has no smell. Nothing hot is left alone.
    .why = Thin air makes water boil cooler; it does not make flames, fat, fumes or pressure any milder.
    .ask = The maker of the tool; the fire service or emergency services if it has happened.

general_water =
    .rule =
        Also: raw or doubtful water is brought to a full rolling boil and kept there for 3 min before anybody drinks it,
        freezes it or eats what was rinsed in it; fuel, metals, salt, algae poisons and chemicals do not boil off: use
        another source.
    .caution =
        Water nobody vouches for is drunk after a full rolling boil of 3 min; fuel, metals, salt and algae do not boil off.
    .verdict = No. I cannot call that water safe as it is.
    .instead =
        Clear it, bring it to a full rolling boil and keep that for 3 min (CDC asks for it above 6,500 ft, 2,000 m), for
        drinking, ice, formula, salad and teeth. Fuel, metals, salt, algae and chemicals do not boil off: use bottled
        water or another source.
    .why = Germs look like nothing, cold and clear or not; warm is not a boil, and filters for taste stop few of them.
    .ask = The local health office or water utility.

general_people =
    .rule =
        Also: babies get breast milk or formula made by its label with water of { TEMP(158) } or hotter, fresh for each
        feed, never thinned, never animal or plant milk, and no honey under one year; children under four no nuts,
        popcorn or whole grapes; people who are pregnant, old or ill nothing raw, undercooked, unpasteurised or long
        kept; an allergen is not cooked away.
    .caution =
        For somebody small, pregnant, old, ill or allergic: cooked through, pasteurised and fresh, and their doctor has
        the last word.
    .verdict =
        No. I would not give that to somebody small, pregnant, old, ill or allergic; their doctor has the last word.
    .instead =
        Babies: breast milk, or formula made by its label with water of { TEMP(158) } or hotter, fresh for each feed; no
        animal or plant milk, no thinning, no honey, salt or lumps.
    .instead-2 =
        Pregnant, old or ill: everything cooked through and hot, pasteurised, freshly made; no raw egg, fish, meat,
        milk, sprouts or alcohol. Young children: nothing round, hard or sticky that fits a windpipe. Allergy: free of
        it, from a clean pan with clean oil; heat does not destroy it.
    .why = What a healthy adult gets over can be grave for them, and elevation does not change it.
    .ask = Their doctor, midwife or clinic; emergency services for trouble with breathing, swallowing or waking.

general_foods =
    .rule =
        Also: a mushroom, plant, berry or fish that nobody has identified for certain, and food that is mouldy, slimy or
        smells wrong, is not eaten, and no cooking mends it; raw milk is pasteurised; dry beans of the kidney kind are
        boiled hard; lime juice does not cook fish.
    .caution =
        What nobody has identified for certain, or is mouldy, slimy or smells off, is not eaten, and dry beans of the kidney
        kind are boiled hard first.
    .verdict = No. I cannot call that safe to eat as it stands.
    .instead =
        Wild mushrooms, plants and berries: only what an expert has identified in the hand; no boiling, drying or frying
        mends a poisonous one. Mouldy, slimy or off food: discard it.
    .instead-2 =
        Raw fish: frozen for parasites first, or cooked to { TEMP(145) }; lime and salt do not cook it. Dry beans of the
        kidney kind: boiled hard until soft. Raw milk: pasteurised. Shells that stay shut or gape: discarded. Garlic,
        herbs and chillies in oil: cold, four days at most.
    .why =
        The poisons of plants, mushrooms, fish and moulds mostly live through boiling, frying and drying, at any
        elevation.
    .ask = The poison line or emergency services, with what is left of it, if any was eaten.

general_canning =
    .rule =
        Also: jars that bulge, spurt, leak, lost their seal, or had too little pressure, time or acid are discarded
        untasted, however they look; vegetables, meat, fish, beans and soup are canned only in a vented pressure canner
        at the full pressure for your elevation, tomatoes and salsa only with the acid of a tested recipe, nothing in an
        oven, by turning jars over or in an electric cooker; garlic, herbs and vegetables in oil stay cold, four days at
        most.
    .verdict = No. That can hold botulism without a sign, and I give no time or pressure for it.
    .instead =
        Jars already made so, or that bulge, spurt, leak, foam or lost their seal: discard them, untasted; running them
        again days later or frying the food does not mend it.
    .instead-2 =
        New jars: a current tested recipe to the letter. Vegetables, meat, fish, beans and soup go only in a pressure
        canner, vented 10 min, at the full pressure and time for your elevation; tomatoes, salsa and pickles keep their
        acid; no oven, no turning over, no electric cooker, no bigger jar.
    .instead-3 =
        Garlic, herbs, chillies and vegetables in oil, and meat or fish cured, dried or smoked without a tested recipe:
        refrigerated for four days at most, or frozen.
    .why =
        Out of the cold and out of the air botulism grows, its spores live through the boil, and water boils cooler up
        here.
    .ask = Your extension office, for a tested recipe.

general_time_temperature =
    .rule =
        Also: cold food { TEMP(40) } or below, hot food { TEMP(135) } or above, 2 h at most between, or it is discarded;
        in the centre poultry, stuffing and leftovers { TEMP(165) }, ground meat { TEMP(160) }, whole cuts and fish
        { TEMP(145) }, at every elevation; thawed cold, cooked in one go, never from frozen in a slow cooker, not
        overnight in an oven under { TEMP(200) }; a used marinade is boiled.
    .caution =
        Safe readings stay at every elevation: poultry and leftovers { TEMP(165) }, ground meat { TEMP(160) }, whole cuts
        and fish { TEMP(145) }; 2 h at most between { TEMP(40) } and { TEMP(135) }.
    .verdict = No. I cannot call that safe, and a longer boil would not make it so.
    .instead =
        Food that stood between { TEMP(40) } and { TEMP(135) } for more than 2 h is discarded. Cool it from
        { TEMP(135) } to { TEMP(70) } in 2 h and to { TEMP(41) } in 4 h more, in shallow pans or ice; thaw it in the
        refrigerator or cold water; reheat it once, fast, to { TEMP(165) }.
    .instead-2 =
        In the centre, at every elevation: poultry, stuffing and leftovers { TEMP(165) }, ground meat and egg dishes
        { TEMP(160) }, whole cuts and fish { TEMP(145) }. Cook in one go, in an oven at { TEMP(325) } or hotter; nothing
        frozen in a slow cooker; stuff a bird just before the oven; boil a used marinade.
    .why =
        Germs die by temperature and time, and some leave poisons that no heat destroys. Elevation moves none of these
        figures.
    .ask = Your health inspector, where food is sold or served.
