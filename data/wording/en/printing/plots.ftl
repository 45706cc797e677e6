here = { $elevation }

boil = Where water boils
boil-here = { $elevation }: { $temp }
boil-note = Plain water in standard air; weather moves it by about 1 °F (½ °C). Sources: U.S. Standard Atmosphere 1976; IAPWS R7-97.

pressure = How hot it is inside a pressure cooker
pressure-note = Saturated steam at the gauge reading, air driven out. Sources: U.S. Standard Atmosphere 1976; IAPWS R7-97.
gauge = { $psi } psi
open-pot = open pot

time = How much longer a boil or simmer takes than at sea level
time-note = 10 to the power of (boil at sea level − boil here) / z, with z of each food: data/tables/softening_z.csv names its sources.
class-dried-bean = soaked dried beans
class-collagen-cut = braised tough meat
class-root-vegetable = carrots, beets
class-rice = rice
class-starchy-root = potatoes
class-pasta = pasta

recipe = { $title }: what changes
recipe-of = { CAPITAL($style) }
recipe-note = Each bar is the amount here over the amount at { $there }. Style: { $style }.
recipe-as-it-is = Nothing of this recipe changes in amount.

range-note = The bar is the range, the black mark its middle.
range-here = here, { $elevation }
range-sea = at sea level
