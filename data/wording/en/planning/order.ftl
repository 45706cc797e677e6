# The order of a menu: what is said on the sheet and of a menu that cannot be read.

# what could not be read; $line: where it stands
too-large = The menu is larger than 1 MB. Give the dishes alone, a line each.
not-text = The menu is not text. Save it as plain text or as comma-separated values.
not-utf-8 = The menu is not in UTF-8; it was read as Windows-1252. Check the accents.
too-many-lines = Only the first { $most } lines were read; { $left } more were left out.
no-table = The table breaks off inside a quotation. Check its quotation marks.
too-long = Line { $line } is too long for a dish; it was left out.
told-twice =
    Line { $line }: the { $what ->
        [covers] number of covers
        [service] time of service
       *[other] { $what }
    } was told before; { $kept } stands and { $left } was left out.
no-covers = Line { $line }: "{ $text }" feeds nobody; give a number from 1 to { $most }.
no-share = Line { $line }: "{ $text }" is no take-rate; give one above 0 % and up to 100 %.
no-recipe = Line { $line }: there is no recipe { $file } beside the menu.
no-dish =
    Line { $line }: I know no dish in "{ $text }"{ $sure ->
        [yes] . Did you mean { $near }?
       *[no] . Name it as cooks do, or give its recipe.
    }
read-as = Line { $line }: "{ $text }" was read as { $dish }.
read-as-two = Line { $line }: "{ $text }" was read as { $dishes }.
without-meat = Line { $line }: { $dish } is reckoned without its meat, and more of the rest; your own recipe goes before it.
covers-unknown = Line { $line }: for how many is "{ $text }"? Give --covers 90, or put a number on the line.
bad-recipe = { $fault }
unread-recipe = { $file } cannot be opened.
stock-unreadable = The list of what is on hand is not text, or larger than 1 MB; nothing was deducted.
stock-line = On hand, line { $line }: "{ $text }" is no amount of anything I know; it was not deducted.

# the sheet
title =
    { $named ->
        [yes] Order for { $title }
       *[no] Order
    }
for-covers =
    { $counted ->
        [yes] { $covers } covers, { $place }
       *[no] { $place }
    }
served-at = service { $service }
margin-told = { $margin } % on top of what the guests take
store =
    { $id ->
        [meat] Meat and poultry
        [fish] Fish, on ice
        [cold] Dairy, eggs, cold
        [frozen] Frozen
        [produce] Produce
        [dry] Dry store
       *[other] Other
    }
# $way: more or less; $percent: by how much
part-changed = { $dish } ({ $percent } % { $way })
part-new = { $dish } (only here)
part = { $dish }
full-packs =
    { $amount } { $count ->
        [one] { $pack ->
            [bag] bag
            [box] box
            [can] can
            [no10] #10 can
            [jug] jug
            [tub] tub
            [bottle] bottle
            [block] block
           *[case] case
        }
       *[other] { $pack ->
            [bag] bags
            [box] boxes
            [can] cans
            [no10] #10 cans
            [jug] jugs
            [tub] tubs
            [bottle] bottles
            [block] blocks
           *[case] cases
        }
    } of { $size }
splits = { $amount } × { $size }
nothing = none, enough
loose-heading = Without a weight
loose-some = { $item }, as needed, for { $dishes }
loose-line = { $amount } { $item }, for { $dishes }

# what the elevation changes
effects-heading = What { $place } changes
longer = { $dish }: { $here } instead of { $there }.
shorter = { $dish }: { $here } instead of { $there }, by the oven that is set hotter.
water-more = { $dish }: { $water } of water, { $extra } of it for the elevation.
fuel-more = Fuel on the burners: about { $gas } of propane or butane, or { $electricity } kWh on electric hobs, more than at sea level. Reckoned from the heat that pots lose, lids on what is braised; an oven that is on longer comes on top.
fuel-same = Fuel on the burners: hardly more than at sea level. What the longer cooking takes, the cooler boil saves. An oven that is on longer comes on top.
unchanged = Portions stay as they are: elevation takes nothing off the plate.
same-place = At sea level nothing is changed.

made-heading = Only a recipe tells what goes in
made-line = { $dish }: make { $amount } for { $covers }
kind-line = { $dish }: reckoned by the usual formula of its kind; what makes it that comes on top
plates-heading = What is served, as cooked
plates-line =
    { $dish }, { $covers ->
        [one] 1 cover
       *[other] { $covers } covers
    }{ $way ->
        [main] { " " }as a main course
        [side] { " " }as a side
        [starter] { " " }as a starter
        [buffet] { " " }on a buffet
        [recipe] { " " }by its recipe
       *[head] { "" }
    }{ $weighed ->
        [yes] : { $amount }
       *[no] { "" }
    }
not-included = Not reckoned: seasoning, frying fat, garnish and drinks that the menu does not name.
left-out-heading = Left out
notes-heading = Read so
basis-line = Portions, packs and formulas are common practice; { $sources }.
basis-alone = Portions, packs and formulas are common practice.
by-source = yields by { $sources }
empty = Nothing on the menu could be reckoned.

# heads of the columns
columns-item = Item
columns-need = Need
columns-on-hand = On hand
columns-order = Order
columns-parts = For (at { $place })
