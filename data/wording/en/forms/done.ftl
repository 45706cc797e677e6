# $signs: what shows that it is done, a sentence of the dish classes
sign = { CAPITAL($food) }: { SMALL($signs) }{ $reads ->
        [yes] { " " }By thermometer { $reading } in the centre{ $where ->
            [here] { " " }at { $place }
           *[anywhere] { "" }
        }.
       *[no] { "" }
    }{ $safe ->
        [yes] { " " }It is safe long before, from { $core } in the centre.
       *[no] { "" }
    }
