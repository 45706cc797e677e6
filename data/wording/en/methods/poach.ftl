label =
    { $held_in ->
        [bowl] Water under the bowl
       *[liquid] Poaching liquid
    }
step =
    { $held_in ->
        [bowl] Keep the water under the bowl at { $temp }, clear of the bowl, and stir all the time.
       *[liquid] Hold the liquid at { $temp } by thermometer, with hardly a bubble breaking: the look of the surface misleads
        where water boils cooler.
    }
reached = { $temp } lies under the boil of { $boil } here, so it can be held at this elevation too.
out-of-reach =
    The boil, { $boil } here, stands under the temperature you want: the liquid stops there, the time grows.
soft-near-the-boil = Fruit and roots soften only close to the boil, { $boil } here, so they poach at a bare simmer and take longer.
