inside-label = Inside the cooker
gauge-label = Gauge pressure
inside =
    A gauge reads what the cooker adds to the air outside. At { $gauge } the steam inside is { $inside } at { $place },
    { $way ->
        [cooler] { $drop } less than at sea level
       *[same] as at sea level
    }.
inside-maths = T_sat({ $air } + { $gauge } Pa) = { $inside } °C.

# What the beans are called where the time is for beans that were not soaked.
unsoaked = unsoaked { $food }
for-unsoaked =
    The time is for beans that were not soaked; a night's soak takes more than half of it off.
for-soaked = The time is for beans that were soaked overnight; unsoaked they take { $time } here.

rule-of-thumb-label = Published rule of thumb adds
rule-of-thumb =
    The time goes by the published rule, 5 % more for each 1,000 ft above 2,000 ft: { $percent } % here. The range takes in how fast this food softens.

count-from-pressure =
    Bring it to { $gauge } and count the time from there, at the lowest flame that holds it.
set-electric =
    Set it to HIGH for these minutes: it counts from when it is up to pressure, and it runs no hotter, so the minutes are
    all there is to change. Use the release and the liquid of your recipe.
raise-the-gauge =
    Or keep to the time at { $baseline } and run at { $gauge }, if your cooker is made for it.

tested-label = Tested on LOW, after a salted soak
tested-step =
    Electric cooker, tested in Colorado: soak 12 to 24 h in salted water (1½ tbsp to 8 cups, for 1 lb), cook in 6 cups
    of fresh water { $time } at LOW pressure, let the pressure fall by itself for { $release }, then release the rest.
tested =
    The tested time on LOW is far shorter than the time above: the long salted soak softens the skins, and the beans go
    on cooking while the pressure falls.

electric =
    Above 5,000 ft electric pressure cookers that were tested did not always get as hot as they should, and chicken in
    particular needed longer: check meat with a thermometer.
