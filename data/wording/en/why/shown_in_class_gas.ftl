line =
    Close a small balloon or a packet of crisps at a low town and carry it up, or put a marshmallow into a syringe, cap it and
    pull: the same gas takes up more room, { $gas_ratio } times { $at }.
paragraph =
    Less push from outside, bigger bubbles. { $gas_swells } Then bake two small cakes from one batter, one with the recipe's
    baking powder and one with a quarter less, side by side, and cut them through the middle: the first domes and sinks.
equations = { $gas_equation }
