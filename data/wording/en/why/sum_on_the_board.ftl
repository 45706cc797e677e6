line =
    { $elevation_m } m ÷ 300 m for each °C = { $rule_fall } °C, and 100 °C − { $rule_fall } °C = { $rule_left } °C; in standard air
    water boils at { $boil } { $at }.
paragraph =
    In feet: 1.8 °F off 212 °F for each 1,000 ft. { $boils } The exact way is two steps, the air's pressure from the height and
    the boil from the pressure, as the equations have it; weather moves it by 0.3 °C (0.6 °F) for each 10 hPa.
equations = { $boiling_equation }
