line =
    A stone of { $stone } on a wide lid would raise the boil by { $stone_adds } at the very most, and a lid that leaks
    raises it by nothing.
paragraph =
    To boil hotter the steam would have to be held in, and an ordinary lid rests on bare metal and lets it out. Even a
    perfect seal under { $stone } presses with only { $stone_presses } more on a pot 11 in (28 cm) across. { $boils }
    A pressure cooker does it with a rubber ring, a locked lid and a valve, and adds about { $cooker_gauge }. What the
    stone does is save water and heat, as any lid does that fits. Never clamp or tie a lid down: a pot without a valve
    can burst.
equations = { $stone_presses } more on 0.06 m² under 5 kg; that is { FIXED($stone_adds, 3) } °C of boiling point.
stone-adds-label = A stone on the lid adds at most
caution = Do not clamp, wire or tape a lid down. Without a safety valve a pot can burst and scald.
belief-pressure-cooker =
    Even a perfect seal under { $stone } would raise the boil by only { $stone_adds }, and a lid that leaks raises it
    by nothing.
belief-snow =
    Snow weighs next to nothing and cools the lid, so the pot is no hotter; a fitted lid out of the wind saves fuel, and only
    a locked cooker with a valve, or more time, helps.
