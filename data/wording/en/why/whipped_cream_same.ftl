line =
    Cream whips { $at } as anywhere, because its bubbles are filled and stay under the same air; it is foams that go
    into an oven that swell.
paragraph =
    Whipping traps the air of the kitchen in cold fat, and no heat follows to stretch the bubbles. { $gas_swells } {
    $side ->
        [above] That matters only to foam that was made lower down or that is warmed later: a mousse carried up a pass
            swells, and egg whites in the oven swell much more.
       *[other] That matters only to foam that is carried to another elevation or warmed.
    } In dry kitchens cream loses water and turns grainy sooner, so stop a little early and keep it cold. A siphon
    works by its cartridge, whose pressure is far above any difference in the weather.
equations = { $gas_equation }
belief-more-chargers =
    A charger holds a weight of gas, nitrous oxide (N₂O) and no other, so one to the pint (half litre) does as ever; the foam
    only comes out a little lighter in thin air.
