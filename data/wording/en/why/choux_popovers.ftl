line =
    { $side ->
        [above] Choux and popovers are raised by steam, and { $at } it comes sooner and swells more, so the shell
            tears before it sets.
        [level] Choux and popovers that collapse { $at } came out before the shell was dry; higher up steam also
            lifts them too soon.
       *[below] Choux and popovers that collapse { $at } came out before the shell was dry.
    }
paragraph =
    There is no powder in them: water turns to steam and blows them up, and egg and flour set the shell.
    { $gas_swells } { $side ->
        [above] So they rise early, tear, and fall. A little more flour and egg and a little less fat make a
            stronger shell.
       *[other] So the recipe stands as written.
    } Start hot, do not open the door, and dry them well before they come out. Prick each one to let the steam go.
equations = { $gas_equation }
