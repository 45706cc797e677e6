line =
    Below sea level more air presses on the pot, so water boils hotter: { $lowest_boil } at { $lowest_land }, about
    the lowest dry land there is.
paragraph =
    The air does not stop getting heavier at the shore. In a basin below sea level there is more of it overhead, and
    water has to get hotter before it boils: { $lowest_boil } at { $lowest_land }. { $boils } Down there boiled food
    is done a touch sooner, cakes rise a touch less, and candy has to be taken a little higher. The differences are
    small, because no dry land lies deep. Nothing about safe temperatures or canning is relaxed.
equations =
    { $boiling_equation } At { FIXED($lowest_land, 0) } m: p = { GROUPED($lowest_pressure, 0) } Pa, T_sat =
    { FIXED($lowest_boil, 2) } °C.
lowest-land-label = Boil on the lowest dry land
belief-cooks-faster = On the lowest land water boils at { $lowest_boil }, so boiled food is done a touch sooner.
