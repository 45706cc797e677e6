# Which cut an animal was taken for.
taken-as = { $animal } taken as { $dish }; name the cut if it is another.
