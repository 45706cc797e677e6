label = Smoker, at the grate
headline = Hold the smoker at { $setting } for { $food } at { $place }, as at sea level.
centre-within-reach =
    { $asked } in the centre is within reach of a smoker at { $place }, under the boil of { $boil }.
centre-out-of-reach =
    Do not wait for { $asked } in the centre at { $place }: wet meat stands near the boil, { $boil }.
step = Hold the smoker at { $setting } by a thermometer at the grate.
vents = Open the vents wider than at sea level: the fire gets less air.
cold-smoke =
    Cold smoke does not cook: smoke only cheese and other food that is eaten as it is, keep it cold before and after, and
    cure fish or meat by a tested recipe.
too-cool =
    USDA wants smokers kept between { $low } and { $high }: cooler, meat stays too long in the danger range.

stall-label = The stall
stall-step =
    Expect the stall from { $stall }. Wrap in paper or foil there to end it, or keep a pan of water in the smoker and
    spritz every half hour until the bark has set.
stall-because =
    In the stall the surface dries as fast as the smoker heats it, and the meat stands at the wet bulb of the air around
    it, { $sea } at sea level by common practice.
stall-cooler =
    Air as moist as at sea level has its wet bulb { $cooler } lower at this pressure, so the stall comes that much
    cooler. A spritz and a water pan add moisture, which slows the drying.

size-of-the-piece = The smoker is as hot here as anywhere; the range is the size of the piece.
dries-faster =
    The smoker is as hot as at sea level, but a wet surface dries about { $percent } % faster in this air and cools
    itself doing so, and the fire burns slower. Wrapped early it comes near the short end; unwrapped in a dry smoker near
    the long end.

tender-step = It is tender at about { $tender } in the thickest part, when a probe goes in like butter.
tender-because = Time at that heat turns collagen to gelatin; the number is a guide, the feel decides.
near-boil-step =
    Do not wait for { $tender }: probe from { $probe } on and take it off when the probe goes in like butter.
near-boil-because =
    The smoker's air is well over { $tender }, so bark and dry edges pass it, where no open pot here could. But water
    boils at { $boil }, and meat that is still wet stands near that: the middle may stall again there. It gets tender a
    little cooler, only later.

jerky =
    Heat meat for jerky to { $meat }, poultry to { $poultry }, before drying it: in dry air it cools itself, and dried
    germs stand heat.
thawed =
    Thaw meat first and start it in a smoker that is up to heat, so that it passes 140 °F (60 °C) within 4 h.
