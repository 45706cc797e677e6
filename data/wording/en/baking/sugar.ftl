more =
    In the denser air at { $place } less water leaves the batter, so it takes { $percent } % more sugar again without
    weakening.
less =
    Thin air dries a batter { $drying } times as fast, and what stays behind is sweeter. Sugar raises the temperature at
    which the crumb sets, so the tables take off { $percent } % at { $place } for this kind of bake.
