line = The elevation and not the latitude decides where water boils: { $boil } { $at }.
paragraph =
    Water boils by the air that presses on it, and that goes by the height. { $boils } Latitude comes in only by the warmth
    of the air: a warm column is taller, so at 3,000 m (10,000 ft) the tropics have about 14 hPa more than the standard, and
    water boils about 0.5 °C (0.9 °F) hotter there, not cooler; in a northern winter it is nearly a degree the other way.
equations = { $boiling_equation }
belief-lowers-boil =
    It is the elevation, not the latitude: water boils at about { $boil } { $at } in standard air, and the warm air of the tropics
    makes that half a degree hotter at the most, never cooler.
