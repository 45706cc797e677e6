line =
    Water boils about { $step_at_sea } cooler for each { $thousand_feet } of climb near sea level, and about {
    $step_here } { $at }, where it boils at { $boil }.
paragraph =
    The air thins a little more slowly the higher one climbs, but the boil follows the pressure the faster, so the step
    grows a little with the elevation: { $step_at_sea } for { $thousand_feet } at the sea, { $step_here } { $at }.
    { $boils } For a quick reckoning take 1 °C for each 300 m, or 1.8 °F for each 1,000 ft.
equations = { $boiling_equation }
