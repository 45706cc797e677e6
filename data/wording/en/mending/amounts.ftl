# The sentences that tell a cook to make a change. They open a sentence, and can go on after a colon.

# $own is yes where the amount is the cook's own, no where it is a round one
amount =
    Use { $now } of { $item } { $own ->
        [yes] instead of { $was }.
       *[no] where the recipe has { $was }.
    }
in-short = { $now } of { $item } (was { $was })
