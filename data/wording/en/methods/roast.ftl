oven-because =
    An oven is as hot as its thermostat says at any elevation, and extension advice leaves it alone: sea-level
    instructions hold.
softens =
    The outside browns as anywhere; the wet middle stays under the boil, { $boil } here, and softens { $pace ->
        [slower] more slowly
       *[sooner] sooner
    } than at { $baseline }, so the range runs to the { $pace ->
        [slower] longer
       *[sooner] shorter
    } side.
heated-through =
    The centre has to reach { $core }. While the surface is wet it stays at or under the boil, { $boil } here. Wet to the
    end it takes { $pace }; a surface that dries early evens that out.

usda-label = With the quarter more that USDA advises
published =
    Published advice differs. Colorado extension leaves oven roasts as at sea level; USDA adds one quarter to the time at
    325 °F (162 °C), which makes { $usda } here. The thermometer settles it.

thermometer = Keep the probe clear of bone, and take it out by the thermometer, not by the clock.
baste = Baste it, tent it with foil once it is brown, and rest it covered: it dries sooner here.

tough-step = Roast it low and go on until a fork twists in it; cover it when it is brown.
tough-reach =
    Its wet middle stops near the boil, { $boil } here, so do not wait for { $tender }: go by the fork.
tough-note = A tough cut comes out moister braised than roasted, above all in dry air.

roots-step = Cut roots smaller than usual, and cover the pan for the first half so that they steam soft.
# $cooler: in degrees Fahrenheit
roots-because = Inside, a root is cooked by its own water, which boils { $cooler } °F cooler than at sea level.
