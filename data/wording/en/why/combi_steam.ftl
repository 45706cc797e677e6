line = Full steam in a combi is { $boil } { $at }, whatever the dial says, because its cabinet is open to the air.
paragraph =
    Steam that is not held under pressure is as hot as the boil. { $boils } { $side ->
        [above] Set the combi to 100 °C and full steam, and the food still stands at { $boil } as long as it is wet;
            the oven may heat its walls or the steam itself further, but that adds next to nothing.
        [level] So the 100 °C on the dial is what the food feels.
       *[below] So full steam is a touch hotter than the dial says.
    } { $side ->
        [above] Give steamed food the longer times of the boil, and set the altitude in the oven's service menu, since
            many models correct their sensors by it.
       *[other] Steaming times of the book hold.
    } Roasting on dry heat and steam below the boil, such as 180 °F (82 °C), stay as set.
equations = { $boiling_equation }
