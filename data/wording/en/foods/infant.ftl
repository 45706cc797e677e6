doctor =
    Follow the label and the advice of your doctor, above all for a baby under two months, born early, or ill. Some
    formulas must not be mixed hot.

mix-label = Mix powdered formula with water at or above
formula-use-within = Once mixed and not chilled, use within
formula-keep-cold = Chilled at once, keep no longer than
formula-headline =
    Mix infant formula with boiled water no cooler than { $hot }, cool it and feed at once; do not keep it warm.
formula-mix =
    Boil fresh water, let it stand no longer than { $stand } so that it is still { $hot } or hotter, and mix by the label.
formula-feed =
    Cool the closed bottle under running water to body warmth, about { $feed }, test a drop on the wrist, feed, and throw away what is left after 2 h.
formula =
    Powder is not sterile, and water at { $hot } kills what may grow in it. Water boils well above that wherever people
    live, so the temperature is the same at every elevation.

breast-milk-use-within = At room temperature, use within
breast-milk-keep-cold = In the refrigerator, keep no longer than
breast-milk-headline =
    Breast milk keeps up to 4 h at room temperature and 4 days in the refrigerator, the same at any elevation.
feed-label = Fed at
breast-milk-warm-headline =
    Warm breast milk to body warmth, about { $feed } and never over { $most }, the same at any elevation; it may also be fed cool.
breast-milk-warm = Warm it in a bowl of warm water, never in a microwave oven, and test a drop on the wrist.
