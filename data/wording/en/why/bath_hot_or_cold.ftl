line =
    Boiling water in the bath: it is at its heat when the tray goes in, so the time is one you can trust; cold water adds
    10 to 20 minutes and sets the rims unevenly.
paragraph =
    A bath never gets hotter than its boil, and custard sets far below it, so neither start is wrong for the texture; the hot
    one is steadier from tray to tray. { $boils } Keep the oven where it was, fill to half the height of the cups, and begin
    to look 5 minutes early: done is when the middle still trembles.
equations = { $boiling_equation }
