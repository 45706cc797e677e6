here = { $elevation }

boil = Where water boils
boil-here = { $elevation }: { $temp }
boil-at = { $temp } at { $elevation }
# what a plot shows, for those who do not see it; $lines: its figures
boil-told = A curve of where water boils, falling with elevation: { $lines }.
boil-note = Plain water in standard air; weather moves it by about 1 °F (½ °C). Sources: U.S. Standard Atmosphere 1976; IAPWS R7-97.

pressure = How hot it is inside a pressure cooker
pressure-line = { $name }: { $sea } at sea level, { $here } here
pressure-told = Lines of how hot it is inside a pressure cooker, falling with elevation; here is { $elevation }. { $lines }.
pressure-note = Saturated steam at the gauge reading, air driven out. Sources: U.S. Standard Atmosphere 1976; IAPWS R7-97.
gauge = { $psi } psi
open-pot = open pot

time = How much longer a boil or simmer takes than at sea level
time-line = { $name } { $times } times
time-told = Lines of how much longer a boil or simmer takes, rising with elevation. At { $elevation }: { $lines } as long as at sea level.
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
recipe-line =
    { $name } { $share } % { $way ->
        [less] less
       *[more] more
    }
recipe-told = { $title }: { $lines }.
recipe-as-it-is = Nothing of this recipe changes in amount.

range-note = The bar is the range, the black mark its middle.
range-here = here, { $elevation }
range-sea = at sea level
range-told = { $title }, two bars. { CAPITAL($lines) }.

# $span: the range of $time
time-at = { $elevation }: { $time } ({ $span })
dish-note = The line is the middle, the band the range; the mark is your kitchen.
dish-told = { $title }, the time against elevation. { CAPITAL($lines) }.
