line =
    { $side ->
        [above] Water has less far to go to its boil { $at }, { $heat_to_boil_less } % less heat, but is then only { $boil
            }, and food cooks by heat, not bubbles; coals and pans are as hot as ever.
        [level] Water comes to the boil { $at } in its usual time; higher up it boils sooner, but at a cooler boil.
       *[below] Water has a little further to go to its boil { $at }, and is hotter once it is there.
    }
paragraph =
    Bubbles show that steam can push the air away, not that the water is hot enough. { $boils } { $side ->
        [above] So the pot bubbles sooner, and everything in it is cooked in cooler water and takes longer. On gas the
            time saved is lost again, because the burner is weaker.
        [level] So the usual times hold.
       *[below] So it bubbles later and cooks a touch faster.
    } Cold water from the tap takes longer than warm, whatever is said of it: it has further to go. Start with cold
    for taste, and put on a lid for speed.
equations = { $boiling_equation } Heat from 15 °C to the boil = { $heat_to_boil } of sea level.
heat-to-boil-label = Heat to reach the boil, against sea level
belief-cold-boils-faster = Cold water has further to go and takes longer; it is chosen for its taste.
belief-cooks-faster = The pot bubbles sooner { $at }, but at only { $boil }, so what is in it takes longer.
belief-boils-sooner =
    It has less far to go, by { $heat_to_boil_less } % of the heat { $at }, though a weak gas flame can eat that up.
