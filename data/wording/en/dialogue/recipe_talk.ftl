# What is said of the recipe that was converted last. $place is where it is made, $line an ingredient line as it reads now.

how-many =
    The recipe does not say how much it makes. How many does it make as it stands? Then I work it out for { $wanted }.
part = { CAPITAL($part) } at { $place }: { $changes }.
part-stays = { CAPITAL($part) }: nothing in it changes at { $place }.
oven =
    Oven at { $place }: { $setting }, { $same ->
        [yes] as the recipe has it
       *[no] where the recipe says { $was }
    }.
no-oven = The recipe names no oven setting.
the-recipe = The recipe
grams = { $title } at { $place }, by weight: { $rows }.
weighed = { $grams } g { $item }
step = At { $place }: { $steps }.
line =
    At { $place }{ $same ->
        [yes] , as the recipe has it
       *[no] { "" }
    }: { $line }.
no-files = I write files only in the chat on your own machine: simmerline chat.

# what was done to it, before the recipe
amount =
    { $by ->
        [half] Half of it.
        [double] Twice the recipe.
        [triple] Three times the recipe.
       *[whole] The whole recipe.
    }
times = { $factor } times the recipe.
so-many = For { $count }.
put-right = Put right: { $line }.
swapped = Half of it as { $item }.
taken-out = Taken out: { $line }.
undone = As it was before.
