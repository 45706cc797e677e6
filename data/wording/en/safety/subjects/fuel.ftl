# How much fuel. $open, $cooker, $boiled: `way`, of an open pot, a pressure cooker, and water that only boils
way =
    { $way ->
        [more] about { $percent } % more
        [times] about { $times } times as much
        [less] about { $percent } % less
       *[same] about as much
    }
# the same with what it is held against
full =
    { $way ->
        [more] about { $percent } % more gas than at { $baseline }
        [times] about { $times } times as much gas as at { $baseline }
        [less] about { $percent } % less gas than at { $baseline }
       *[same] about as much gas as at { $baseline }
    }
a-meal = a meal
against =
    { $verdict ->
        [yes] Yes.{ " " }
        [no] No.{ " " }
       *[none] { "" }
    }{ $told ->
        [only-boiled] At { $place } water that is only brought to the boil takes { $first };
            a meal that simmers takes { $open }, in a pressure cooker { $cooker }.
        [saved] At { $place } the pressure cooker saves about { $saved } % of the gas for { $food } against an open pot.
            The cooker itself takes { $first }; an open pot { $open }.
        [in-cooker] At { $place } a meal in the pressure cooker takes { $first }, in an open
            pot { $open }; water for tea and packets { $boiled }. Over that carry a quarter more for cold and wind.
       *[in-pot] At { $place } { $food } simmered in an open pot takes { $first }, in a pressure
            cooker { $cooker }; water for tea and packets { $boiled }.
    }{ $example ->
        [yes] { " " }No elevation was given, so { $place } serves as an example.
       *[no] { "" }
    }
for-litres = About { $gas } of gas to bring { $litres } l of water to the boil at { $place }, with a lid and out of the wind.
for-days =
    { $verdict ->
        [yes] Yes: { $own } is enough. It takes about
        [no] No: { $own } is short. It takes about
       *[none] About
    } { $gas } of gas, { $canisters ->
        [one] one canister
       *[other] { $canisters } canisters
    } of 230 g, for { $heads } for { $one ->
        [yes] a day
       *[no] { $days } days
    } at { $place }: { $litres } l boiled a head a day, at { $each } g a litre{ $cooked ->
        [yes] , and as much again for what simmers.
       *[no] .
    }
lasts =
    { $own } of gas lasts { $heads } about { $one ->
        [yes] a day
       *[no] { $days } days
    } at { $place }: { $each } a day, for { $litres } l boiled a head and as much again for what simmers.
lasts-label = Days
gas-label = Gas
litre-label = Gas for a litre of water
snow-label = Gas for a litre from snow
open-label = Open pot, against { $baseline }
cooker-label = Pressure cooker, against { $baseline }
boiled-label = Water that is only boiled, against { $baseline }
cooked-too = That is for drinks and packet meals. Food that simmers 20 min takes as much again; count it double.
snow = Water from snow takes twice the gas.
spare = Carry about a quarter over the sum for wind, cold and spills, and twice the gas for water that is melted from snow. Ovens, fryers and griddles use what they did.
why =
    The boil is cooler, so the water gets there with a little less heat; what simmers in it takes longer, and that burns
    more. Thin air slows a burner (about { $kept } % of its heat is left at { $place }), which costs time and hardly gas.
a-litre = A litre is reckoned from cold water with some half of the heat going into the pot; an open wind can double it.
fumes = Never burn a stove in a closed tent, van or room: carbon monoxide has no smell. Open it high and low, and take the stove out before you sleep. A flame that burns yellow or leaves soot is short of air: air the room and have a gas fitter set it for the elevation.
