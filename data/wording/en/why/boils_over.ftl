line =
    { $side ->
        [above] The steam in every bubble takes up { $gas_ratio } times the room { $at }, so foam climbs higher and
            sooner, and the boil comes before you look.
        [level] Foam climbs { $at } as the recipe expects; in thinner air its bubbles are bigger.
       *[below] Foam climbs a little less { $at }, where the air presses harder.
    }
paragraph =
    Milk, starch and sugar make a skin that traps steam. { $gas_swells } { $side ->
        [above] The liquid also comes to the boil sooner, having less far to go, so a pan that gave you time at sea
            level does not.
       *[other] So the usual room in the pan is enough.
    } Fill pans only { $side ->
        [above] half
       *[other] two thirds
    } full, turn the heat down as soon as it rises, and leave the lid ajar. A spoon across the pan or a little butter
    breaks the skin for a while.
equations = { $gas_equation }
belief-more =
    { $side ->
        [above] The steam in every bubble takes up { $gas_ratio } times the room { $at }, so foam climbs higher:
       *[other] In thinner air the steam in every bubble takes up more room, so foam climbs higher:
    } fill the pan half and turn it down as soon as it rises.
