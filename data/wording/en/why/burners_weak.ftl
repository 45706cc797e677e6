line =
    { $side ->
        [above] Gas burners and grills feel weak { $at } because each breath of air holds only { $density_percent }
            % of the oxygen of sea level.
        [level] Gas burners and grills give their full heat { $at }; higher up the air holds less oxygen for the
            flame.
       *[below] Gas burners and grills give their full heat { $at }, where the air is denser than at sea level.
    }
paragraph =
    A flame needs oxygen as much as gas. { $side ->
        [above] { CAPITAL($at) } a given volume of standard air weighs { $density_percent } % of what it does at sea
            level, and its oxygen with it. Burners are fitted with smaller jets to suit, so they give less heat;
            left unfitted they burn yellow and dirty. Charcoal glows less fiercely for the same reason.
        [level] { CAPITAL($at) } burners and coals get what they were built for. Higher up they get less, and gas
            burners are fitted with smaller jets to suit.
       *[below] { CAPITAL($at) } a given volume of standard air weighs { $density_percent } % of what it does at sea
            level, so there is no shortage.
    } Electric elements and induction do not breathe, and lose nothing. On the grill open the vents, preheat longer,
    and go by the thermometer.
equations = Air density = (1 − 0.0065·{ FIXED($elevation, 0) }/288.15)^4.256 = { $density } of sea level.
caution =
    Have gas burners fitted for the elevation by a licensed gas fitter. A yellow, sooty flame means carbon monoxide:
    turn it off, air the room and have it seen to.
belief-of-oxygen =
    For a fire it is the oxygen, which thins with the pressure: the air still is 21 % oxygen, but each breath of it { $at }
    holds { $density_percent } % of the oxygen of sea level.
