line =
    Safe temperatures are the same { $at } as anywhere, because germs die by the heat in the food, not by the air
    around it.
paragraph =
    Whole cuts need { $safe_whole_cut } and three minutes' rest, ground meat { $safe_ground_meat }, poultry and
    leftovers { $safe_poultry }, here and everywhere. { $boils } That is still { $safe_margin } over what poultry
    needs, so even a simmer gets there. { $side ->
        [above] What changes is the time: cooler water takes longer to bring the middle up.
        [level] Higher up only the time changes.
       *[below] Only the time changes, and that hardly.
    } Holding and cooling limits do not move either. Canning does, because there the boiling itself is the heat that
    has to do the work.
equations =
    Margin = { FIXED($boil, 1) } − { FIXED($safe_poultry, 1) } = { FIXED($safe_margin, 1) } °C above the poultry
    limit.
poultry-limit-label = Poultry and leftovers, anywhere
caution = Check meat with a thermometer in the thickest part, at any elevation.
belief-drop = Germs die by the temperature of the food, so poultry needs { $safe_poultry } inside at every elevation.
belief-raise = { $safe_food } { $safe_own } in the middle { $at } as anywhere: the heat in the food does it, not the air around it.
belief-slower =
    A cooler boil is a little slower at it, but at { $boil } germs that are not spores still die within seconds, and spores
    live through any open boil.
food = { $named ->
    [yes] { CAPITAL($food) }:
   *[no] Ground meat:
}
