# Questions about time. $place says "at 7,000 ft (2,130 m)" or names a kitchen with it.

in-hours-or-minutes = Answer in hours or minutes.
about = about { $time }, { $span }
anything-from = anything from { $span }
within-percent = within { $percent } %
percent-longer = about { $percent } % longer

pasta = The box of spaghetti says { $time }, at sea level. About how long does it take { $place }?
in-water =
    In water at the boil { $food } { COUNT($food) ->
        [many] take
       *[one] takes
    } { $time } at sea level. About how long { $place }?
braised = A braise of { $food } takes { $time } at sea level. About how long { $place }?
bakery-to-lodge =
    In the oven of { $bakery }, { $elevation }, a braise of { $food } takes { $time }. About how long { $place }?
longer-why = It takes { $time }. Water boils at { $boil } { $place }. { $slower }

by-the-guide =
    The extension guide gives braised meat one quarter more time at { $guide }. Taken in proportion, how long is a braise of
    { $time } { $place }?
by-the-guide-why =
    In proportion that is about { $percent } % more { $place }: { $time } become { $longer }. By the heat alone it takes
    { $by_heat }, so start early and go by the fork.

murmur = A braise murmurs about { $under } under the boil. How hot is its liquid { $place }?
murmur-why =
    Water boils at { $boil } { $place }, so a bare simmer { $under } under it stands at { $liquid }. At sea level it stands at
    { $sea }.

braise-oven = At sea level a covered braise goes into an oven at { $setting }. How is the oven set { $place }?
as-at-sea-level = as at sea level
hotter = { $by } hotter
cooler = { $by } cooler
braise-oven-why =
    As at sea level, { $setting }: the pot is held by its liquid, which stands at { $liquid } { $place } however hot the oven.
    A hotter oven only boils it dry; the braise takes more time instead.

soft-egg =
    By the heat that reaches the yolk, how much longer than at sea level does a soft-boiled egg take { $place }?
soft-egg-why =
    By the heat on its way to the yolk, { $longer } { $place }: the yolk sets at { $yolk } everywhere, and water at { $boil }
    is still far over that. The extension guide is more generous, so open one to be sure.

open-pot-beans = Will soaked { $beans } soften in an open pot { $place }, given the time?
beans-soften-why =
    Yes: water boils at { $boil } { $place }, and they take about { $times } times as long as at sea level. The pressure cooker
    is the better way.
beans-stay-hard-why =
    No: water boils at { $boil } { $place }, and below about { $threshold } their skins hold out however long they cook. Use
    the pressure cooker.

under-pressure =
    A stew takes { $time } under pressure at sea level. How long { $place } by the published rule for pressure cookers, which
    adds time for each 1,000 ft over 2,000 ft? Answer in minutes.
under-pressure-why =
    The rule is 5 % more for each 1,000 ft over 2,000 ft, so { $percent } % { $place }: { $time }.

most-longer =
    Put these in order of how much longer they take { $place } than at sea level, the least longer first.
slowed = { $food } about { $times } times as long
most-longer-why =
    At { $boil } { $place }: { $foods }. Starch needs little more than the heat it gets; the walls of a bean hold out longest.

roast =
    USDA's advice for meat roasted at { $setting } in high places adds one quarter of the time. What becomes of { $time }
    { $place }?
roast-counts = within 5 min
roast-why =
    USDA's advice adds a quarter at { $setting }: { $time } become { $longer }. The oven is set as at sea level, and the roast
    is done when a thermometer in its middle says so.

dinner =
    At { $lodge }, { $elevation }, a braise of { $food } takes up to { $tender }, then rests { $rest }. How long before service
    must it simmer, to be safe?
dinner-counts = no more than 5 min less or 15 min more
dinner-why =
    Plan on the late end: { $tender } to be tender and { $rest } to rest make { $needed } before service. A braise that is
    ready early waits well; one that is late does not.
