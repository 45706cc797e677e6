at = { $elevation }
boils = Water boils at { $temp }
curve = Where water boils

section-water = Water here
row-boil = A rolling boil
row-simmer = A simmer
row-poach = Poaching eggs
row-gel-point = Jam sets

section-times = How long here, and at sea level
row-braise = Braise short ribs
row-beans = Soaked pinto beans
row-potatoes = Boil potatoes
row-pasta = Boil penne
row-rice = White rice
row-greens = Steam broccoli
row-eggs = Hard-boiled eggs

section-pressure = Pressure cooker
row-inside-15 = Inside at 15 psi
row-inside-10 = Inside at 10 psi
row-gauge-15 = To match sea level's 15 psi
row-longer = Time under pressure

section-sugar = Boiled sugar
row-thread = Thread
row-soft-ball = Soft ball
row-firm-ball = Firm ball
row-hard-ball = Hard ball
row-soft-crack = Soft crack
row-hard-crack = Hard crack
row-caramel = Caramel

section-frying = Hot fat
row-doughnuts = Doughnuts
row-fries = Potatoes
row-chicken = Chicken

section-baking = Cakes and bread
row-leavening = Baking powder, soda
row-sugar = Sugar
row-liquid = Liquid
row-oven = Oven
row-time = Baking time
row-yeast = Yeast in bread

section-unchanged = The same at every elevation
row-poultry = Poultry, at its thickest
row-ground = Minced meat
row-cuts = Whole cuts, then rest 3 min
row-hold = Keep hot at or above
row-reheat = Reheat to
row-cold = Keep cold at or below

more = { $percent } % more
less = { $percent } % less
as-it-is = as it is
hotter = { $shift } hotter
foot = Sources: { $sources }. Test one change at a time. For jars go by a tested recipe and its table for your elevation.
