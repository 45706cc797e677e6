# $doing is the message below, $subject the name of the dish where it stands alone.
takes =
    { $doing } { COUNT($subject) ->
        [many] take
       *[one] takes
    } { $here } at { $place }{ $against ->
        [other] , against { $base } at { $baseline }
        [same] , as at { $baseline }
       *[nothing] { "" }
    }.

# $way is a method, `dish` where the dish's name tells the method, `bare` where no dish is known.
doing =
    { $way ->
        [dish] { CAPITAL($food) }
        [bare] { CAPITAL($gerund) }
        [sous_vide] Cooking { $food } sous vide
       *[other] { CAPITAL($gerund) } { $food }
    }
