acid-label = Acid curd at
rennet-label = Rennet curd from
stretch-label = Stretch in water at
headline =
    For ricotta or paneer heat the milk to { $acid } and add the acid; rennet curd sets at { $rennet } at every elevation.
drain = Take it off the heat as the curd parts from clear whey, rest it 10 min, drain it cold and refrigerate.
because = Whey protein and casein clot by temperature and acid; the boil only sets the ceiling.
pressed =
    Water boils at { $boil } at { $place }, so the usual top of the range is at the boil: stay under it and give it a few
    minutes more.

stretched =
    For { $food } set the rennet curd at { $rennet } and stretch it in water of { $water }, the same at every elevation.
stretch-first = Stretch a small piece first: if it tears, the curd wants more time to sour, not hotter water.
stretched-because =
    Rennet sets by temperature and the curd stretches by its acid and its heat; both lie under the boil of any kitchen.

raw-milk = Use pasteurised milk: fresh cheese of raw milk is a known source of illness, worst for the pregnant.
