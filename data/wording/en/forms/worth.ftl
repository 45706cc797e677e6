for-dish = { $pays ->
        [yes] about { $quick } under pressure at { $place }, against { $slow } for { $doing }.
       *[no] it is only about { $slow } for { $doing } at { $place } as it is, and { $quick } under pressure.
    }
for-any = { $high ->
        [yes] at { $place } dried beans take about { $beans } under pressure, against { $slow_beans } in an open pot, and a tough cut { $cut }, against { $slow_cut }. Pasta, rice, eggs and vegetables do well without.
       *[no] { $place } alone does not ask for one. It saves time anywhere: dried beans take about { $beans } in it, against { $slow_beans }, a tough cut { $cut }, against { $slow_cut }.
    }
thing = { $about ->
        [thermometer] Yes, a cheap one: at { $place } everything that is read against the boil stands { $drop } lower, sugar, bread and jam above all, and the clock tells less than at sea level.
        [stove] No: at { $place } a stronger burner brings a pot to the boil sooner, but the boil stays { $drop } cooler, so the food takes as long.
        [oven] No: an oven is as hot as it is set at { $place } as anywhere; check it with an oven thermometer.
        [rice-cooker] No: at { $place } a rice cooker boils { $drop } cooler too. Give it more water and 10 to 15 min on warm; a pressure cooker is what helps.
        [slow-cooker] No: at { $place } a slow cooker simmers { $drop } cooler and takes longer still; a pressure cooker is what helps.
        [canner] Yes, for vegetables, beans, meat and all else that is low in acid: nothing else makes their jars safe, at { $place } as anywhere, and a pressure cooker does not stand in for it. Fruit, jam and pickles need only a deep pot.
        [flour] No: at { $place } the flour you have does; a spoon or two more of it to the cup, or bread flour, steadies a batter that falls.
        [circulator] Not for the elevation: a bath under the boil cooks at { $place } as anywhere.
       *[kettle] No: at { $place } every kettle boils { $drop } cooler.
    }
