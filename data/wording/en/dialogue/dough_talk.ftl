# A baker's formula. $parts are its parts by weight, $each how much dough a piece takes, $all all the dough, in grams.

dough = the dough
part = { $item } { $grams } g
weights =
    { CAPITAL($title) }, { $count ->
        [1] { $all } g of dough
       *[other] { $count } × { $each } g = { $all } g of dough
    }: { $parts }.
put-right = Put right: { $line }.
# the converted formula for so much flour: $parts in grams
for-flour = { CAPITAL($title) } at { $place }, for { $flour } of flour: { $parts }.
