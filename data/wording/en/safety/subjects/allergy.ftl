# A guest with an allergy. $id is that of an allergen, by data/lexicon/allergens.toml.
what =
    { $id ->
        [peanut] peanuts
        [nut] nuts
        [gluten] gluten
        [milk] milk
        [egg] egg
        [shellfish] shellfish
        [fish] fish
        [soy] soy
        [sesame] sesame
       *[any] what they are allergic to
    }

holds =
    For the guest who must not have { $what }: as a rule it is in { $foods }. Leave that off the plate, or make that
    guest's own without it and apart.{ $others }
others = {" "}It may be in { $foods } too.
no-others = {""}
may-hold =
    For the guest who must not have { $what }: it may be in { $foods }, by the recipe and the labels. Check each, or make that
    guest's own apart.
none-known =
    For the guest who must not have { $what }: as a rule it is not in { $foods }. Keep it so: read each label, and cook it
    apart from what holds it.
none-named =
    For the guest who must not have { $what }: none of it on that plate, and nothing that has touched it. Tell me the dishes,
    and I say which hold it.

apart =
    Cook that guest's food first and apart: clean hands, board, knife, pan and spoon, fresh oil and fresh water, its own dish
    to serve from, and the sauce or topping that holds it on the other side of the table.
hides =
    { $id ->
        [peanut] It hides in satay and mole, in peanut (groundnut) oil, spice mixes, cereal bars, sweets, and fryers used for both.
        [nut] They hide in pesto, praline, marzipan, korma, granola, almond flour, nut oils and milks, and in chocolate.
        [gluten] It hides in soy sauce, stock cubes, gravy, roux, sausages, breadcrumbs, beer and oats, in shared fryers and pasta water.
        [milk] It hides in butter, ghee, cream, whey, mash, bread, sausages, stock cubes and chocolate; goat's milk is no way out.
        [egg] It hides in mayonnaise, fresh pasta, batter, breadcrumbs, glazes, meatballs, ice cream and meringue.
        [shellfish] It hides in fish sauce, oyster sauce, shrimp paste, stock, crackers and in the oil that fried it.
        [fish] It hides in Worcestershire sauce, anchovies, fish sauce, stock and Caesar dressing.
        [soy] It hides in soy sauce, miso, tofu, stock cubes, bread, chocolate and many ready sauces.
       *[sesame] It hides in tahini, hummus, halva, breads and crackers, sesame oil and spice mixes.
    }
labels = Read the label of all that goes in, every time, and label the dishes and their spoons.
unsure = If you cannot be sure of it, tell the guest before you serve, and do not serve it.
because = A trace is enough for a reaction; no heat, at any elevation, destroys it, and picking it out or wiping does not remove it.
reaction = Swelling, wheezing, faintness: the guest's adrenaline pen and emergency services at once.
