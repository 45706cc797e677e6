headline =
    Induction for pots and kettles{ $noticed ->
        [yes] : it keeps its full power at { $place }, where a gas burner that nobody has adjusted gives about { $lost } % less
       *[no] , though at { $place } gas has lost next to nothing
    }. Gas for what wants a flame: woks, rotis, charring. Either way water boils at { $boil }, so the food in the pot takes as
    long.{ $example ->
        [yes] { " " }No elevation was given, so { $place } serves as an example.
       *[no] { "" }
    }
gas-label = Heat a gas burner keeps
induction-label = Heat an induction plate keeps
split = For a rush have both: boil and hold on induction, finish on the flame. A pressure cooker saves more than either.
supply = Check the supply first: induction wants 2 to 3.5 kW a zone and steady voltage, and flat pans that hold a magnet; gas goes on in a power cut.
why = A flame burns only as much gas as there is oxygen for: the gas fitters' rule takes 4 % off for each 1,000 ft (300 m), above 2,000 ft (600 m). Induction needs no air.
fitter = Have gas burners set for the elevation by a licensed fitter. A yellow, sooty flame means carbon monoxide: turn it off and air the room.
