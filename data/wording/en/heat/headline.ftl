# $here is `about` below, $doing the message `doing`.
takes =
    { CAPITAL($here) } for { $doing } at { $place }{ $against ->
        [other] , against { $base } at { $baseline }
        [same] , as at { $baseline }
       *[nothing] { "" }
    }.{ $wide ->
        [yes] { " " }It goes by { $varies }{ $ask ->
            [piece] : say { $piece }
            [recipe] ; your own recipe's time narrows it
           *[nothing] { "" }
        }.
       *[no] { "" }
    }

# A time with its range: the middle first. The range is left out when read aloud.
about = about { middle }
middle =
    { $time }{ $ranged ->
        [yes] { " " }({ $range })
       *[no] { "" }
    }

# $way: `dish` where the dish's name tells the method, `bare` where no dish is known, `around` where the method's words
# stand before and after the dish ("cooking steak sous vide"), else `before`.
doing =
    { $way ->
        [dish] { $food }
        [bare] { $gerund }
        [around] { $gerund } { $food } { $after }
       *[before] { $gerund } { $food }
    }
