label = Blanch
headline = Blanch { $food } { $here } at { $place }, against { $sea } at sea level, from when the water boils again.
skin = Drop { $food } in for { $here } at { $place }, against { $sea } at sea level: out as soon as the skin lifts at the cross.
water = Plenty of salted water at a full boil, and small loads, so that it boils again within a minute.
ice = Bite one: bright, with a snap. Then into ice water until cold, and drain it at once.
hot-water = Lift it out with a spider; a basket that is dropped splashes.
because = Water boils at { $boil } here, and softens the bite more slowly; the colour is set in the first minute anywhere.
