line =
    { $side ->
        [above] Food dries about { $drying_percent } % faster in still air { $at }, even in equally damp air, because vapour gets
            away more easily through thin air.
        [level] Food dries at its usual rate { $at }; higher up vapour gets away more easily through thin air.
       *[below] Food dries about { $drying_percent } % more slowly { $at }, because vapour has denser air to get
            through.
    }
paragraph =
    Moisture leaves food by pushing through the air around it. The thinner the air, the less is in its way.
    { $side ->
        [above] { CAPITAL($at) } that alone makes drying about { $drying_percent } % faster in still air, { $drying_moving_percent } % in moving air, and mountain air is
            usually drier on top of it.
        [level] { CAPITAL($at) } the recipe's timing already allows for it.
       *[below] { CAPITAL($at) } that makes drying about { $drying_percent } % slower, though dry desert air can
            undo it.
    } Cut cheese, bread, dough and cooked rice show it first. Cover what rests, wrap what is cut, and bring out on
    the pass only what will be used.
equations = { $drying_equation }
belief-faster =
    Vapour gets away about { $drying_percent } % { $side ->
        [below] more slowly
       *[other] faster
    } { $at } in still, equally damp air, { $drying_moving_percent } % where the air moves, and more where the air is dry.
