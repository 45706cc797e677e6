# What is refused about jars, by the id of its row in data/lexicon/canning_refusals.toml. Those that share their words with a
# hazard stand in dangers/canning.ftl. $food is the food, $canner the canner that was asked for, $place the elevation,
# $limit how long a steam canner runs.
# stop: the caution; verdict: the answer, mostly that caution after a no, and without any time or pressure.

ask = Ask your county extension office whether a tested recipe exists; it costs nothing.
canner = { $vessel ->
    [steam] a steam canner
    [pressure] a pressure canner
   *[boiling_water] a boiling-water canner
}

reused_lids =
    .stop = A flat canning lid seals once.
    .verdict = No. { reused_lids.stop }
    .instead =
        Take new flat lids for every batch; the screw bands and sound jars serve again. Used lids do for the fridge or
        freezer.
    .why =
        The compound under the rim has taken the print of the first jar and may not hold on the next, on the shelf and
        unseen.

thickened =
    .stop = Do not can food that is thickened with flour, starch or roux.
    .verdict = No. { thickened.stop }
    .instead =
        Can it thin by a tested recipe and thicken it when you open the jar. Pie filling takes only the canning starch
        that its tested recipe names.
    .why = A thick jar heats too slowly in the middle, and how slowly changes from batch to batch.

thick_puree =
    .stop = Do not can pumpkin butter, mashed squash or any thick vegetable puree, not even under pressure.
    .verdict = No. { thick_puree.stop }
    .instead = Freeze the puree. Pumpkin and winter squash can be pressure-canned in cubes, by the tested recipe.
    .why = A thick puree lets heat in too slowly and differs from batch to batch, so no safe time could be set.

dairy_canning =
    .stop = Do not can milk, butter, cheese, eggs, flour, pasta or rice at home.
    .verdict = No. { dairy_canning.stop }
    .instead = Can the rest of the dish by a tested recipe and add these when you serve it, or freeze it.
    .why = Fat and starch shield spores and keep heat from the centre; no tested process exists for them.

cake_in_jar =
    .stop = Do not bake and seal bread or cake in jars to keep on a shelf.
    .verdict = No. { cake_in_jar.stop }
    .instead = Bake it, cool it and freeze it.
    .why = A moist crumb sealed off from air is low in acid, and an oven does not get its centre past the boil.

missed_elevation =
    .verdict =
        Discard it, unopened and untasted, if it has stood longer than a day after a process without the elevation,
        sealed or not; within a day process it again or refrigerate it.
    .stop = { missed_elevation.verdict }
    .instead =
        Found out sooner: process it again at once, from the start, food reheated, new lids, by the table for your
        elevation, or refrigerate or freeze it.
    .why =
        Water and steam are cooler up here, so the jars had less heat than was tested; a lid that went down does not
        prove otherwise. The services differ: Utah State allows a day, Iowa State and Nebraska 2 hours; the shorter is
        the safer.
    .ask = Ask your county extension office about a batch in doubt, and say what was in the jars.

unknown =
    .stop = I know no tested process for { $food }.
    .verdict = No. { unknown.stop }
    .instead = Freeze it or keep it refrigerated.
    .why =
        Acid, thickness and fat decide how heat and spores fare in a jar. Without a test for this food there is no safe
        time and no safe pressure, at any elevation.

untested =
    .stop = There is no tested process for canning { $food }.
    .verdict = No. { untested.stop }
    .instead = Freeze it or keep it refrigerated.
    .why =
        Too low in acid, too thick, too fat or too starchy for the heat to reach the centre in a time that anyone has
        tested. Elevation does not change that.

low_acid_fruit =
    .stop = Do not can { $food }: too low in acid for boiling water, and no pressure process has been tested.
    .verdict = No. { low_acid_fruit.stop }
    .instead = Freeze it.
    .why =
        Above pH 4.6 botulism spores can grow in the jar, and they live through boiling water. Sweet and sour to the
        tongue says nothing of it.

group =
    .verdict = No one process fits { $food }: tell me which.
    .stop = { group.verdict }
    .instead = Name it.
    .why = Foods of one name differ in acid and thickness, and each was tested by itself.

needs_pressure =
    .stop = Never can { $food } in boiling water or open steam, at any elevation and for any length of time.
    .verdict = No. Do not can { $food } in { $canner }. It is low in acid and needs a pressure canner.
    .instead =
        Use a pressure canner with a tested recipe for this food and jar: say that you have one and I give its pressure
        here. Or freeze it, or pickle it by a tested recipe.
    .why = Botulism spores live through both; only steam under pressure is hot enough.

no_pressure_process =
    .stop = No pressure process is printed for { $food }; it is canned in boiling water.
    .verdict = No. { no_pressure_process.stop }
    .instead =
        Use a boiling-water canner and the time of a tested recipe: tell me that time, and I give the one for your
        elevation.
    .why = A pressure canner heats and cools on its own course, so a time for boiling water tells nothing about it.

time_not_printed =
    .stop = The time you gave is none that is printed for { $food } in { $canner }.
    .verdict = No. { time_not_printed.stop }
    .instead =
        Read it again in a current tested recipe for this food, jar and canner, in the column for 0–1,000 ft. With that
        time I give the one for your elevation.
    .why = A shorter process was not tested, and a time for another canner, jar or food is never carried over.

steam_too_long =
    .stop = Not in a steam canner: with the addition for { $place } the process is longer than the water in it lasts.
    .verdict = No. { steam_too_long.stop }
    .instead = Use a boiling-water canner, and tell me the time of the tested recipe.
    .why = A steam canner is good for processes up to { $limit }, elevation included, and may not be opened to add water.

jar_too_big =
    .stop = No process is printed for { $food } in a jar that big.
    .verdict = No. { jar_too_big.stop }
    .instead = Use the jars that the tested recipe prints, or smaller ones for the same time.
    .why = A bigger jar takes longer to heat through, and nobody has tested how long. It cannot be worked out from the small one.

too_high =
    .verdict = No printed canning table reaches { $place }, so I have no process to give.
    .stop = { too_high.verdict }
    .instead = Freeze, dry or refrigerate it, or can lower down: the tables end at 10,000 ft (3,048 m).
    .why = Canning times and pressures are read from tested tables and never reckoned beyond them.

jars_of_low_acid =
    .stop = Boiling jars beforehand does nothing for { $food }: only the tested process does.
    .verdict = No. { jars_of_low_acid.stop }
    .instead = Fill clean hot jars. A pressure canner sterilises the jar with the food in it.
    .why = Jars are boiled empty, and only for acid food whose process is very short.
