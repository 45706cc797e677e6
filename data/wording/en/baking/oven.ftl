cooler = The rise is slower in the denser air at { $place }, so the crumb may set more slowly.
hotter =
    The gas in the batter takes { $swell } times the room it takes at { $baseline }. A hotter oven sets the crumb before it
    swells too far, and browns a crust that drying keeps pale. Extension guides give 15 to 25 °F (8 to 14 °C).
