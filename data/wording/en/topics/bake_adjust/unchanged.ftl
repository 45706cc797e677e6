# $noun is what stays, by $item where it is an ingredient
leave =
    Leave the { $noun ->
        [eggs] eggs as the recipe has them
        [oven] oven as the recipe has it
        [time] baking time as the recipe has it
        [pan] fill of the pan as the recipe has it
       *[item] { $item } as the recipe has it
    } for { $baked } at { $place }.
note = { $note }.
no-advice = No published advice changes it for { $baked }.
nothing = Nothing to change at { $place }: the published tables begin at { $begin }.
as-written = Bake as written at { $place }: the published tables begin at { $begin }.
dense-enough = Below that the air is dense enough that a recipe needs no adjustment.
leave-at = Leave the oven at { $setting } for { $baked } at { $place }.
# of a bake that such an item is no part of
has-none = { CAPITAL($baked) } usually has no { $item }, so there is none to change at { $place }. If your recipe lists some, tell me how much.
has-none-because = What lifts it is whipped egg or nothing at all: whip whites only to soft peaks, since the air in them swells more here.
