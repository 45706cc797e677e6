line =
    { $side ->
        [above] Air is a blanket on the pot: { $at } it is thinner, so water bubbles before it is really hot, at { $boil }, and
            food needs longer to get soft.
       *[other] Air is a blanket on the pot: by the sea it is thick, and bubbles lift it only at { $boil }; on a mountain they come
            too soon, and food takes longer.
    }
paragraph =
    Bubbles only mean that the steam is strong enough to lift the blanket. { $boils } More fire makes more bubbles, but not hotter
    water. A lid that is screwed down, a pressure cooker, is like a second blanket.
equations = { $boiling_equation }
