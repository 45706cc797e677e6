not-broken = Nothing is broken, and it is not you.
not-you = It is the elevation and not you.
nothing-fits = I have no reason ready for that. Which dish is it, how do you cook it, and what did you see?
nearest = The nearest that can be explained: { $titles }.
