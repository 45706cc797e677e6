# The log of batches as a table and a plot.
title = Batches of { $recipe }
outcome =
    { $outcome ->
        [helped] better
        [hurt] worse
       *[same] the same
    }
went-well = nothing wrong
none = –
of-five = { $rating } of 5
column-batch = No.
column-day = Day
column-place = Where
column-changed = What was changed
column-came-out = How it came out
column-rating = Rating
column-note = Note
came-out = { $outcome }: { $wrong }
rating-axis = Rating, 1 poor to 5 excellent
legend = ● nothing wrong; ○ something wrong; × not rated; ▲ better, ▼ worse than the batch before
# what the plot shows, for those who do not see it
told = { $title }, with their ratings: { $lines }.
told-row = No. { $number }, { $day }: { $about }
told-changed = changed { $text }
told-rating = rated { $rating } of 5
