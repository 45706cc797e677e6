dough = dough
# $against: usual or given, the time that the baseline's is, or same
headline =
    Let { $food } rise until doubled, { $here } at { $place }{ $against ->
        [usual] { " " }against the usual { $there } at { $baseline }.
        [given] { " " }against { $there } at { $baseline }.
       *[same] , as at { $baseline }.
    }
cold-rise = A rise of { $time } in the cold stays as it is at { $place }; watch the size.
gas = Room the same gas takes up
gas-against = Room the same gas takes up, against { $baseline }
maths = V here / V there = { $there } / { $here } = { $swell }, for dry gas at the same warmth.

presses-alike = The air presses as at { $baseline }, so the rise keeps its pace.
cold-because = In the cold the yeast sets the pace for hours, and a little more swelling hardly shows.
slower = The same gas takes only { $swell } times the room here, so dough rises more slowly.
because =
    Yeast works at the same pace, but its gas takes { $swell } times the room it takes at { $baseline }. With the yeast as
    written, doubling takes { $pace }; with less yeast, or in a cooler place, the usual time comes back.

marked-tub =
    Let it rise in a straight-sided tub with the start marked, and stop when it has just doubled: a dent of the finger
    stays.
two-rises = Punch it down and let it double again before shaping, to give back the time for flavour.
slow-it =
    Or use less yeast, or give it a night in the refrigerator. Keep it covered: a skin forms fast in dry air.

warmth = Proof at
warmth-headline = Proof dough at { $warmth } at { $place }, as anywhere; cooler gives back the time it loses.
sourdough-step = For sourdough stop the bulk rise at half to three quarters more, and finish it cold.
sourdough-because =
    A natural leaven takes hours, so its flavour suffers less; its dough overproofs all the same.
overproofed =
    Dough left to the recipe's clock here overproofs and falls in the oven; knead it down and shape it again.
