refrigerator-label = In the refrigerator
water-label = In cold water
frozen-food = frozen food
times-by-weight = a day for each 4 to 5 lb (2 kg) in the refrigerator, or 30 min a pound (1 h a kilo) in cold water
times = { $span } in the refrigerator, or { $wet } in cold water
headline = Thaw { $food } cold: { $times }. Elevation does not change it.
in-refrigerator = Refrigerator: in a tray on the lowest shelf. It may be refrozen.
in-water = Cold water: in a sealed bag under water changed every 30 min, then cooked at once.
in-microwave = Microwave: then cooked at once. Or cook from frozen and allow half as long again.
because =
    Ice melts at 32 °F (0 °C) at every elevation, and the outside must stay cold until the centre has thawed.
never-warm =
    Never thaw on the counter or in warm water: the outside is warm for hours before the centre has thawed.
