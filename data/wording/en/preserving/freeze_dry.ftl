blanch-more-label = More for the elevation
blanch-label = Blanch for
vegetables = vegetables
blanch =
    Blanch { $food } { $way ->
        [longer] { $span } longer
        [up_to] up to { $most } longer
       *[same] no longer
    } at { $place } than the recipe prints.
blanch-in = Plenty of boiling water, small batches, lid on; count from when it boils again.
blanch-cool = Then straight into ice water for as long again, drain well, and freeze.
blanch-because =
    Blanching stops enzymes, and water boils at { $boil } here. Printed rules differ: a minute more from 5,000 ft up, or
    half a minute for each 1,000 ft above 2,000 ft.

dry-label = Dry at
meat-label = Meat first to
poultry-label = Poultry first to
dry =
    Dry fruit and vegetables at about { $temperature } here as anywhere, and start checking early: thin, dry air takes
    water off sooner.
dry-turn = Turn and rotate the trays; if the outside hardens over a wet centre, go cooler and slower.
dry-keep =
    Cool it, then keep it loose in a closed jar for a week, shaking daily; moisture on the glass means dry it more.
dry-because =
    In thin air water leaves faster and the wet surface stays cooler, so the surface may dry ahead of the centre.
jerky =
    Jerky: heat the meat to { $meat }, poultry to { $poultry }, with moist heat before it is dried. Drying air alone cools
    wet meat and does not kill germs, and less so here. Follow a tested recipe.
