pan-and-oil = Pan and oil
pan = Pan, by surface thermometer
pan-headline =
    Heat the pan to { $setting }{ $named ->
        [yes] {" "}for { $food }
       *[no] { "" }
    } at { $place }, as at sea level.
pan-step =
    Heat the pan before the fat and the fat before the food{ $wet ->
        [yes] ; pat the food dry, so that it browns at once
       *[no] { "" }
    }.
pan-because =
    A pan is as hot as the burner makes it, and browning goes by that heat, so a film of fat needs no change. Only deep
    fat has a published rule, which turns it down.

deep-fat = Deep fat
deep-fat-headline =
    Hold the fat at { $setting }{ $named ->
        [yes] {" "}for { $food }
       *[no] { "" }
    } at { $place }, { $way ->
        [down] against { $usual } at sea level
       *[same] as at sea level
    }.
deep-fat-step = Hold the fat at { $setting } by thermometer.
twice-headline =
    First fat { $first }, second { $second } for { $food } at { $place }, against { $was_first } and { $was_second } at
    { $baseline }.
twice-step =
    { $hotter ->
        [second] Blanch in fat of { $first }, by thermometer, until soft and pale; drain and cool. Finish at { $second } until
            brown.
       *[first] Begin in fat of { $first }, by thermometer, until it colours; finish at { $second } until done in the middle.
    }
batches = Let it come back between batches, and keep them small: wet food brings the fat down and boils up.
first-piece = Fry one dry piece first and cut it open: brown outside and raw inside, the fat is still too hot.
turned-down =
    Published advice turns deep fat down about 3 °F (1.7 °C) for every 1,000 ft (305 m), { $lower } here, and fries
    longer. The water in the food boils away at { $boil } and keeps the middle at that, while the crust browns at the old
    pace: hotter fat would burn the outside first.
no-change = At this elevation the fat needs no change.

# $done: how the middle gets done, heated or softened
by-eye = It is done by the heat of the pan, well before the boil counts: go by eye.
longer =
    Until it is dry the middle cannot pass the boil, so it { $done ->
        [heated] gets hot through
       *[softened] softens
    } a little more slowly: { $longer ->
        [more] about { $percent } % longer
       *[hardly] hardly longer
    }, reckoned by heat. The published rule says only to fry longer; colour and a cut piece decide.
sooner =
    The boil is hotter here than at { $baseline }, so the middle { $done ->
        [heated] gets hot through
       *[softened] softens
    } a little sooner.

smoke-point =
    The smoke point belongs to the oil and does not move with elevation that a cook would see. Moisture does: it boils
    off at { $boil } and takes more room as steam, so a full kettle foams higher than at sea level. Leave more headroom.

keep-a-lid = Keep a lid beside the pan and smother burning fat with it; never throw water on it.
hot-fat =
    Never fill a kettle past half, never leave it, and keep water and wet food away from hot fat. If it smokes, turn it
    off; if it burns, put the lid on and the heat off, never water.
whole-bird =
    Fry a whole bird outdoors only, on level ground away from walls, fully thawed and dry: a frozen or wet bird throws
    burning fat.
