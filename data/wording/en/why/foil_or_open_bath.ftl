line =
    Cover it loosely with foil: dry, thin air skins the tops before the middles have set; lift a corner so that steam gets out, and
    uncover the last 5 minutes.
paragraph =
    Covered cups set evenly from the side and the top, about 5 minutes sooner than open ones. { $boils } The bath stays under
    that and custard sets far below it, so the oven stays where it was. Drips from the foil mark the tops, which sugar hides.
equations = { $boiling_equation }
