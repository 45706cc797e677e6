# $told: whether the gas is for litres, for people and days, or for each litre alone
headline =
    { $told ->
        [litres] About { $gas } of gas and { $whole } on one camp stove for { $litres } l of boiling water from snow at
            { $place }: { $each } g a litre, twice the { $water } g of cold water.
        [people] About { $gas } of gas for { $heads } { $one ->
            [yes] a day
           *[no] for { $days } days
        } at { $place } where all water is snow: 4 l a head a day at { $each } g a litre.
       *[each] About { $each } g of gas and { $time } on a camp stove for each litre of boiling water from snow at
            { $place }, twice the { $water } g that cold water takes.
    }
gas-label = Gas for a litre from snow
time-label = Time for a litre from snow
wet-start = Keep a finger of water in the pot when the snow goes in: dry snow scorches the pot. Lid on, windscreen clear of the canister.
not-to-the-boil = For the bottle, melting is half of the gas; but what is drunk has to boil 3 minutes above 6,500 ft (2,000 m).
why = Melting takes as much heat again as bringing the water from cold to the boil; the elevation changes little of that. Wind and cold can double it.
fumes = Never burn a stove in a closed tent or van: carbon monoxide has no smell. Open it high and low.
