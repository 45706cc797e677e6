# The signs of too little and too much of what raises a bake. $agent is soda, powder or yeast.

signs = { $agent ->
        [soda] The crumb and the taste tell: too little soda is low, tight, pale and sharp; too much is coarse, sunken, dark and soapy.
        [powder] The crumb tells: too little baking powder is low and tight; too much is coarse, sinks in the middle and tastes bitter.
       *[yeast] The rise tells: with too little yeast the dough is slow and the crumb tight; with too much it races, falls and tastes of beer.
    }
too-little = { $agent ->
        [soda] Too little: it stays low and dense, the crust is pale, and what is sour in the batter, molasses, buttermilk or honey, tastes sharp.
        [powder] Too little: it stays low, the crumb is dense, and the top may peak or crack late.
       *[yeast] Too little: it has not doubled well past its time, bursts at the side and is dense at the base.
    }
too-much = { $agent ->
        [soda] Too much: it runs over or sinks in the middle, the holes are coarse, the crust is very brown, and it tastes soapy or salty.
        [powder] Too much: it shoots up and falls in the middle, the holes are coarse, and it tastes bitter or metallic.
       *[yeast] Too much: it doubles long before its time, tears or falls in the oven, and the crust stays pale.
    }
step = { $agent ->
        [soda] Put it right by 1/8 tsp a batch, and change nothing else with it. Leave enough for the acid: about 1/2 tsp to a cup of molasses or buttermilk.
        [powder] Put it right by 1/8 to 1/4 tsp a batch, and change nothing else with it.
       *[yeast] Put it right by a quarter of the yeast a batch, and go by the volume of the dough, not by the clock.
    }
why = { $agent ->
        [soda] Soda gives gas only where it meets acid. Short of it, the acid is left over; in excess, the soda is, and soda browns.
        [powder] The gas of the powder opens the crumb; what is too much for its walls bursts them before they set.
       *[yeast] The gas comes faster than the gluten can stretch, and yeast eats the sugar that would brown the crust.
    }
