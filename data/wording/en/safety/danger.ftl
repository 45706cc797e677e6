# What frames the words on a danger, which stand in dangers/.

ask = Ask: { $whom }

# the opening of a refusal that is pressed for once more; the reason stands behind it
pressed =
    { $how ->
        [luck] No. That it went well so far is luck, and luck is no method.
        [word] No, whoever says so.
        [small] No, not even a little, or once.
        [senses] No. Smell, taste, looks and a lid that went down tell nothing of it.
        [sure] No. I am sure of it.
        [time] No. Another time, shorter or longer, does not make it right.
        [added]
            { $family ->
                [canning] No. Vinegar, lemon or salt by the spoon makes no tested acid of it.
               *[other] No. What is added does not mend it.
            }
       *[again] No. That stands.
    }
