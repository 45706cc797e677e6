steam-label = Steam
steam-step = Bring the water to a full boil; the steam is { $steam }.
cabinet-step = Set full steam and heat the cabinet up first; the steam is { $steam }, whatever the display says.
lid = Keep the lid on, and count the time from the moment steam comes off freely.
heat =
    Steam over an open boil is exactly as hot as the boil, { $boil } here, so steaming slows as boiling does. Only
    pressure makes it hotter.
more-water =
    Put more water under the basket than at sea level and look after it: the longer time uses it up.
