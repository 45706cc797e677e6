dark-label = To dark chocolate
headline =
    The same timing at any elevation: roux browns in fat, far over the boil. About { $blond } to blond, { $nut } to peanut
    butter, { $dark } to dark chocolate, over a medium flame, stirred all the while.
by-colour = Go by colour and smell, not by the clock; a black fleck means that it is burnt, and it is begun again.
then-liquid = What comes after, once stock is in it, boils cooler and does take longer: the simmer, the meat, the taste of flour.
sticks = It is hotter than boiling water and sticks: a long spoon, a deep pot, and the stock in slowly.
because = Fat has no water to boil off, so thin air does not cool it.
