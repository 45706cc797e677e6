line = Wind takes heat from flame and pot but does not move the boil, { $boil } { $at }.
paragraph =
    The boil goes by the air pressure alone. { $boils } Wind blows the flame from under the pot and cools its sides, so a small
    stove may never get the water there: a lid and a shield round pot and flame, with air left to burn and the gas canister kept
    cool, do more than a bigger flame.
equations = { $boiling_equation }
belief-lowers-boil =
    Wind can keep a small stove from ever bringing the pot to the boil, but it does not move the boil itself: { $boil } { $at }; put
    the lid on and shield the flame.
