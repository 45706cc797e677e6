# what is told of where somebody cooks from now on
here = { $named ->
        [yes] { $name } is
       *[no] Your kitchen is
    } at { $elevation }; water boils at { $boil } there.
nowhere = Where your kitchen is, nobody has said yet.
by-device = { $here } By this device's own altitude, good to { $metres } m.
by-airport = { $here } Assumed: the device tells no altitude of its own, so this is the elevation of { $airport }, { $km } km away; say yours if the kitchen stands higher or lower.
