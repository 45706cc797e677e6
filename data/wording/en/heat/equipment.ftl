mark =
    { $mark ->
        [low] LOW
       *[high] HIGH
    } ({ $psi } psi) { $reached }
# $reached: each mark with what it reaches here; $cooker: the id of the equipment
pressure-marks =
    The marks of a cooker are gauge pressure, on top of the air outside; inside it is { $reached } here. A mark in
    absolute pressure would read about 1 bar (14.7 psi) more at sea level: see its booklet.{ $cooker ->
        [stovetop_pressure_cooker]
            { " " }Rings on the valve stem instead of figures usually mean some 50 kPa (7 psi) and 90 kPa (13 psi).
       *[other] { "" }
    }
no-canner =
    An electric pressure cooker is not a pressure canner, whatever its buttons say: tested processes do not hold in it,
    and above 5,000 ft tested models ran short of heat.

gas =
    A gas burner set for this elevation gives { $less } to { $more } % less heat: the fuel-gas rule takes off 4 % for
    each 1,000 ft, counted from 2,000 ft or from sea level. The boil comes later, not cooler.
gas-step = Use a wider burner, a lid and smaller batches to come back to the boil; heat up longer.
yellow-flame =
    A yellow, lifting or sooty flame makes carbon monoxide: stop using it, open the room, and have a licensed fitter set
    it for this elevation.
electric =
    Induction and electric hobs give their full heat at any elevation. Water comes to its lower boil with { $less } %
    less heat than at sea level; after that the food takes its longer time all the same.

kettle =
    A kettle that feels the steam switches off at the boil anywhere. One that waits for a set temperature above
    { $boil } never gets there and boils on.
kettle-step = Set a variable kettle to { $below } or less, and do not leave it alone.
espresso =
    The pump gauge reads above the air outside, so 9 bar stays 9 bar. The steam boiler is set by gauge too: at 1.1 bar
    it holds { $here } here, against { $sea } at sea level, so steam is a little weaker.
espresso-flashes = Brew water over the local boil flashes to steam as it leaves the group.
espresso-step = Set brew water to { $water } or less and grind a touch finer.

circulator =
    A circulator holds the temperature it is set to, so nothing changes up to { $ceiling } here; above that the bath
    boils before it gets there.
circulator-step = Cover the bath: thin, dry air takes water away faster, and a low bath stops the pump.
slow-cooker = A slow cooker on HIGH ends at the local simmer, which is cooler here.
slow-cooker-hold =
    The advice to keep it at { $hold } cannot be met, since water boils at { $boil } here: a steady simmer is the most
    there is.
slow-cooker-step =
    Start on HIGH for the first hour, then HIGH or LOW; check the food with a thermometer before serving.
rice-cooker =
    A rice cooker switches off when the pan runs dry and its heat climbs, which comes too soon for cooler-boiling rice.
rice-cooker-step =
    Add a few spoonfuls more water to each cup of rice, and leave it closed on warm for 10 min more.

fan-oven =
    A fan moves the same volume of air, but it weighs { $less } % less here and hands over less heat; the oven's
    thermostat reads true all the same. Fan settings stay 25 °F (15 °C) under still ones, as at sea level.
fan-oven-step = Give the oven its full preheat, and load it less full.
still-oven =
    A still or deck oven heats mostly by radiation, which thin air does not touch; its thermostat reads true. It is the
    food that dries sooner.
steam-oven = Steam without pressure stops at the local boil, { $boil } here, whatever the display says.
steam-oven-step =
    Have the maker's altitude setting entered or run its calibration, and lengthen the steaming times.
pressure-steamer = At { $gauge } the steam is { $here } here, against { $sea } at sea level.
steam-kettle =
    Only the jacket of a steam kettle is under pressure; the food in it boils at { $boil } like in any pot.

fire = The air holds { $share } % of its sea-level oxygen here, so charcoal and wood burn slower and cooler.
fire-step = Open the vents wider, light more fuel than at home, and go by the thermometer at the grate.
camp-stove = A camp stove gives less heat in thin air and, on a canister, less again when it is cold.
camp-stove-step = Use a windscreen that leaves the canister free, a lid, and a wide pot.
camp-stove-outdoors = Never cook on it inside a tent or a closed room.

steam-table =
    The water of a steam table stops at { $boil } here. Holding temperatures are still within reach; heat-up is slower.
steam-table-step = Put food in hot: a steam table holds heat and does not reheat.
blast-chiller = The fan of a blast chiller moves { $less } % less air by weight here, so chilling takes longer.
blast-chiller-step = Load it lighter and shallower, and let the probe, not the timer, end the cycle.
