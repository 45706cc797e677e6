crock-label = The crock, once hot, about
crock-headline = At { $place } a slow cooker ends at about { $end }, a steady simmer, on LOW or HIGH.
start-thawed = Start with thawed food and warm liquid, and fill the crock half to two thirds.
lid-on = Leave the lid on: each look costs about a quarter of an hour.
advised =
    { $reach ->
        [out] Extension advice holds slow-cooked food at { $advised } or more. Water boils at { $boil } here, so that is
        out
        of reach: hold it at a steady simmer, and let the thermometer say when it is safe.
       *[in] Extension advice holds slow-cooked food at { $advised } or more, still under the boil of { $boil } here.
    }

no-time = No tested time is known for this; a cooler simmer softens it slower.
same = The simmer is as hot as at { $baseline }, so the time stays.
slower =
    The crock takes as long to get hot as anywhere; after that the food { $done ->
        [hot] gets hot through
       *[soft] softens
    } at a simmer that is cooler than at { $baseline }. Together that takes { $pace }.

published-label = By extension advice, on LOW
published =
    Extension advice adds an hour on LOW for every 4,000 ft, { $time } here{ $relation ->
        [less] , less than the range above: start to test then
        [more] , more than the range above: keep it on low and test
       *[overlaps] { "" }
    }.

boil-first-headline =
    Only if boiled first: soak { $beans }, drain them, and boil them hard { $full } min in fresh water{ $then ->
        [crock] ; then the crock takes { $time } at { $place }
       *[nothing] { "" }
    }.
boil-first-label = Boil hard first
boil-first =
    A slow cooker may never get hot enough to destroy their poison, and beans that are warmed without boiling can poison
    worse than raw ones.
never-dry =
    Never put dry beans of this kind into a slow cooker as they are: their natural poison outlives its heat. They boil
    hard first, { $least } min at the very least.
then-label = Then in the crock

soak = Soak the beans 12 h and pour the water away before the crock.
boil-away = Boil them in plenty of water first, lid off, and pour it away.
beans =
    Extension advice for soaked beans on HIGH is about 3 h at low elevation and 4 to 5 h at 8,000 ft; go by the bean.

any-dry-beans = Any dry beans in it boil hard { $full } min first.
canned-beans =
    Canned beans go in as they are. Dry beans are soaked, drained and boiled hard in fresh water first, { $full } min
    ({ $least } min at the very least).
never-dry-in-it =
    Never put dry kidney, white, black or pinto beans into a slow cooker unboiled: they keep a natural poison.

warm-headline =
    No. { $asked } is the WARM setting: it only keeps hot what is cooked. Cook { $food } on LOW or HIGH.
never-on-warm = Never cook on WARM: food stays for hours where germs grow.
safety =
    Never cook on WARM, never start frozen meat in a slow cooker or reheat in one, and keep the food over 140 °F (60 °C)
    once it is hot; a large piece has to pass that within 4 h.
no-more-liquid = Little water leaves under the lid: add none until the end.
