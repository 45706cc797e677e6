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

# $way: `dish` where the dish's name tells the method, `bare` where no dish is known, `around` where the method's words
# stand before and after the dish ("Cooking steak sous vide"), else `before`.
doing =
    { $way ->
        [dish] { CAPITAL($food) }
        [bare] { CAPITAL($gerund) }
        [around] { CAPITAL($gerund) } { $food } { $after }
       *[before] { CAPITAL($gerund) } { $food }
    }
