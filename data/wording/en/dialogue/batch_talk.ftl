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
summed = { CAPITAL($recipe) }, from the first of { $count } batches to the last: { $changes }.
nothing-changed = Nothing was changed yet in the batches of { $recipe } that you told me of.
how-came-out = How did batch { $batch } come out?
no-such = There is no batch { $batch }; you told me of { $count }.
taken-back = Batch { $batch } is taken back.
kept = { CAPITAL($recipe) } as converted to { $place } is batch 1. Tell me how it comes out.

# $batches are their numbers in the log
logged = In the log as { $batches }.
not-logged = I keep these batches only while we talk; there is no log here.
