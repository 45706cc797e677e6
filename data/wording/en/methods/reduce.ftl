widest-pan = Use the widest pan you have, uncovered, over the strongest heat the liquid stands.
by-volume =
    Go by volume, not by the clock: stand a spoon handle in the pan, mark the level, and stop at the mark you want.
rate-label = Boiled off each minute by 1 kW
rate =
    The liquid is { $boil } while it reduces. It starts to boil sooner and browns less, but what is left when half is
    gone is the same half: concentration does not know the elevation.
rate-maths = L({ $boil } °C) = { $latent } kJ/kg; 60/L = { $rate } ml/min for 1 kW.
scorch = Turn the heat down for the last third and stir: a thick reduction scorches long before it looks dry.
