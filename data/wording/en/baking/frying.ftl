why = { $way ->
    [up]
        Water in the food boils at { $boil } at { $place }, so the crumb heats more slowly while the crust browns as
        before. Cooler fat lets them finish together: 3 °F (1.7 °C) for every 1,000 ft (305 m). The frying takes a little
        longer.
   *[down] Water in the food boils hotter at { $place }, so the fat can be hotter, up to 375 °F (190 °C).
}
