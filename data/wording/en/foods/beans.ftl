# To stand after "dry", "soak" and the like: $beans is the dish, where it names a kind.
bare =
    { $kind ->
        [any] beans
       *[told] { $beans }
    }
first-boil =
    Soak them { $soak_low } to { $soak_high } h, pour the water away, and boil them hard in fresh water: { $full } min
    by FDA, { $least } min at the very least by extension advice. Take the { $full } min{ $where ->
        [cool] { " " }at { $place }, where water boils at { $boil }
       *[usual] { "" }
    }.
