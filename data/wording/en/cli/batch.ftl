kept = Kept: { $batch }
forgotten = Forgotten: batch { $batch }.
none = No batches yet. Begin with: simmerline batch note "butter cake" --rating 3
none-of-it = No batches of { $recipe } yet. Begin with: simmerline batch note "{ $recipe }" --rating 3
not-two = there are not two batches of { $recipe } to compare; see: simmerline batch list
of-two = batch { $first } is of { $recipe }, and batch { $second } of { $another }
no-such = there is no batch { $batch }; see them with: simmerline batch list
cannot-open = --recipe { $file } cannot be opened: { $reason }

# a batch in one line: the first two with a comma, a sentence for each of the rest
batch = batch { $batch }, { $recipe }, { $day }
at = at { $elevation }
recipe-for = recipe for { $elevation }
changed = changed: { $changes }
nothing-wrong = nothing wrong
rated = rated { $rating } of 5
closed = { $text }.
sentence = { CAPITAL($text) }.

# what to do next
keep-it = Nothing went wrong with it: keep it as it is now.
next = Next change: { $change }
why = Why: { $because }
after-that = After that: { $change }
caution =
    { $level ->
        [stop] Stop: { $caution }
       *[warn] Take care: { $caution }
    }
no-elevation =
    The elevation is not known, so this is for sea level; give --at 7000ft or put a kitchen in use.

# two batches side by side
column = batch { $batch }
made = made
kitchen = kitchen
elevation = elevation
was-changed = changed
went-wrong = went wrong
rating = rating
note = note
no-kitchen = none
not-known = not known
nothing = nothing
no-rating = none
of-five = { $rating } of 5
came-out =
    Batch { $second } came out { $outcome ->
        [helped] better than
        [hurt] worse than
       *[same] no better and no worse than
    } batch { $first }
by-one = { $came_out }: { $change }.
by-several =
    { $came_out }, with { $count } changes between them ({ $changes }), so it cannot tell which one did it.
by-nothing = { $came_out }, with nothing changed between them.
