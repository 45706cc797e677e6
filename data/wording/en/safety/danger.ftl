# What frames the words on a danger, which stand in dangers/.

ask = Ask: { $whom }

# the opening of a refusal that is pressed for once more; the reason stands behind it
pressed =
    { $how ->
        [luck] No. That it went well so far is luck, and luck is no method.
        [word] No, whoever says so.
        [small] No, not even a little, or once.
        [senses] No. Smell, taste, looks and a lid that went down tell nothing of it.
        [trim] No. Cutting, washing or scraping does not take it away.
        [cold] No. A cold room or a cold night is no refrigerator.
        [sure] No. I am sure of it.
        [time] No. Another time, shorter or longer, does not make it right.
        [added]
            { $family ->
                [canning] No. Vinegar, lemon or salt by the spoon makes no tested acid of it.
               *[other] No. What is added does not mend it.
            }
       *[again] No. That stands.
    }

frozen = Yes. Freezing keeps it safely, at every elevation, if it was cooked and chilled within 2 h or is fresh.
frozen-how =
    Blanch vegetables first; cool food that is hot in shallow pans; leave an inch (2.5 cm) free in rigid boxes, date them, and keep
    them at { TEMP(0) }. Thaw in the refrigerator.

boiled = Yes. { $time } of full rolling boil makes it safe from germs at every elevation, cool as the boil is up here.
boiled-why =
    Germs die within moments far below that heat; the minutes are the margin. A boil takes away no metal, salt, fuel or chemical.
