liquid-label = Liquid at a simmer
liquid-step = Hold it at a gentle simmer, about { $liquid }: small bubbles breaking now and then.
heat =
    Turning up the heat does not bring the time back: past { $boil } the burner only drives off water. A lid saves that
    water and some fuel.
thicken-step =
    { $of ->
        [grain] Stir it over direct heat, not in a double boiler, and let it bubble: the grain swells only near the boil.
       *[starch] Thicken over direct heat, not in a double boiler, and hold it at a full bubble for a minute or two; if it stays thin, stir in
            up to a fifth more of the starch as a slurry.
    }
thicken =
    Starch swells between 62 and 95 °C (144 and 203 °F). Here the boil is { $boil } and a double boiler stands some
    degrees below that.
