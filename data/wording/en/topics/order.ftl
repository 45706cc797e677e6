# How much to buy or make. $way: main, side, starter, buffet or head; $bought: what is bought, as it is bought

it = it
# $state: dry, raw, bone_in, unpeeled, untrimmed, in_shell, shell_on, dough, batter, finished, in_pot or plain
bought =
    { $state ->
        [dry] dry { $food }
        [raw] raw { $food }
        [bone_in] bone-in { $food }
        [unpeeled] unpeeled { $food }
        [untrimmed] untrimmed { $food }
        [in_shell] { $food } in the shell
        [shell_on] shell-on { $food }
        [dough] dough for { $food }
        [batter] batter for { $food }
       *[other] { $food }
    }
# $named: yes where what is bought names the dish as well
bought-as =
    { $bought }{ $named ->
        [yes] { "" }
       *[no] { " " }for { $food }
    }
served =
    { $way ->
        [main] { " " }as a main course
        [side] { " " }as a side
        [starter] { " " }as a starter
        [buffet] { " " }on a buffet
       *[head] { "" }
    }

menu =
    { $counted ->
        [yes] For { $portions }: { $lines }.
       *[no] { CAPITAL($lines) }.
    }
# $some: whether other than all of the guests take it
menu-line =
    { $amount } of { $bought }{ $served }{ $some ->
        [yes] { " " }for { $guests }
       *[no] { "" }
    }
menu-because = Each dish is reckoned as if every guest has it. Where guests choose between mains, split them by what sells.

enough =
    { $verdict ->
        [no] No: { $own } of { $bought } is short for { $portions }{ $served }. They want about { $wanted }; yours does for about { $does }.
        [just] Just: { $own } of { $bought } does for about { $does }{ $served }; for { $portions } with second helpings take { $wanted }.
        [yes] Yes: { $own } of { $bought } is about right for { $portions }{ $served }, who want { $wanted }.
       *[plenty] Yes: { $own } of { $bought } is plenty for { $portions }{ $served }. They want about { $wanted }; yours does for about { $does }.
    }
feeds = { CAPITAL($own) } of { $bought }: about { $cooked } cooked, enough for about { $does }{ $served }.
start-with = Start with about { $raw } of { $bought } for { $own } cooked, which does for about { $does }{ $served }.

# $wet: whether it takes up water
as-before =
    The same: { $own } of { $bought } gives about { $cooked } here too ({ $percent } %), cooked to the same { $wet ->
        [yes] softness. It takes longer and a little more water, which boils off.
       *[no] point. In an open pot it takes longer; more is lost only where it dries or cooks past that.
    }
yields = About { $percent } % of { $bought } reaches the plate: { $raw } gives about { $cooked } cooked.
buy-weight =
    About { $raw } of { $bought } for { $guests }{ $served }: { $each } each{ $state ->
        [salad] .
       *[other] , { $cooked } cooked in all.
    }
buy-drawn = About { $raw } of { $bought } for { $guests }: { $each } each, { $cooked } in the cup in all.
buy-head = Allow { $raw } of { $bought } a head{ $served }, { $cooked } cooked.
# $told: what is told of the pieces: dozens, how many portions to each (shared), their size, or nothing more (counted)
buy-pieces =
    { $told ->
        [dozens] About { $amount } { $piece } ({ $dozens } dozen) for { $guests }.
        [shared] About { $amount } { $piece } of { $food } for { $guests }{ $served }, { $each } portions to each.
        [sized] About { $amount } { $piece } of { $size } for { $guests }{ $served }: { $raw } of { $bought } in all.
       *[counted] About { $amount } { $piece } for { $guests }{ $served }.
    }
# $made: yes where it is made from what is bought
buy-poured =
    About { $amount } of { $food } for { $guests }{ $served }: { $each } each{ $made ->
        [yes] , from about { $raw } of { $bought }
       *[no] { "" }
    }.
own-pieces = { $count } { $piece } of { $size }
own-counted = { $count } { $piece }

buy-label = { CAPITAL($bought) }
raw-label = Raw
cooked-label = Cooked
wanted-label = Wanted
enough-for-label = Enough for
yield-label = Cooked, of the raw weight
instead-label =
    { $way ->
        [main] As a main course instead
       *[buffet] On a buffet beside other mains
    }
pieces-label = { CAPITAL($piece) } of { $size }
# $pack: what it is sold in
in-packs =
    That is { $amount } { $count ->
        [one] { $pack ->
            [bag] bag
            [box] box
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
            [no10] #10 cans
            [jug] jugs
            [tub] tubs
            [bottle] bottles
            [block] blocks
           *[case] cases
        }
    } of { $size }, as they usually come.
in-sheets = That goes into the oven on { $holders }.
# $shelves: that the holders fill; $room: shelves of an oven; $loads: how often $ovens are filled
in-loads = It goes in on { $holders }: { $shelves } { $shelves ->
        [1] shelf
       *[other] shelves
    }, so { $loads ->
        [one] one load
       *[other] { $count } loads
    } of { $ovens ->
        [one] a full-size oven of { $room } shelves
       *[other] { $ovens } full-size ovens of { $room } shelves
    }.
holders =
    { $amount } full { $kind ->
        [pan] { $count ->
            [one] pan
           *[other] pans
        }
       *[sheet] { $count ->
            [one] sheet, 18 x 26 in (46 x 66 cm)
           *[other] sheets, 18 x 26 in (46 x 66 cm)
        }
    }
fits =
    { $ovens ->
        [one] A full-size oven of { $room } shelves takes
       *[other] { $ovens } full-size ovens of { $room } shelves take
    } { $holders }, of { $food } at a time: { $raw } as it goes in, about { $does } portions, { $each } to each.
oven-room = One sheet of 18 x 26 in (46 x 66 cm) or two full-size pans on a shelf, in one layer, so that hot air gets round.
# $mixed, $most, $plain: trays that the weight fills as a dry mix, as its flour or meal, and as it goes in
trays = About { $mixed } from { $own } of dry { $food } mix, once its liquid, eggs and fat are in: { $holds } of { $state ->
        [dough] dough
       *[batter] batter
    } and { $each } portions to each. As much { $item } alone makes { $most }, as much finished { $state ->
        [dough] dough
       *[batter] batter
    } { $plain }.
trays-label = Trays from a mix
in-pans = That fills { $pans }.
so-many-pans =
    { $amount } full { $inches }-inch { $count ->
        [one] pan
       *[other] pans
    }
water-label = { CAPITAL($liquid) } in all at { $place }
water-a-pan = { CAPITAL($liquid) } to each { $inches }-inch pan

shallow = Cook the grain in the shallow pans, tightly covered: a deep one stays wet below and dry above.
reckoned =
    { $way ->
        [main] Reckoned as a restaurant's main course; hearty eaters take a quarter more, children half.
        [side] Reckoned as one side beside a main course.
        [starter] Reckoned as a first course.
        [buffet] Reckoned as one of several dishes.
       *[head] Reckoned as one helping a head.
    }
swells = It comes to { $times } times its dry weight.
shrinks =
    About { $percent } % of what is bought reaches the plate; { $state ->
        [unpeeled] peel and cooking take
        [untrimmed] trim and cooking take
        [raw] trim and cooking take
        [in_shell] shell and cooking take
       *[other] bone, trim and cooking take
    } the rest.
buffet-over = A tenth is put on top, as a buffet must look full to the end.
elevation =
    Elevation changes none of these amounts{ $wet ->
        [yes] , only the liquid and the time
       *[no] { "" }
    }.

# one ingredient of a dish; $state: as that of what is bought
ingredient-for =
    About { $amount }{ $counted ->
        [yes] { "" }
       *[no] { " " }of { $item }
    } for { $what }: { $percent } % of { $made } of { $state ->
        [dough] dough
        [batter] batter
       *[other] { $food }
    }.
ingredient-makes =
    { $own } of { $item } makes about { $made } of { $state ->
        [dough] dough for { $food }
        [batter] batter for { $food }
       *[other] { $food }
    }: { $pans ->
        [yes] { $amount } full { $inches }-inch { $count ->
            [one] pan
           *[other] pans
        }
       *[no] { $amount } { $piece }
    }, enough for about { $does }.
ingredient-label = { CAPITAL($item) }
made-label = Made of it
by-formula = By a usual formula of the trade; your own recipe goes before it.
ingredient-changed = At { $place } the recipe takes { $percent } % { $way } { $item }, which is counted in.
by-count =
    { $amount } { $n ->
        [one] egg
       *[other] eggs
    }{ $many ->
        [yes] { " " }({ $dozens } dozen)
       *[no] { "" }
    }
# $told: pieces, pans or portions
so-many-of =
    { $told ->
        [pieces] { $amount } { $piece }{ $named ->
            [yes] { "" }
           *[no] { " " }of { $food }
        }
        [pans] { $amount } full { $inches }-inch { $count ->
            [one] pan
           *[other] pans
        } of { $food }
       *[portions] { $amount } portions of { $food }
    }

# $n: how many
piece =
    { $id ->
        [bird] { $n ->
            [one] bird
           *[other] birds
        }
        [hen] { $n ->
            [one] hen
           *[other] hens
        }
        [breast] { $n ->
            [one] breast
           *[other] breasts
        }
        [thigh] { $n ->
            [one] thigh
           *[other] thighs
        }
        [leg] { $n ->
            [one] leg
           *[other] legs
        }
        [drumstick] { $n ->
            [one] drumstick
           *[other] drumsticks
        }
        [wing] { $n ->
            [one] wing
           *[other] wings
        }
        [brisket] { $n ->
            [one] brisket
           *[other] briskets
        }
        [shoulder] { $n ->
            [one] shoulder
           *[other] shoulders
        }
        [ham] { $n ->
            [one] ham
           *[other] hams
        }
        [rib] { $n ->
            [one] rib roast
           *[other] rib roasts
        }
        [tenderloin] { $n ->
            [one] tenderloin
           *[other] tenderloins
        }
        [roast] { $n ->
            [one] roast
           *[other] roasts
        }
        [shank] { $n ->
            [one] shank
           *[other] shanks
        }
        [rack] { $n ->
            [one] rack
           *[other] racks
        }
        [patty] { $n ->
            [one] patty
           *[other] patties
        }
        [sausage] { $n ->
            [one] sausage
           *[other] sausages
        }
        [steak] { $n ->
            [one] steak
           *[other] steaks
        }
        [chop] { $n ->
            [one] chop
           *[other] chops
        }
        [side] { $n ->
            [one] side
           *[other] sides
        }
        [fish] fish
        [lobster] { $n ->
            [one] lobster
           *[other] lobsters
        }
        [egg] { $n ->
            [one] egg
           *[other] eggs
        }
        [potato] { $n ->
            [one] potato
           *[other] potatoes
        }
        [onion] { $n ->
            [one] onion
           *[other] onions
        }
        [carrot] { $n ->
            [one] carrot
           *[other] carrots
        }
        [head] { $n ->
            [one] head
           *[other] heads
        }
        [artichoke] { $n ->
            [one] artichoke
           *[other] artichokes
        }
        [ear] { $n ->
            [one] ear
           *[other] ears
        }
        [loaf] { $n ->
            [one] loaf
           *[other] loaves
        }
        [roll] { $n ->
            [one] roll
           *[other] rolls
        }
        [bagel] { $n ->
            [one] bagel
           *[other] bagels
        }
        [croissant] { $n ->
            [one] croissant
           *[other] croissants
        }
        [biscuit] { $n ->
            [one] biscuit
           *[other] biscuits
        }
        [scone] { $n ->
            [one] scone
           *[other] scones
        }
        [muffin] { $n ->
            [one] muffin
           *[other] muffins
        }
        [cupcake] { $n ->
            [one] cupcake
           *[other] cupcakes
        }
        [doughnut] { $n ->
            [one] doughnut
           *[other] doughnuts
        }
        [pancake] { $n ->
            [one] pancake
           *[other] pancakes
        }
        [waffle] { $n ->
            [one] waffle
           *[other] waffles
        }
        [cookie] { $n ->
            [one] cookie
           *[other] cookies
        }
        [brownie] { $n ->
            [one] square
           *[other] squares
        }
        [pie] { $n ->
            [one] pie
           *[other] pies
        }
        [cake] { $n ->
            [one] cake
           *[other] cakes
        }
        [pizza] { $n ->
            [one] pizza
           *[other] pizzas
        }
       *[full_pan] { $n ->
            [one] full pan
           *[other] full pans
        }
    }
