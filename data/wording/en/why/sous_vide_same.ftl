line =
    A sous vide bath is held under the boil, so it is as hot as you set it { $at }{ $vegetable_bath ->
        [yes] ; times and temperatures stay.
       *[no] , up to the boil at { $boil }.
    }
paragraph =
    Air pressure decides one thing only: where water boils. A bath below that is simply as hot as the heater makes
    it. { $boils } { $vegetable_bath ->
        [yes] A steak at { $bath_for_steak } and vegetables at { $bath_for_vegetables } are both under it, so they
            take the time they take anywhere.
       *[no] A steak at { $bath_for_steak } is far under it, but a bath for vegetables at { $bath_for_vegetables }
            would boil, so those want a pressure cooker.
    } { $side ->
        [above] Two small things do change: the bath loses water faster, so cover it, and gas left in a bag swells
            more.
       *[other] That holds at any elevation.
    } The safe times for a given temperature stay as tested.
equations = { $boiling_equation }
belief-not-affected = A bath under the boil is as hot as it is set, so times and temperatures stay, up to { $boil }.
