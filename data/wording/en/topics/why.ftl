nothing-fits = That is not among the things explained here yet.
nearest = The nearest that can be explained: { $titles }.
