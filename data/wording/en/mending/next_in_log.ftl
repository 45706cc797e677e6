# What the log of earlier batches has to do with the next change.
several =
    The last batch changed more than one thing, so it cannot tell which of them made the difference. Change one at a time
    from here.
worse = The last change made it worse, so it goes back first.
further = The last change helped, so go half a step further with it.
too-far = The last change went too far: go back part of the way.
keep = The last change helped: keep it, and add this one.
no-difference = The last change made no difference: leave it as it is and try the next.
worse-with-it = The batch came out worse with it.

# a change taken back; $named is yes where the cook named what was changed
oven-back = Set the oven back to { $setting }, and change nothing else.
go-back = Go back to { $before } of { $item } from { $after }, and change nothing else.
undo =
    Undo the last change{ $named ->
        [yes] { " " }({ $item })
       *[no] { "" }
    }, and change nothing else.
