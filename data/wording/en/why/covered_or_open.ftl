line =
    Lid on while it cooks, to keep its liquid and save heat; leave it off only to thicken it or to keep it from boiling over.
paragraph =
    An open pot cools itself, because every drop that leaves takes heat with it. { CAPITAL($at) } an open pot 11 in
    (28 cm) across loses about { $open_loss } in an hour of bare simmering at { $simmer }. Covered, it loses about a
    tenth of that. { $side ->
        [above] Simmering runs longer high up, so cover whatever has to keep its liquid: beans, rice, braises.
       *[other] Cover whatever has to keep its liquid: beans, rice, braises.
    } Leave it open for a stock that must not boil, and for a sauce you want thicker.
equations =
    { FIXED($open_loss, 0) } ml an hour × { $heat_of_simmer } kJ/kg / 3600 = { $open_pot_heat } W to hold the open
    pot at { FIXED($simmer, 1) } °C, before what its walls lose.
belief-open-sooner =
    Steam that leaves takes heat with it, so a covered pot comes to the boil sooner, and on a smaller flame.
