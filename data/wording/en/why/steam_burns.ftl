line =
    Steam { $at } is { $boil }, far hotter than skin can stand, and it gives up its heat as it turns to water on
    your skin.
paragraph =
    { $boils } Steam from an open pot is as hot as that. Skin scalds within seconds at { $skin_scalds }, and this is
    { $steam_over_scald } more. Worse, steam turns back to water on the skin and hands over the heat that made it
    before it cools: in all about { $steam_against_water } times what the same weight of boiling water gives as it cools. { $side ->
        [above] So elevation makes steam cooler, not safe.
       *[other] At any elevation it is the same.
    } Open lids away from you and keep dry cloths for hot handles.
equations =
    Steam gives { $heat_of_boil } kJ/kg as it turns to water; water from { FIXED($boil, 0) } to 35 °C gives
    4.2·{ $boil_over_skin } = { $heat_of_cooling } kJ/kg.
steam-heat-label = Steam against boiling water, heat given up
caution =
    Lift lids away from you and open pressure cookers only when the pressure is down. Cool a scald at once under
    cool running water for 20 minutes, and get medical help for anything larger than a hand or on the face.
belief-hand-in-the-boil = Boiling water { $at } is still { $boil }, and skin scalds at { $skin_scalds } within seconds: never put a hand in it.
belief-harmless = Steam { $at } is { $boil }, and skin scalds at { $skin_scalds }.
