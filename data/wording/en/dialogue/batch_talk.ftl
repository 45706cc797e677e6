# One batch after another. $batch is its number in the run, $wrong what went wrong with it, $changes what was changed.

noted =
    Batch { $batch }, { $recipe }{ $placed ->
        [yes] { " " }at { $place }
       *[no] { "" }
    }: { $fine ->
        [yes] nothing wrong
       *[no] { $wrong }
    }{ $changed ->
        [yes] { "; " }{ $assumed ->
            [yes] I take it you changed
           *[no] changed
        }: { $changes }
       *[no] { "" }
    }.
next = Next change: { $change }
keep = Keep it so. From the first batch to this one: { $changes }.
keep-plain = Nothing is wrong with it: keep it as it is.
apart = With { $item } it cannot be held against the others, so the next change goes on from the batch before it.
raises-itself = It brings its own raising agent, so no baking powder goes in with it; what follows is for plain flour.
# $line is the ingredient with the amount it stands at
amount-now = { $line } in { $recipe } at { $place }, as the batches stand now.
# a batch made bigger: $mass of it baked, $factor times the recipe
bigger = { $mass } of it is { $factor } times the recipe of batch { $batch }, a tenth reckoned lost in the oven.
bigger-tins = { $mass } of it in { $count } is { $factor } times the recipe of batch { $batch }: { $each } of batter to each, and no tin over two thirds full.
bigger-oven = A deeper cake wants the oven 10 °C (20 °F) cooler and longer: begin testing at the time of the small one, and go by a clean skewer.
# an oven that shows no figures
by-hand = An oven without figures is read by hand or by flour.
by-flour = { $way ->
        [cool] Strew a spoon of flour on a tray and look after 5 min: pale straw is about { $setting }.
        [middle] Strew a spoon of flour on a tray and look after 5 min: golden is about { $setting }, and white paper is light tan.
       *[hot] Strew a spoon of flour on a tray and look after 5 min: dark brown is { $setting } or hotter, and white paper is brown too.
    }
seconds = { $count } seconds
by-count = Hold a bare hand in the open door, clear of metal and coals, and count the seconds until you must draw it out: about { $seconds }. Out at once when it stings.
by-trial = Then bake one small cake of the batter first: it tells the heat of your own oven better than either.
summed = { CAPITAL($recipe) }, from the first of { $count } batches to the last: { $changes }.
nothing-changed = Nothing was changed yet in the batches of { $recipe } that you told me of.
how-came-out = How did batch { $batch } come out?
no-such = There is no batch { $batch }; you told me of { $count }.
taken-back = Batch { $batch } is taken back.
kept = { CAPITAL($recipe) } as converted to { $place } is batch 1. Tell me how it comes out.

# $batches are their numbers in the log
logged = In the log as { $batches }.
not-logged = I keep these batches only while we talk; there is no log here.
