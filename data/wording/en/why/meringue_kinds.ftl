line =
    Italian or Swiss before French: sugar cooked or warmed into the whites makes a foam that stands; Swiss is the easier, as
    it needs no syrup stage.
paragraph =
    French meringue is the loosest foam and the first to weep and puff. { $gas_swells } For Swiss, warm whites and sugar over
    water to 160 °F (71 °C), stirring, then whip. For Italian the syrup's 244–248 °F (118–120 °C) { $side ->
        [above] comes down by { $drop }.
       *[other] stands.
    } Beat to
    soft, bending peaks only.
equations = { $gas_equation }
