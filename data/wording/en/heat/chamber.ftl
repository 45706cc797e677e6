# $what: the chamber, as tables/chamber_limits names it

marks = Cook on LOW or HIGH, never on WARM.
marks-instead = cook on LOW or HIGH, never on WARM
set-instead = set the { $what } to { $setting } or hotter
safe-finish =
    take the centre to { $core }{ $rests ->
        [yes] { " " }and rest it { $rest } min
       *[no] { "" }
    }

danger =
    Raw meat and poultry in { $what ->
        [oven] an
       *[other] a
    } { $what } under { $least } spend hours between 40 and 140 °F (4 and 60 °C), where germs grow, and some leave a
    poison that no later heat destroys.
raw-meat = raw meat
least-setting = The { $what }, at the least
# $instead: what to set; $finish: to what to take the centre
refused =
    No. Never cook { $food } in { $what ->
        [oven] an
       *[other] a
    } { $what } at { $asked }: { $instead }, and { $finish }.
refused-because = The time in the danger range counts, and that is the same at every elevation.
for-the-centre =
    { $asked } is for the centre{ $holds ->
        [yes] , and safe once held there { $held }
       *[no] { "" }
    }, never for the { $what }.
cooler-than-asked =
    USDA asks for an oven of { $setting } or hotter for meat. Cooler is for whole cuts only, never for anything minced
    or stuffed.
