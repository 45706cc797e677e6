line = Cold air does not move the boil, { $boil } { $at }; it only takes heat from the sides of the pot.
paragraph =
    Once water boils it is as hot as the pressure allows, whether the kitchen is warm or freezing. { $boils } Cold air makes
    the way to the boil longer and the plate cold sooner; a lid, a wind shield and warm plates mend that. Boiled food takes
    longer because the boil is cooler.
equations = { $boiling_equation }
belief-undercooks =
    It is the pressure, not the cold: the air presses with { $pressure } { $at }, so water boils at { $boil } in a warm kitchen as in
    a cold one; cold air only makes the way to the boil longer.
