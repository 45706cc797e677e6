bath-label = Bath to warm them in
warm-label = Warmed for
headline =
    Hold them cold, not hot: poach ahead, ice water at once, up to a day covered with water at { $cold } or colder, and warm to
    order in water at { $bath } for { $warm }. Hot, at { $held } or over, only pasteurised eggs or firm yolks, within the hour.
under = Poach them a little under: the white set, the yolk soft. They take the same longer time here as any poached egg.
ice = Lift them into ice water until cold, trim them, and keep them under cold water on a tray, dated.
pass = At the pass warm a dozen at a time, drain on a cloth, salt, and send them.
runny = Runny yolks that are held, or that go to young, old, pregnant or ill people: pasteurised eggs only.
because = The bath is far under any kitchen's boil, so elevation has no part in the warming.
