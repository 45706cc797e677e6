# How much water or stock. $liquid: water, stock, wine; $what: what it is for

# $kind: cup (to each cup of it), guests, or amount; $bought, $served: as in topics/order
for-what =
    { $kind ->
        [cup] each cup of { $bought }
        [guests] { $amount } of { $bought }, { $guests } portions{ $served }
       *[amount] { $amount } of { $bought }
    }
# $told: more (more of it here), same (no more than at sea level), alone (elevation has no part in it)
total =
    { $told ->
        [more] About { $all } of { $liquid } for { $what }, at { $place }: { $sea } as at sea level and { $extra } more.
        [same] About { $all } of { $liquid } for { $what }, no more at { $place } than at sea level.
       *[alone] About { $all } of { $liquid } for { $what }.
    }
extra = About { $extra } more { $liquid } at { $place }, { $percent } % over sea level: { $all } in all for { $what }.
# the cook's own ratio, cups to a cup
verdict =
    { $verdict ->
        [short] No, { $own } to 1 is short here.
        [yes] Yes, { $own } to 1 does here.
       *[more] Yes, { $own } to 1 is more than enough.
    }

liquid-label = { CAPITAL($liquid) }
extra-label = More than at sea level
amount-label = { CAPITAL($bought) }
pan-label = To a full { $inches }-inch pan of { $dry } of { $food }

why =
    { $way ->
        [absorbed] All of it ends in the grain or leaves as steam.{ $moved ->
            [yes] { " " }It simmers longer here and no lid shuts quite, so cooks give it about { $percent } % more for each 1,000 ft{ $large ->
                [yes] , half of that in a large covered batch, which loses less
               *[no] { $steamed ->
                    [yes] , half of that in a covered pan, which loses less
                   *[no] { "" }
                }
            }.
           *[no] { "" }
        }
        [covers] It stands round the food, and what is more here is what the longer simmer boils off.
        [plenty] It is poured away, so elevation takes no more of it; the food only boils longer.
       *[brewed] What the grounds or leaves hold back is reckoned in. Elevation changes the strength, not the water.
    }
no-elevation =
    { $way ->
        [absorbed] That is at sea level; tell me your elevation for what to add.
        [covers] That is at sea level; tell me your elevation for what boils off.
       *[other] { "" }
    }
step =
    { $way ->
        [absorbed] { $moved ->
            [yes] Keep a little boiling water by: if the grain is firm when the pot is dry, add a splash, cover, and give it 5 min more.
           *[no] Keep the lid on, and let it stand covered 10 min before you fluff it.
        }
        [covers] Keep the liquid at the depth it began with: look at it half way, and top up with hot liquid.
        [plenty] Let the water boil hard before the food goes in, and again before you count the time.
       *[brewed] Pour it at the full boil, and keep the lid on the pot.
    }
unknown = I know no usual amount of liquid for { $food }: take what the recipe has.
unknown-because = A longer simmer boils off a little more; tell me the time and the pot, and I reckon it.
