boiled-down =
    The burner sets how fast water boils away, and steam takes about as much heat at any elevation. Go by the volume or the
    thermometer, not the clock.
# pace: what stands after "takes": "about 20 % longer"
simmering =
    Water boils at { $boil } at { $place }, against { $baseline_boil } at { $baseline }, and cooking at that heat takes
    { $pace }. Go by tenderness, not the clock.
to-the-centre =
    Water boils at { $boil } at { $place }, so the heat goes in a little more slowly. What is done at { $centre } in its centre is
    taken out by the thermometer, not the clock.
under-pressure =
    A gauge reads what the cooker adds to the air outside: at { $gauge } it is { $inside } inside at { $place }, against
    { $baseline_inside } at { $baseline }. The published rule is 5 % more time for each 1,000 ft above 2,000 ft.
slow-cook =
    A crock warms as slowly everywhere, which takes half of its time and three hours at the most; the rest goes by the boil of
    the place. Go by tenderness, not the clock.
liquid = The { $way ->
        [up] longer
       *[down] shorter
    } simmer boils off about { $amount } { $more ->
        [more] more
       *[less] less
    }, reckoned for a pot of 28 cm (11 in).
absorbed = The grain takes up its liquid, and the { $way ->
        [up] longer simmer takes
       *[down] shorter simmer leaves
    } some of it: look at the end of the time and { $way ->
        [up] add a splash of boiling water where it is firm and dry.
       *[down] let it stand covered where it is wet.
    }
same-gauge =
    The weight or setting stays and the time changes. A gauge at { $same } psi here would be as hot inside as { $gauge } psi
    at { $baseline }; use it only where your cooker is marked for it.
