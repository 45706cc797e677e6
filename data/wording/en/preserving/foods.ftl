# What the tested process of a food asks of it before it goes into the jar, and what to do instead where it has none. By the
# ids that stand in data/tables/canning_foods_usda-aib-539.csv.

demands-apples = Peeled, sliced and boiled before they go into the jar.
demands-berries =
    Blackberries, blueberries, currants, gooseberries, huckleberries or raspberries. No elderberries, which are too low
    in acid, and no strawberries, which go soft and grey.
demands-nectarines = Yellow-fleshed fruit only. White peaches and white nectarines are too low in acid: freeze those.
demands-pears = European pears, peeled. Asian pears are lower in acid and need bottled lemon juice.
demands-pie-filling =
    One of the guide's own fillings: apple, blueberry, cherry, peach, green tomato or mincemeat. Thickened only with the
    canning starch its recipe names, never with flour or cornstarch.
demands-asian-pears = In every jar bottled lemon juice, 2 tbsp to a quart, 1 tbsp to a pint.
demands-figs =
    In every jar bottled lemon juice, 2 tbsp to a quart, 1 tbsp to a pint, or citric acid, ½ tsp to a quart, ¼ tsp to a
    pint.
demands-lemon-curd = Half-pints only, by the tested recipe for canned curd, with bottled lemon juice.
demands-tomatoes =
    Acid in every jar of tomatoes: 2 tbsp bottled lemon juice or ½ tsp citric acid to a quart, 1 tbsp or ¼ tsp to a
    pint. Bottled, since fresh lemons vary. It goes in with a pressure canner too.
demands-tomatillos =
    Acid in every jar of tomatillos: 2 tbsp bottled lemon juice or ½ tsp citric acid to a quart, 1 tbsp or ¼ tsp to a
    pint. Bottled, since fresh lemons vary. It goes in with a pressure canner too.
demands-salsa =
    By one tested salsa recipe, whole: no more peppers, onions or garlic than it prints, no other tomatoes, no
    thickening.
demands-salsa-verde =
    By one tested salsa recipe, whole: no more peppers, onions or garlic than it prints, no thickening.
demands-giardiniera =
    By the guide's recipe for pickled mixed vegetables, no more vegetables to the vinegar than it prints.
demands-fermented-pickles = Weigh the salt as the tested recipe has it, and can it only once it has soured through.
demands-jam =
    Of the fruit, sugar and acid that its tested recipe names; no elderberries, white peaches, bananas, pumpkin or
    bacon, and figs or peppers only with the acid of their own recipe.
demands-butter-beans = Fresh and shelled, or dried and fully rehydrated; each has its own time.
demands-beets = Boiled until the skins slip, peeled.
demands-carrots = Peeled, sliced or diced.
demands-corn-on-the-cob = Whole kernels, cut from the cob.
demands-creamed-corn =
    Cream style means corn scraped from the cob, with water: no cream, butter or flour. Pints at most, never quarts.
demands-mushrooms = Bought, cultivated mushrooms only, never wild ones. Half-pints and pints, never quarts.
demands-peas = Green peas out of the pod. Sugar snap and snow peas are frozen instead.
demands-anaheim-chiles = Peeled where the skin is tough. Half-pints and pints, never quarts.
demands-sweet-potatoes = In pieces or whole, never mashed, always packed wet.
demands-potatoes = Peeled, in cubes or small and whole, never mashed.
demands-acorn-squash = In peeled cubes, never mashed or pureed.
demands-spinach = Freshly picked, wilted first and packed loosely, in water: no cream, butter or bacon.
demands-succotash = Corn and lima beans, with or without tomatoes: no cream, butter or flour.
demands-dried-beans = Soaked and boiled first, as the recipe has it, so that they are fully rehydrated.
demands-soup =
    No noodles, pasta, rice, flour, cream or milk in the jar, and dried beans and peas fully rehydrated first: they keep
    the heat out. Half solids, half liquid. Thicken it when you serve it.
demands-bean-soup =
    No noodles, pasta, rice, flour, cream or milk in the jar, and dried beans and peas fully rehydrated first: they keep
    the heat out. Beans whole, not mashed. Half solids, half liquid. Thicken it when you serve it.
demands-marinara =
    By the guide's recipe for spaghetti sauce: no more onions, peppers or mushrooms than it prints. The vegetables in it
    bar boiling water.
demands-meat-sauce = By the guide's recipe for spaghetti sauce with meat, nothing added, no thickening.
demands-beef-stock = Of beef, chicken or turkey bones, strained, the fat taken off, nothing in it.
demands-chili = By the guide's chile con carne, with ground meat and rehydrated beans. Pints at most, never quarts.
demands-beef = In strips, cubes or chunks, without bones, the fat trimmed off; no flour and no thickening.
demands-ground-beef = Browned first, loose or as plain patties, the fat taken off: no bread, egg, flour or sauce in it.
demands-sausages =
    Freshly made, seasoned with salt and cayenne, browned first; no sage, which turns bitter, no filler and nothing
    smoked.
demands-chicken = In pieces, with or without bones, the fat trimmed off; no breading and no sauce.
demands-clams = Shelled, cleaned and boiled with lemon juice or citric acid. Half-pints and pints, never quarts.
demands-crab =
    King or Dungeness crab: meat only, cooked and soaked in lemon juice or vinegar brine. Half-pints and pints, never
    quarts.
demands-oysters = Shelled. Half-pints and pints, never quarts.
demands-shrimp = Cooked in salted, sour water and peeled. Half-pints and pints, never quarts.
demands-salmon = Cleaned and cut to the jar, without liquid. Pints, or quarts only by the guide's own quart table.
demands-tuna = Half-pints and pints, never quarts.

instead-white-peaches = Freeze them; can the yellow-fleshed kind.
instead-elderberries =
    Freeze or dry them, and cook them before anyone eats them. Blue elderberries of the West are acid enough; ask before
    you trust a bush.
instead-freeze-them = Freeze them.
instead-melons = Freeze the flesh, or pickle cantaloupe or watermelon rind by a tested recipe.
instead-freeze-it = Freeze it.
instead-freeze-the-pulp-or-dry-them = Freeze the pulp, or dry them.
instead-mangoes = Freeze ripe mango; green mango has tested recipes for sauce and chutney.
instead-freeze-it-or-dry-it = Freeze it, or dry it.
instead-freeze-it-mashed-with-lemon-juice = Freeze it mashed with lemon juice.
instead-fruit =
    Name the fruit. Most go in boiling water; figs, Asian pears and tomatoes want added acid; white peaches,
    elderberries, bananas, melons and papaya are frozen instead.
instead-fruit-juice = Name the juice; apple and grape juice have tested processes.
instead-vegetables =
    Name the vegetable. Those that can be canned go in a pressure canner, never in boiling water, unless they are
    pickled.
instead-fish =
    Name the fish. Salmon, trout, steelhead, mackerel, bluefish and tuna have tested pressure processes; freeze the
    others.
instead-fruit-butter = Name the fruit; apple, pear and peach butter have tested recipes, and pumpkin butter has none.
instead-beef-jerky = Keep it dry in a closed jar, or freeze it: ask how it is dried.
instead-strawberries = Make jam of them, or freeze them.
instead-artichokes = Freeze the hearts, or keep them refrigerated in their marinade.
instead-broccoli = Freeze it, or pickle it by a tested recipe.
instead-brussels-sprouts = Freeze them, or pickle them by a tested recipe.
instead-cabbage = Make sauerkraut by a tested recipe, or freeze it.
instead-celery = Freeze it; it is canned only as a part of a tested soup or vegetable juice.
instead-freeze-it-cooked = Freeze it cooked.
instead-garlic = Dry it or freeze it, never in oil on a shelf.
instead-eat-it-fresh = Eat it fresh.
instead-cured-olives = Keep them in the fridge, in the brine they were cured in.
instead-rutabagas = Freeze them, or keep them in a cold cellar.
instead-zucchini = Pickle it by a tested recipe, or freeze it.
instead-pumpkin-puree = Freeze it; can pumpkin and squash only in cubes, in a pressure canner.
instead-refried-beans = Can whole beans in a pressure canner and mash them later, or freeze.
instead-hummus = Can whole chickpeas in a pressure canner, or keep it refrigerated.
instead-tomato-soup = Can the tomatoes or their juice by a tested recipe and make the soup when you open the jar.
instead-chicken-noodle-soup = Can chicken soup without noodles in a pressure canner and boil the noodles fresh.
instead-cream-soup = Can the soup without milk or flour and thicken it when you serve it.
instead-clam-chowder = Can the clams and broth by a tested recipe and finish with milk when you serve it.
instead-squash-soup = Can the squash in cubes in a pressure canner and puree it when you open the jar.
instead-pickled-eggs = Keep them refrigerated and use them within the recipe's days.
instead-quick-pickles = Keep them refrigerated, as their recipe says.
instead-keep-it-refrigerated = Keep it refrigerated.
instead-garlic-in-oil = Freeze it, or keep it refrigerated and use it within four days.
instead-meatloaf = Freeze it; plain ground meat is canned in a pressure canner.
instead-meatballs = Freeze them; plain ground meat is canned in a pressure canner.
instead-keep-it-refrigerated-or-freeze-it = Keep it refrigerated or freeze it.
instead-pumpkin-pie-filling = Can pumpkin in cubes in a pressure canner and make the filling when you open the jar.
instead-freeze-it-in-small-portions = Freeze it in small portions.
instead-freeze-it-or-keep-it-refrigerated = Freeze it, or keep it refrigerated.
instead-keep-them-refrigerated-pickled-or-not = Keep them refrigerated, pickled or not.
instead-pasta = Can the sauce by a tested recipe and boil the pasta fresh.
instead-noodle = Can the broth and boil the noodles fresh.
instead-rice = Can the broth and cook the rice fresh.
instead-custard = Keep it refrigerated. A water bath in the oven is another thing: ask how long to bake it.
instead-whole-grain = Cook the grain fresh or freeze it cooked.
instead-cook-it-fresh = Cook it fresh.
instead-bake-it-and-freeze-it = Bake it and freeze it.
instead-infant-formula = Make it fresh for each feed, by its label.
