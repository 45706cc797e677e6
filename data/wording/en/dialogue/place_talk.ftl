# Places of a conversation that are held against each other, or listed.

# $name: of a place; $place: its elevation
named = { $name }, { $place }
taken-for-the-sea = I do not know how high { $name } is; I take its { $time } as at sea level.
differ =
    Faster at { $low }: water boils at { $low_boil } there, and at { $high_boil } at { $high }.
differ-same = { $low } and { $high } are as high, near enough: water boils at { $low_boil } at both.
differ-times = For { $dish } about { $low_time } at { $low }, { $high_time } at { $high }.
row = { $place }: water boils at { $boil }.
row-time = { $place }: water boils at { $boil }; { $dish } { $time }.
