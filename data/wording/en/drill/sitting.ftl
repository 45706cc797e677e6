# $themed is yes where themes were chosen, $named where the trainee gave a name.
begin =
    Set { $seed }, { $count } questions{ $themed ->
        [yes] { " " }on { $themes }
       *[no] { "" }
    }{ $named ->
        [yes] , for { $name }
       *[no] { "" }
    }. Say next to pass one over, hint for a hint, stop to end.
unread = { $unread } Say hint for a hint, next to pass it over, stop to end.
afresh =
    Say "quiz me{ $themed ->
        [yes] { " " }on { $themes }
       *[no] { "" }
    }, set { $seed }" for the same set, or "another quiz" for a new one.
