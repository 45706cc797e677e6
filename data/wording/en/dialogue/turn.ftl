# What is asked back where a turn about the dish that is talked of was not followed.

which-of-what = I did not follow that: which dish is it, and do you want how long, how hot, or how much?
which-of-it = I did not follow that about { $dish }: do you want how long, how hot, how much, or another dish or elevation?
which-of-it-there = I did not follow that about { $dish } at { $place }: do you want how long, how hot, how much, or another dish or elevation?
