# What keeps food without a canner.
dry =
    That needs no canning: honey, sugar, salt, dry grains, beans and pasta, and fruit, mushrooms or herbs that are dried right
    through keep in a clean, dry, closed jar, at any elevation.
dry-jar = Fill a dry jar with the dry food, close it tight, and keep it cool and dark.
dry-damp =
    Drops or clumps in the jar tell that it is too damp: dry it again or freeze it. Once soaked or cooked it goes into the
    refrigerator.
dry-why =
    There is too little free water in it for anything to grow. It makes no other food safe: what is put into honey, sugar or
    salt brings its own water along.
dry-honey = No honey for a child under twelve months.

freeze =
    { $named ->
        [yes] Yes, freeze { $food }
       *[no] Yes, freeze it
    }: the cold stops what a canner would have to kill, and a freezer works the same at any elevation.
freeze-blanch =
    { $placed ->
        [yes] Blanch { $food } for { $time } at { $place }, counted from when the water boils again, then cool as long in ice water.
       *[no] Blanch { $food } for { $time }, longer up high: tell me your elevation. Then cool as long in ice water.
    }
freeze-pack =
    Cool it fast, drain it, pack it flat without air, label it, and freeze it at { TEMP(0) } or colder.
freeze-later = Best within a year; thaw it in the refrigerator, and cook it as fresh.
freeze-why = Nothing grows in the freezer, but nothing dies there: after thawing it spoils like fresh food.

pickle =
    Yes, pickled: { $food } in the vinegar of a tested recipe, 5 % acid, may go into a boiling-water canner. Plain it may not.
pickle-vinegar =
    Take a tested pickle recipe to the letter: vinegar of 5 %, as much as it says, never thinned and never less of it.
pickle-shelf =
    Shelf: process it in boiling water{ $placed ->
        [yes] ; a recipe that prints { $base } min for 0–1,000 ft takes { $due } min at { $place }.
       *[no] {" "}for the time that the recipe prints for your elevation.
    }
pickle-cold = Refrigerator: under full vinegar at { TEMP(40) } or colder it needs no canner at all.
pickle-plain = Pickled is not plain: without the vinegar of the recipe { $food } is never canned in boiling water.
pickle-why = Botulism does not grow in enough acid, so there the boil only has to kill moulds and yeasts.
pickle-none =
    No: for { $food } I know no tested pickle that stands on a shelf. Vegetables and fruit have them; eggs and meat in vinegar
    stay in the refrigerator.
