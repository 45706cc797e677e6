line =
    { $side ->
        [above] Boiled vegetables take longer { $at } because the water stops at { $boil }, and their cell walls
            loosen by heat alone.
        [level] Boiled vegetables keep their usual times { $at }; higher up the cooler boil slows them.
       *[below] Boiled vegetables are done a little sooner { $at } because the boil is a little hotter.
    }
paragraph =
    A vegetable is tender when the pectin between its cells lets go, and that goes by temperature. { $boils }
    { $side ->
        [above] Carrots and beets feel it most and take { $pace_of_roots }; tender ones such as asparagus or
            broccoli take { $pace_of_tender_vegetables }.
        [level] The usual times hold for roots and for tender vegetables.
       *[below] Carrots and beets take { $pace_of_roots }; tender ones such as asparagus or broccoli take
            { $pace_of_tender_vegetables }.
    } Steaming is no faster, since steam in an open steamer is no hotter than the boil. Cut them small, keep the lid
    on, and go by the bite. Green ones lose colour with every extra minute, so taste early.
equations = { $boiling_equation } Roots: { $rate_of_roots } Tender vegetables: { $rate_of_tender_vegetables }
root-time-factor-label = Time against sea level, root vegetables
tender-time-factor-label = Time against sea level, tender vegetables
