line =
    { $side ->
        [above] Sugar delays the setting of a cake and water leaves it faster { $at }, so with a little less sugar
            the crumb sets in time.
        [level] The recipe's sugar is right { $at }; higher up it is cut a little, because sugar delays the setting.
       *[below] The recipe's sugar is right { $at }; it is cut only above sea level, because it delays the setting.
    }
paragraph =
    Sugar holds on to water, and starch and egg must get hotter before they set. { $side ->
        [above] { CAPITAL($at) } water leaves the batter some { $drying_percent } % faster, so what sugar there is
            grows stronger, while the bubbles grow sooner. A little less sugar lets the crumb set before they burst.
            The tested tables take away up to three tablespoons a cup at most.
        [level] { CAPITAL($at) } the recipe is in balance. Higher up the bubbles grow sooner and water leaves
            faster, so a tablespoon or two less in each cup lets the crumb set in time.
       *[below] { CAPITAL($at) } the bubbles are in no hurry, so there is nothing to correct.
    } It is the second thing to change, after the leavening. Cut too much and the cake turns pale and dry.
equations = { $drying_equation }
