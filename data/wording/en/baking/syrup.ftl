caramel = Sugar this hot holds no water any more; it browns by its own temperature, which the air does not change.
stage =
    The stage is how much water is left, and water boils at { $boil } at { $place } against { $baseline_boil } at
    { $baseline }; every stage moves by the same { $drop }. Boil water on your own thermometer that day and use its
    difference if it is not this.
