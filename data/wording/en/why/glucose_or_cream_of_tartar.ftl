line =
    Glucose: it stops graining by a set amount whatever the cooking time; acid goes on working as long as it boils, so its
    effect is harder to repeat.
paragraph =
    Take 10 to 20 % of the sugar's weight in glucose or corn syrup, or 1/8 tsp of cream of tartar to 1 lb (450 g) of sugar, not
    both. { $boils } The stage comes down with the boil; neither of the two changes that.
equations = { $boiling_equation }
