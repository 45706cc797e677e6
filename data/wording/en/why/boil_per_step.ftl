line =
    Water boils about 1 °C cooler for each 300 m of climb, 1.8 °F for each 1,000 ft, low down and high up alike: { $boil } {
    $at }.
paragraph =
    The air thins a little more slowly the higher one climbs, and up there the boil gives way a little more to the same loss
    of pressure; the two make up for each other: 1 °C takes { $climb_per_k_at_sea } m at the sea and { $climb_per_k } m { $at }.
    { $boils } For a quick reckoning take 1 °C for each 300 m, or 1.8 °F for each 1,000 ft.
equations = { $boiling_equation }
belief-rule-of-thumb =
    { $rule_off ->
        [good] Yes, as a rule of thumb: 1 °C for each { $rule_step } puts the boil at { $boil_by_rule } { $at }, and in standard
            air it is { $boil }, so near that no cook can tell; it holds low down and high up alike.
       *[off] Not quite: 1 °C for each { $rule_step } puts the boil at { $boil_by_rule } { $at }, and in standard air it is {
            $boil }.
    }
belief-step-changes =
    The fall is even: 1 °C takes { $climb_per_k_at_sea } m at the sea and { $climb_per_k } m { $at }, so 1 °C for each 300 m,
    1.8 °F for each 1,000 ft, holds all the way up.
