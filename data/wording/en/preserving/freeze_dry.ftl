blanch-more-label = More for the elevation
blanch-label = Blanch for
vegetables = vegetables
blanch =
    Blanch { $food } { $way ->
        [longer] { $span } longer
        [up_to] up to { $most } longer
       *[same] no longer
    } at { $place } than the recipe prints.
blanch-for =
    Blanch { $food } for { $time } at { $place }: { $base } { $whose ->
        [own] by the recipe
        [sizes] by the table, small pieces to large,
       *[printed] by the table
    }{ $way ->
        [longer] { " " }and { $span } for the elevation.
        [up_to] { " " }and up to { $most } for the elevation.
       *[same] , and nothing for the elevation.
    }
blanch-in = Plenty of boiling water, small batches, lid on; count from when it boils again.
blanch-cool = Then straight into ice water for as long again, drain well, and freeze.
blanch-because =
    Blanching stops enzymes, and water boils at { $boil } here. Printed rules differ: a minute more from 5,000 ft up, or
    half a minute for each 1,000 ft above 2,000 ft.

dry-label = Dry at
meat-label = Meat first to
poultry-label = Poultry first to
dry =
    Dry { $food } at about { $temperature } here as anywhere, and start checking early: thin, dry air takes
    water off sooner.
sun =
    In the sun { $food } take about 3 to 5 days of heat, halves and whole fruit up to a week, less in thin, dry air and strong
    sun than in the plains; bring them under cover every night.
sun-racks =
    Lay the pieces cut side up, not touching, on clean racks off the roof, under netting against flies; turn them once the top
    has dried. Days of { TEMP(86) } and air under 60 % humidity dry safely; on cooler ones finish them in an oven or dryer at
    { TEMP(140) }.
sun-nights =
    Take them in at dusk, or cover them tight: cold air and dew put back the water that the day took, and frost breaks the
    pieces. Done means leathery, with no wet when a piece is torn.
sun-finish =
    Then heat them at { $finish } for 30 min or freeze them at { $cold } for 48 h, which kills the insects' eggs; keep them loose in
    a closed jar for a week and shake it daily, and dry them more if the glass mists.
sun-because =
    Thin, dry air and a strong sun take water off fast by day; by night it is too cold for any drying, and damp comes back.
sun-acid =
    Only fruit and tomatoes are dried in the sun, since sugar and acid keep them through the slow days; other vegetables and meat
    spoil first.
fruit-and-vegetables = fruit and vegetables
dry-turn =
    Thin slices take about 6 to 12 h, halves and whole fruit a day or more; look from the early end on. Turn and rotate the
    trays; if the outside hardens over a wet centre, go cooler and slower.
dry-keep =
    Cool it, then keep it loose in a closed jar for a week, shaking daily; moisture on the glass means dry it more.
dry-because =
    In thin air water leaves faster and the wet surface stays cooler, so the surface may dry ahead of the centre.
meat-too =
    Meat is another matter: heat it to { $meat }, poultry to { $poultry }, with moist heat before it is dried.
# judged: whether it is asked if jerky is safe
jerky =
    { $judged ->
        [yes]
            Only if the meat was { $first } inside{ $bird ->
                [yes] { "" }
               *[no] { " " }(poultry { $poultry })
            } before it was dried, or the strips get 10 min in an oven at { TEMP(275) } before anyone eats them; at every
            elevation.
       *[no]
            Heat { $bird ->
                [yes] the bird to { $first }
               *[no] the meat to { $first } (poultry { $poultry })
            } inside before it is dried, at every elevation; then dry it at { TEMP(130) } to { TEMP(140) }.
    }
jerky-heat =
    In strips of 1/4 in (6 mm): simmer them in the marinade or steam or roast them until a thermometer in the thickest
    strip shows it, and lay them on the trays hot.
jerky-dry =
    It is done when a cooled strip bends, cracks and does not break. Thin, dry air gets there sooner: start looking early.
jerky-keep =
    Strips dried without that first heat: 10 min in an oven at { TEMP(275) } before anyone eats them. Keep jerky closed and
    cool, 2 weeks on a shelf, longer in the freezer.
jerky-because =
    Wet meat cools itself in dry air, and germs that dry slowly become hardy; a dehydrator alone does not kill them, and less
    so here.

# Raw meat that hangs to dry: biltong, droewors. weighed: whether the cook told what it weighed at the start.
hung = When about half its weight is gone{ $weighed ->
        [yes] : { $food } that started at { $start } is done at { $least } to { $most }, softer at the top end.
       *[no] : weigh { $food } before it hangs; it is done at 45 to 55 % of that, softer at the top end.
    }
hung-cut = Cut the thickest piece through: firm, dark to the middle, no wet, soft or sour centre. If there is one, hang it on.
hung-air =
    Cold, dry, moving air, thin pieces; dry mountain winters are quick, so weigh from the third day. A hard crust on a wet
    core means too fast: slow the air.
hung-because = The weight lost is water, and too little water is left for germs to grow; how long that takes goes by the air.
hung-raw =
    It is raw-cured: salt, vinegar and dry air hold germs down and do not kill them. Not for pregnant people, small
    children, the old or the ill, never of pork, bear or poultry; 10 min in an oven at { TEMP(275) } at the end makes strips
    safe. Slimy, sour or mouldy: discard it.
