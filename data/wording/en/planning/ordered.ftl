# The order of a menu that was told in talk: the packs of each store.

spare = The packs below hold { $percent } % more, to be safe.
# $rows: lines of the order, as below
store = { $store }: { $rows }.
# $order: the packs; $need: what they are for, with what is on top; $named: whether the name tells for which dishes
# $loose: whether it is bought by the weight that is needed
row =
    { $item }, { $order }{ $loose ->
        [yes] { $named ->
            [yes] { "" }
           *[no] { " " }for { $parts }
        }
       *[no] { $named ->
            [yes] { " " }for { $need }
           *[no] { " " }for { $need } in { $parts }
        }
    }
# $lines: what the elevation changes, dish by dish
effects = At { $place }: { $lines }.
# the gas of a menu; $line: how much more it is
fuel = { $line } That is for this menu at { $place }.
by-recipe = By its recipe: { $line }.
