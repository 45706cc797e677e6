line =
    Water freezes at { $ice } { $at } as anywhere, because pressure moves the freezing point by thousandths of a
    degree.
paragraph =
    Boiling makes steam, which needs a thousand times the room, so the air's push matters. Freezing hardly changes the
    room that water takes, so pressure has next to no say: the freezing point { $at } is { $freezing_moves } °C from
    that at sea level. Freezer times, ice cream and freezer jam stay as printed. That is also why an ice bath tests a
    thermometer at any elevation, while the boil has to be looked up. What thin, dry air does is dry food in the
    freezer, so wrap it tight.
equations = Freezing point moved by 0.0075 °C for a whole atmosphere: { $freezing_moves } °C here.
freezing-point-label = Water freezes at
belief-freezes-lower = The freezing point stays at { $ice }, to within thousandths of a degree.
belief-freezer-jam = Freezer jam is not boiled to a set, so its recipe stands at any elevation.
belief-hot-freezes-first =
    Hot water has further to go, so in a kitchen freezer the cold freezes first; what is told of the opposite has not held up
    when it was measured with care.
