line =
    Light metal, which heats quickly and lets the edges and the middle set together; with glass or dark metal set the oven
    25 °F (14 °C) cooler.
paragraph =
    Glass is slow to warm and then holds its heat, so edges go dark before the middle is done; silicone hardly browns at all.
    { $gas_swells } A batter that rises early wants walls that are hot early. Grease well and fill no more than half.
equations = { $gas_equation }
