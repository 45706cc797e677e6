line =
    { $side ->
        [above] Think of the air as a heavy blanket on the pot: up here the blanket is thinner, so the water jumps about in bubbles
            before it is really hot, at { $boil }, and cooler water needs longer to make food soft.
       *[other] Think of the air as a heavy blanket on the pot: by the sea it is thick and the water must get very hot, { $boil },
            before bubbles can lift it; on a mountain it is thinner, the bubbles come too soon, and food takes longer.
    }
paragraph =
    Bubbles only mean that the steam is strong enough to lift the blanket. { $boils } More fire makes more bubbles, but not hotter
    water. A lid that is screwed down, a pressure cooker, is like a second blanket.
equations = { $boiling_equation }
