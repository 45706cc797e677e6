# What a kind of food is called, by its id in data/tables/lethality_kinds_common-practice.csv; held: what of it is held at a
# temperature.

poultry = poultry
    .held = poultry
ground_meat = ground meat
    .held = minced or tenderised meat
whole_cut = whole cuts of meat
    .held = a whole roast
pork = whole cuts of pork
    .held = a whole roast
raw_ham = ham and bacon
    .held = a whole roast
fish = fish
    .held = fish
egg = eggs
    .held = eggs in the shell
egg_dish = egg dishes
    .held = egg dishes
game = game
    .held = game
wild_game = wild boar and bear
    .held = wild boar and bear
leftover = leftovers and casseroles
    .held = leftovers and casseroles
stuffing = stuffed food
    .held = stuffed food
