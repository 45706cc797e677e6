line = A wide pan reduces faster because it takes more flame and gives the steam more room to leave.
paragraph =
    Water leaves a boil as fast as heat goes in: a wide bottom takes more of the burner, and its shallow liquid lets the bubbles
    break and the steam out over a larger surface, with less of it falling back from tall walls. { $boils } That sets how hot the
    liquid is, in any pan; the width sets how fast it goes. Watch the end: a thin layer catches sooner, so move to a smaller pan or turn
    the flame down for the last third.
equations =
    { $boils } Under the boil the loss goes by the open surface alone: twice as wide across is four times the surface.
