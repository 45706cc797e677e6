line =
    All that is thin, small or dry heat: noodles and pasta, rice, couscous, red lentils, eggs, fish, meat and roots in
    thin slices, and whatever is fried, grilled or baked.
paragraph =
    { $boils } Starch swells and meat sets well under that, so small pieces only take longer. Leave out whole dried beans and
    chickpeas, and be patient with whole potatoes and roots: under about { $pectin_slow } what holds them firm hardly loosens.
    Take tinned or instant beans, flakes and quick grains instead; tough cuts want hours, or an oven.
equations = Thin food heats through in a time that goes by the square of its thickness: half as thick, a quarter of the time.
