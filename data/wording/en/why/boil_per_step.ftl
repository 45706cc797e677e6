line =
    Water boils about { $step_at_sea } cooler for each { $thousand_feet } of climb near sea level, and about {
    $step_here } { $at }, where it boils at { $boil }.
paragraph =
    The air thins a little more slowly the higher one climbs, but the boil follows the pressure the faster, so the step
    grows a little with the elevation: { $step_at_sea } for { $thousand_feet } at the sea, { $step_here } { $at }.
    { $boils } For a quick reckoning take 1 °C for each 300 m, or 1.8 °F for each 1,000 ft.
equations = { $boiling_equation }
belief-rule-of-thumb =
    It is a good rule of thumb: 1 °C for each { $rule_step } puts the boil at { $boil_by_rule } { $at }, and in standard air it
    is { $boil }, { $rule_off ->
        [good] so near that no cook can tell.
       *[off] so up there look it up.
    }
