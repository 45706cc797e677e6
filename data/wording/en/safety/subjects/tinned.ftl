label = Hot to
large-label = A no. 10 can, 6 lb (3 kg)
food = food
headline =
    Only heat it through: what comes from a can ({ $food }) is cooked already, so elevation hardly matters. About { $small } for a 15 oz
    (400 g) can and { $large } for a no. 10 can in a wide pot, stirred, to { $hot } or more.
wide = Empty the cans into a wide pot with their liquid or some stock, over medium heat, and stir to the bottom.
several = Several large cans in one deep pot take 30 to 60 min: use two wide pots, or trays under foil in the oven.
boiled = Where it goes into a stew, put it in for the last 15 min: it only has to take up the taste.
after = What was opened before, or has cooled, is heated to { TEMP(165) }.
because = It was cooked in the sealed can, far over the boil, so it needs no softening here.
bulging = Throw out, untasted, a can that bulges, leaks, spurts when it is opened, or is dented at a seam.
