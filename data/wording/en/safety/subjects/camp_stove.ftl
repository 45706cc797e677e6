headline =
    Any camp stove burns at { $place }; it is the cold and the wind that decide. Above freezing a gas canister is the simplest;
    well under it take a liquid-fuel stove (white gas, kerosene). Water boils at { $boil } on all of them.
gas = Gas: isobutane with propane, not plain butane, which stops near 32 °F (0 °C). Under 14 °F (-10 °C) keep the canister warm in the bag at night, or turn a remote one upside down where its stove is made for that.
liquid = White gas or kerosene: gives its heat at any cold and is sold everywhere; it soots and has to be primed, in the open.
spirit = Spirit (alcohol): light and quiet, and about half as strong, so it is for a cup and not for snow.
try = Thin air takes some heat off every flame: turn it down where it burns yellow, and reckon more time. Try it at home with the fuel you will buy there.
why = The canister itself gains a little from thin air, since less presses back on it; what it loses is to the cold, which lowers the pressure of the gas.
fumes = Never burn a stove in a closed tent, van or room: carbon monoxide has no smell. Open it high and low.
