# How what has failed can still be used; whether it can, or in part, stands in the catalogue.
sank-in-the-middle = Fill the dip with whipped cream or fruit, or cut it up for a trifle.
crumb-dry = Brush it with warm syrup while you can, or use it for a trifle or a pudding.
crumb-gummy = Slice it and toast the slices dry; a raw middle is not eaten.
crumb-dense = Slice it thin and toast it, or dry it for crumbs.
spread-too-far =
    Crumble it for a crust or over ice cream; chill the dough that is left for an hour and bake it on a cold
    tray.
baked-hard = Keep it overnight in a tin with a slice of bread, and it softens.
puffed-like-a-sponge = They are only soft, and eat well as little cakes.
loaf-dense = Slice it thin and toast it, or dry it for crumbs.
loaf-gummy = Bake it on, out of its pan, at 350 °F (177 °C) for 10 to 15 minutes; once cut, toast the slices.
loaf-collapsed =
    It eats as flatbread or toast. A dough that fell before baking can be knocked back, shaped and risen once
    more, for a shorter time.
sourdough-overproofed = Fold it, shape it cold and bake it in a tin, or as focaccia.
overproofed = Knock it back, shape it again and let it rise once more, for half the time; a laminated dough is baked at once.
rises-too-fast = Put it in the refrigerator, where it slows; a plain dough can be knocked back first.
crust-pale-or-soft = Put it back at 400 °F (204 °C) for 5 to 10 minutes, and cool it on a rack.
butter-leaked = Chill what is still raw for 30 minutes before it bakes; what has leaked eats well, but will not flake.
crust-soggy = Set the pan on the floor of the oven or over a low flame for some minutes, until the underside is dry.
filling-runs = Cool it fully, and if it still runs, spoon it over ice cream or boil the filling once more by itself.
puffs-collapsed = Pierce them and dry them at 300 °F (150 °C) for 10 minutes; flat ones take a filling on top.
weeps-or-stays-loose = Put it back in its bath until the middle reads 175 °F (79 °C), then chill it again.
stirred-custard-curdled =
    Take it off at once, strain it and whisk it with a spoon of cold cream; if it is past 190 °F (88 °C), no.
pastry-cream-thin =
    Bring it back to the boil, whisking, with 1 tsp of starch in cold milk for each cup, for 2 minutes.
curdled-by-heat = Strain or blend it, and serve it as a sauce; a set custard that has split stays so.
jelly-not-set =
    Warm a quarter of it, dissolve half as much gelatine again in that, stir it back in and chill it 4 hours.
jelly-rubbery = Melt it gently, stir in a fifth more liquid and chill it again.
starch-stays-thin = Stir in a slurry of 1 tbsp of starch to the cup, and bubble it for a full minute.
lumpy = Press it through a sieve or blend it, and bring it back to the boil.
culture-stayed-thin =
    If it smells clean and sour, warm it to 110 °F (43 °C) with a fresh spoon of yogurt for 4 hours more, or
    drain it.
candy-too-hard =
    Melt it slowly with 1 to 1½ cups (240 to 360 ml) of water to the batch, and boil it again, only to the
    reading for your elevation.
candy-grainy = Melt it again with ½ cup (120 ml) of water and a spoon of corn syrup, without stirring once it boils.
candy-too-soft = Put it back and boil it on to its stage, with a little water if it has set.
candy-fat-out = Stir in hot water a spoon at a time over a low flame until it comes together.
chocolate-seized =
    Whisk in hot water or cream a spoon at a time until it is smooth, and use it as a sauce; it no longer sets
    for dipping.
ganache-split = Whisk in warm milk a spoon at a time, from the middle.
set-too-loose =
    Boil it again by a tested recipe, to the setting point of your elevation, and use new lids; or keep it as
    syrup.
set-too-stiff =
    Warm it with a few spoons of water or juice to the jar, gently, until it spreads; it is kept in the
    refrigerator then. Jam that tastes burnt is not mended.
crystals-in-the-set = Warm it until they dissolve, and keep it in the refrigerator.
beans-hard =
    Keep them at the boil, or put them in a pressure cooker; ¼ tsp of baking soda to the pound (450 g) helps in
    hard water.
grain-hard = Sprinkle on ¼ cup (60 ml) of boiling water to the cup, cover it, and give it 5 to 10 minutes more on low.
rice-cooker-stops-early = Sprinkle on ¼ cup (60 ml) of hot water to the cup of rice and run the cycle once more.
risotto-stiff =
    Off the heat stir in hot stock, a ladle at a time, until it runs slowly when the plate is tilted, and serve it at once: it
    stiffens as it stands.
grain-gluey = Spread it on a tray to steam off; it does for fried rice or a pudding.
mash-gluey = Glue it stays; spread it in a dish with cheese and brown it.
roots-hard-inside = Cut them up and put them back, at a bare simmer.
strands-hard = Put it back into boiling water, and taste every minute.
dumpling-fell-apart = Fish them out and brown them in butter; steam the rest of the mixture instead.
meat-tough = Cover it, keep it at a simmer and try it every half hour.
meat-stringy = Shred it and let it stand in its sauce.
meat-dry = Slice it thin across the grain and warm it in gravy or stock.
boiled-dry = If it does not taste burnt, move it to a fresh pot without scraping, and add hot water.
scorched = Pour it into a fresh pot without scraping; what tastes burnt stays so.
pot-too-thin = Boil it down with the lid off, or bubble it a minute with a slurry of starch.
pot-too-thick = Thin it with hot stock or water, a ladle at a time.
egg-sauce-broke =
    Put a spoon of warm water, or a fresh yolk, in a clean bowl and whisk the broken sauce into it by drops.
butter-sauce-broke = Off the heat, whisk it by spoonfuls into a spoon of cold cream or water in a clean pan.
tamales-wet = Put them back, seam up, over water at a full boil, cover them with a cloth and the lid, and steam on; then let one stand 5 min before you judge it.
cheese-sauce-broke =
    Off the heat whisk in 1 tsp of starch in a spoon of wine or lemon juice, and warm it without boiling.
sauce-broke = Off the heat, whisk it by spoonfuls into a little warm water or cream.
milk-split = Blend or strain it; it is safe, and only looks curdled.
too-salty = Add unsalted liquid and more of everything else; nothing draws salt out.
takes-up-fat = Put it on a rack in a 400 °F (204 °C) oven for 5 minutes.
fries-limp = Fry them once more, hot and in small lots, until crisp.
dark-outside-raw-inside = Finish it in a 350 °F (177 °C) oven, by a thermometer.
meat-underdone = Put it back until a thermometer reads its safe temperature in the thickest part.
meat-grey = Dry it and brown it fast in a hotter pan, without cooking it through again.
shells-hollow = Hollow shells eat well, filled with more cream.
weeps-sugar = It is safe; blot it and serve it the same day.
top-cracked = Only the top is torn; cover it with fruit or sour cream.
jar-did-not-seal =
    Within 24 hours put it into the refrigerator, or process it again with a new lid for the full tested time.
pickles-soft =
    Only if they are not slimy, smell clean and had a tested process: chop them for relish. Slimy or off ones
    are thrown out.
kraut-soft = Only if it smells clean and sour and is not slimy, pink or mouldy; else throw it out.
sugar-pie-raw = Put it back at 325 °F (163 °C) under foil until the middle only trembles, then cool it fully.
pavlova-cracked = Fill the cracks with whipped cream and fruit, and serve it the same day.
fell-hanging = It eats well sliced and toasted, or as a pudding.
soft-cheesecake-runny = Chill it overnight; one that still runs bakes on under foil until it only trembles.
caramel-seized = Warm it gently, and it melts again.
egg-sponge-fell = Cut it in layers and soak them with syrup, or use it for a trifle.
roll-cracked = Brush it with syrup and hide the cracks under cream or icing sugar.
