line =
    Carry-over is heat moving from the outside of a roast to its middle, and that goes on { $at } as it does anywhere.
paragraph =
    When meat leaves the oven its outside is hotter than its middle, and the middle climbs until they meet, by 5 to 10
    °F (3 to 5 °C) for a roast and hardly at all for a chop. Air pressure has no part in that. { $side ->
        [above] Thin air cools the surface a little less by itself but dries it about { $drying_percent } % faster,
            which cools it more.
       *[other] The surface cools as the book says.
    } Tent the meat loosely, rest it on a warm plate, and take it out early by the rise you know. A safe reading is
    one the thermometer has shown, not one you expect.
equations = { $drying_equation }
