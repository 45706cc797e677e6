slow-label = Slow: hold at
quick-label = Quick: hold at
time-label = For
headline =
    Pasteurise milk at { $vat } for { $vat_time } or { $flash } for { $flash_time }, the same at every elevation.
heat = Heat it in a double boiler, stirring, with a checked thermometer; keep the air over it hot too, under a lid.
richer = Cream, or milk with sugar: { $more } hotter. Then cool it fast in ice and refrigerate.
because =
    Germs in milk die by temperature and time, not by boiling as such, so the targets stay where they are though the boil
    moves.
out-of-reach = Of the printed rows an open pan at { $place } cannot reach { $lost }; you do not need them.
raw-milk =
    Raw milk can carry dangerous germs, worst for children, the pregnant and the old. Milk to be sold is pasteurised in
    approved equipment by licensed people.
