line =
    A lid does not make the boil hotter; it keeps the liquid and the heat in the pot{ $side ->
        [above] , and high up the pot is on the fire longer.
       *[other] .
    }
paragraph =
    Steam slips out under a loose lid, so the pressure inside is the air's own. { $boils } With the lid on it boils
    at the same temperature. What the lid does is hold back water: at a bare simmer a wide pot, 11 in (28 cm)
    across, loses about { $open_loss } an hour open and { $covered_loss } covered. Water that leaves takes heat with
    it, so a covered pot comes to the boil sooner and holds it on a small flame. It also steams what sticks out of
    the liquid.
equations =
    { $boiling_equation } A lid of 1 kg on 0.06 m² adds { $lid_adds_pressure } Pa at most, which is { $lid_adds } °C
    of boiling point.
covered-loss-label = Lost in an hour, covered
belief-raises-boil =
    A lid adds { $lid_adds } °C to the boil at the very most; it saves water, heat and time to the boil.
belief-cooks-faster =
    It comes to the boil sooner and holds it on a smaller flame, but the boil itself is as hot as with the lid off, so the
    food takes its usual time from there.
