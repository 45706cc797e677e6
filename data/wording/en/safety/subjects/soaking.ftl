label = In cold water
# $verdict: whether the asker's own time fits: fits, short, long, none; $span: how long they soak
headline = { $verdict ->
    [fits] Yes: that is long enough. Soak dried beans { $span }, the same at any elevation.
    [short] Longer: soak dried beans { $span }, the same at any elevation; or take the quick way.
    [long] Shorter: soak dried beans { $span }, the same at any elevation; past a day they begin to ferment.
   *[none] Soak dried beans { $span }, overnight, the same at any elevation.
}
cold = In three times their bulk of cold water; over 12 hours, or in a warm kitchen, in the refrigerator.
quick = The quick way: boil them 2 min, cover, and let them stand off the heat for 1 h.
salt = 1 tbsp of salt to 8 cups (2 l) of the water makes the skins tender. Drain, and cook them in fresh water.
because =
    A soak fills the bean with water, and that goes by time and warmth, not by air pressure. It saves a quarter to a
    third of the cooking, which high up is most of what can be saved in an open pot.
boil-first =
    Kidney beans and their kind boil hard for 30 min in fresh water before anything slower, soaked or not.
