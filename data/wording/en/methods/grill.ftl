# $way: direct or indirect

label = Heat at the grate
headline =
    Cook { $food } { $way ->
        [indirect] beside the fire, lid down
       *[direct] over the fire
    } at { $setting } at { $place }, as at sea level.
step =
    Cook { $way ->
        [indirect] beside the fire, lid down
       *[direct] over the fire
    } at { $setting }, by a thermometer at the grate.

time-because =
    Radiant heat browns as anywhere, while the wet middle stays under the boil, { $boil } here, and { $done ->
        [heated] gets hot
       *[softened] softens
    } a little { $pace ->
        [slower] more slowly. USDA guidance allows up to a quarter more time on the grill.
       *[sooner] sooner than at { $baseline }.
    }

fire-step = Open the vents wider, light more charcoal, and give the grill longer to heat up.
fire-because =
    The same breath of air holds { $share } % of its sea-level oxygen, so charcoal burns slower and a gas burner gives
    less heat: the grate takes longer to get hot.

drying-step =
    Oil or marinate the food, turn it often, and pull thick pieces to the cool side to finish covered.
