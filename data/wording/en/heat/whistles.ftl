label = Whistles here
headline =
    About { $count ->
        [one] one whistle
       *[other] { $count } whistles
    }{ $ranged ->
        [yes] { " " }({ $low } to { $high })
       *[no] { "" }
    } for { $food } at { $place }, or { $minutes } at pressure{ $against ->
        [other] , against { $base ->
            [one] one
           *[other] { $base }
        } at { $baseline }
        [same] , as at { $baseline }
       *[nothing] { "" }
    }.
because =
    A whistle stands for { $low } to { $high } min at pressure on a medium flame; the first only tells that the pressure
    is there, and the slow fall of pressure at the end is worth about one. { $way ->
        [cooler]
            The weight adds the same to thinner air, so it whistles at { $here } inside at { $place } and not at
            { $there } as at { $baseline }: every whistle does less.
       *[same] The weight adds the same to the same air, so a whistle does as much as at { $baseline }.
    }
by-the-clock =
    A clock is surer than whistles, which come { $low } to { $high } min apart by flame, load and weight: from the first
    whistle turn the flame down until the weight only hisses, give it { $minutes }, and let the pressure fall by itself.
try-early =
    Or count: give it { $count ->
        [one] one whistle
       *[other] { $count } whistles
    }, let the pressure fall, and taste; then two or three more at a time, with water added as it needs.
