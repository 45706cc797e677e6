line =
    { $side ->
        [above] Starch finishes only near { $starch_thickens }, and { $at } a full boil is { $boil }: hold it 2 to 3 minutes,
            stirring, and take a little more starch.
        [level] A double boiler is hot enough for starch { $at }; higher up it is not, and puddings stay thin.
       *[below] A double boiler is hot enough for starch { $at }; a thin pudding wants more time or more starch.
    }
paragraph =
    Starch begins to swell at modest heat but reaches its full thickness only near { $starch_thickens }. { $boils }
    What stands over a double boiler is a few degrees cooler still, about { $double_boiler }. { $side ->
        [above] So the starch never quite finishes and the pudding stays thin or tastes of flour. Use direct heat:
            bring it to a full boil, stirring, and hold it there a minute or two longer than the recipe says.
        [level] So it thickens in its usual time. Higher up use direct heat instead.
       *[below] So it thickens in its usual time.
    } If it is thin all the same, a little more starch is better than more heat.
equations = { $boiling_equation }
