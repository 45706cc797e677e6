# What is said of the conversation itself: what was asked before, and what is left unasked.

# $place: an elevation; $dish: what it was said with
place-said = { $place }, as you said for { $dish }.
place-said-alone = { $place }, as you said.

# $doing: what is done to the dish: braising short ribs; $dishes: those before it
making = { CAPITAL($doing) }.
making-there = { CAPITAL($doing) } at { $place }.
served-at = To be served at { $time }.
made-before = Before that: { $dishes }.
nothing-made = You have not named a dish yet. What are you making?

first-asked = The first you asked: "{ $text }".
nothing-before = There is nothing before that to go back to.
nothing-said = Nothing has been said of that yet. Ask me about a dish, with your elevation.
nearest-meant = You have not asked about { $name } yet; this is { $dish }.

# $first, $then: a place with its elevation
highest = The highest is { $first }; then { $rest }.
lowest = The lowest is { $first }; then { $rest }.
place-named = { $name } at { $place }
fewer-places = You have named { $count ->
    [0] no place
   *[one] one place
} so far: { $places }.
no-places = You have named no place so far.
longest = The longest is { $first }; then { $rest }.
shortest = The shortest is { $first }; then { $rest }.
takes = { $doing }, { $time }
fewer-dishes = I have a time for only one dish so far: { $dishes }.
no-dishes = I have no time for any dish so far.

# after two utterances in a row that were not followed
offer =
    I did not follow that either. Of { $dish } I can tell how long, how hot, how much, when to start, why, and what went
    wrong; or name another dish, method or elevation. Say help for all of it.
offer-alone =
    I did not follow that either. Try it like this: "{ $example }". Say help for all that I can do.

no-times = I have no time for any dish yet. Say how long, or ask me about a dish.
