same-everywhere =
    These are temperatures of the food itself, and germs die or grow by temperature and time, not by air pressure. So the
    limits are the same at every elevation.
still-above = Water boils at { $boil } at { $place }, still above every one of these limits.
