line =
    { $side ->
        [above] High up it dries before germs get going: thin, dry air takes the water off fast, the nights are cold, and salt does the
            rest; in the warm, damp air of a coast germs are quicker than the drying.
       *[other] In warm, damp air germs are quicker than the drying, so meat on a line rots; in the high mountains it is dry, cold and
            windy, and meat dries before germs get going.
    }
paragraph =
    Germs need water. { $side ->
        [above] { CAPITAL($at) } a surface dries about { $drying_percent } % faster than by the sea, in equally damp air.
       *[other] Thin air lets vapour go the faster.
    } Meat keeps once so little is left that they cannot grow, and the race is between that and their growth. Thin
    sheets of salted meat in dry wind, frosty nights and strong sun win it; the same meat at 25 °C in damp air loses it within a
    day or two, and no amount of sun makes up for that.
equations = { $drying_equation }
caution =
    In a warm or damp place do not dry raw meat on a line: make jerky, heated to { TEMP(160) } (poultry { TEMP(165) }) in the middle before
    it is dried. Throw away what smells, is slimy or has hung damp.
