line = An electric kettle is switched off by its own steam, so it clicks off at the boil, { $boil } { $at }.
paragraph =
    Steam runs down a channel to a switch of two metals that bends when it gets hot, well under the boil of any town. { $boils }
    A kettle with a set temperature above that boils on and never clicks off: set it to the boil here or lower. An open lid keeps
    any kettle on.
equations = { $boiling_equation }
belief-cuts-out =
    The common kettle is switched off by its own steam, which comes at the boil, { $boil } { $at }; only one that is set to a hotter
    figure boils on and never clicks off.
