# A recipe that is told in pieces. $count is how many lines there are; $title the title where it alone was told.

titled = { $title }: go on with its lines; say that's all when it is whole.
ready = Go on, a line at a time; say that's all when it is whole.
so-far =
    { $count ->
        [1] One line
        [2] Two lines
        [3] Three lines
        [4] Four lines
        [5] Five lines
        [6] Six lines
        [7] Seven lines
        [8] Eight lines
        [9] Nine lines
       *[other] { $count } lines
    } so far; say that's all when it is whole.
read-out = So far: { $lines }. Say that's all when it is whole.
no-lines = There is no ingredient yet: tell me the first with its amount, or say never mind.
dropped = All right, the recipe is dropped. What else?
put-right =
    { $out ->
        [yes] Taken out: { $line }.
       *[no] Put right: { $line }.
    } Go on; say that's all when it is whole.
