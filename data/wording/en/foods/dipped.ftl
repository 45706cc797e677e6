because =
    The dip only sets the skin, as the starch in it swells from about { TEMP(150) } on, far under the boil of { $boil } here. What
    makes the crust thick and the crumb chewy is how long it lies in the water, at any elevation; the oven cooks it through.
step = Turn them once, so that both sides lie in the water as long; lift them out as soon as the skin is set and bake them at once.
