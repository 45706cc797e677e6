asked = { $number } of { $count }, { $theme }. { $question }
option = { $letter }) { $option }
theme =
    { $theme ->
        [boiling] boiling
        [timing] timing
        [baking] baking
       *[safety] safety
    }
told = { $feedback } Source: { $sources }.
# $passed: how many were passed over, which count neither way
score = { $right } of { $answered } right{ $passed ->
    [0] { "" }
   *[other] , { $passed } passed over
}.
only-passed = { $passed } passed over, none answered.
reason = { $why } Source: { $sources }.
no-reason = The reason comes with the answer. Say hint for a hint, next to pass it over.
no-score = No question answered.

unread = I cannot read that as an answer. { $hint }
# $unit is what the figure is measured in; K is a difference of temperature.
give =
    { $unit ->
        [degC] Give a temperature, such as 199 F or 93 C.
        [K] Give a difference, such as 13 F or 7 C.
        [min] Give a time, such as 12 min or 2 h 30.
        [psi] Give a pressure, such as 15 psi or 103 kPa.
        [percent] Give a number of per cent, such as 20.
        [factor] Give a number, such as 1.3.
        [tsp] Give teaspoons, such as 1 1/2 tsp.
        [tbsp] Give tablespoons, such as 2 tbsp.
       *[m] Give an elevation, such as 7,000 ft or 2,130 m.
    }
answer-yes-or-no = Answer yes or no.
answer-a-letter = Answer with one letter, { $letters }.
answer-in-order = Answer with all the letters in order, such as { $letters }.
