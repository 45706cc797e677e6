line =
    Only in a vacuum, under { $room_boils_at } at the most; { $at } water takes { $boil } to boil, and on the highest mountain
    about { $on_the_top }.
paragraph =
    Water boils where its steam can push the air away, so the less air there is, the cooler it boils. { $boils } A vacuum pump
    takes it all the way: water then boils in the hand, and is no hotter for it. It bubbles and cooks nothing.
equations = { $boiling_equation }
