headline =
    { $verdict ->
        [yes] Yes.{ " " }
        [no] No.{ " " }
       *[none] { "" }
    }{ $one ->
        [yes] A litre
       *[no] { $litres } l
    } of cold water comes to the boil at { $place } in about { $big ->
        [yes] { $kettle } in a boiling pan of 12 kW, { $camp } on a big gas ring, { $hob } on a 3.5 kW induction plate
       *[no] { $camp } on a camp stove, { $hob } on a hob, { $kettle } in an electric kettle
    }{ $way ->
        [less] : about { $less } % sooner than at { $baseline } with the same heat, since it boils at { $boil }.
        [more] : about { $less } % later than at { $baseline } with the same heat, since it boils at { $boil }.
       *[same] , as at { $baseline }.
    }
label =
    To the boil, { $pace ->
        [kettle] { $big ->
            [yes] boiling pan, 12 kW
           *[no] electric kettle
        }
        [hob] { $big ->
            [yes] induction plate, 3.5 kW
           *[no] kitchen hob
        }
       *[camp] { $big ->
            [yes] big gas ring
           *[no] camp stove
        }
    }
lid = Lid on, wide pot, out of the wind: wind alone can double it. Water from snow takes twice as long.
why = The water has fewer degrees to climb; a gas flame gives a little less in thin air, which often evens that out.
to-drink = Water from a stream, a lake or snow that is to be drunk is then kept boiling: 1 min, above 6,500 ft (2,000 m) 3 min.
