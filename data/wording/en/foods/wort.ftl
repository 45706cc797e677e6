rate-label = Bitterness formed each minute, against { $baseline }
hops-label = Hops in the boil for the same bitterness
same = The boil is as hot as at the baseline, so the hops give the same.
hotter = The hotter boil draws about { $more } % more bitterness from the hops.
headline =
    Boil { $food } as long as the recipe says at { $place } and use up to { $more } % more bittering hops, or boil them
    longer.
more-hops =
    For the same bitterness boil the bittering hops longer, or use up to { $more } % more of them; a long boil evens
    some of that out. Brewers also count it as a measured loss: keep notes from batch to batch.
by-volume = Go by the volume in the kettle: boil until it is down to the mark.
cooler =
    Hop acids turn bitter at a rate that falls with the boil: about { $less } % less each minute at { $boil }. How much
    boils off hangs on the burner, hardly on the elevation.
