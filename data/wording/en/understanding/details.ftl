# What is said of a detail beside the answer about the dish. Basis: USDA FSIS, Let's Talk Turkey (stuffing, from memory) and The Big Thaw (from frozen, from memory); conduction for the sizes; otherwise common practice.

stuffed-bird = Stuffed it takes 15 to 45 min longer, and the middle of the stuffing has to read { TEMP(165) } as well as the meat; fill it loosely, and only just before it goes in.
flattened-bird = Flattened it takes about a third less time, in an oven of { TEMP(425) } or so; the breast and the thigh still have to reach { TEMP(165) }.
seared-after = The sear behind it is 1 to 2 min a side in a very hot pan, patted dry first: it is for the crust, and no part of the cooking time.
frozen-dumpling = From frozen give them about 3 min more, and go by the middle, which has to be hot all through.
frozen-meat = From frozen it takes about half as long again, and never in a slow cooker or a smoker, which warm it too slowly; go by a thermometer in the middle.
frozen-vegetable = Frozen ones are blanched already: count from when the water boils again, and try them a third sooner.
tough-piece-size = The size of the pieces changes little, since a tough cut needs its time at the simmer to turn tender: for pieces of 3 to 5 cm (1 1/4 to 2 in) begin to test at the short end.
piece-size = Heat needs four times as long to the middle of a piece twice as thick, and a quarter for one half as thick: the time given is for the usual size.
bone = The bone changes the centre's temperature by nothing: simmered, meat on the bone takes a little longer; in dry heat, meat without one is done sooner and dries out first.
egg-size = For small eggs go by the short end of the range, for extra large ones add about 1 min to the long end.
egg-cold = Times for eggs are from the fridge; at room temperature take about 1 min off.
gluten-free = Gluten-free kinds go from firm to falling apart quickly: begin to try 2 min before the packet's time, and use plenty of water at a full boil.
water-under-the-boil = No: water that does not come to the boil shows by nothing that it was hot enough for long enough. Until it can boil use bottled water, or treat it with disinfectant tablets as their packet says; a child who is ill and cannot drink, or drinks and loses it, needs a doctor.
cold-rise = In the fridge the dough rises for 8 to 16 h and the cold sets the pace far more than the elevation; put it in before it has doubled, since it goes on rising until it is cold through.
dough-temperature = It is the dough's own temperature that sets the pace of its rise, not the room's: 9 °C (17 °F) cooler takes about twice as long, so go by doubling and not by the clock.
wrapped = Wrapped when its crust has the colour you want, it skips most of the stall and saves 1 to 3 h on a big cut; the crust turns softer.
slow-cooker-high = That is for LOW; on HIGH it takes a little more than half as long.
counted-from = Not from cold: in a pot the time counts from the boil or the simmer, in a pressure cooker from pressure, in an oven from when it is hot.
