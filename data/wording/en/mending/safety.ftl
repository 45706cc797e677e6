# What a failed dish may do to somebody.

jar-lost-seal =
    Do not taste it. A jar that lost its seal on the shelf is thrown out unopened, bagged, out of reach of people and animals:
    botulism has no look and no smell.
jar-found-unsealed =
    A jar found unsealed within 24 hours of canning can go into the refrigerator, or be processed again with a new lid for the
    full time of the tested recipe.
jar-cloudy =
    Do not taste it. Cloudy liquid, rising bubbles, a spurt or an off smell can mean spoilage or botulism: throw the jar out
    unopened, bagged, out of reach of people and animals.
jar-lost-liquid =
    A sealed jar that lost some liquid is safe if it had the full tested process; do not open it to top it up. One that lost
    half or more goes into the refrigerator and is used within 2 to 3 days. One that did not seal is not kept on the shelf.
runny-jam =
    Runny jam that was processed and sealed is safe: use it as syrup, or cook it again by a tested recipe with new lids.
runny-yolk =
    For small children, the old, the pregnant and the ill cook eggs until white and yolk are firm, 160 °F (71 °C).
fat-smokes =
    Smoking or foaming fat can catch fire: turn the heat off and do not move the pot. If it burns, put a lid on it, never
    water.
cooker-leaks =
    Take the cooker off the heat and let it cool before you touch the lid; never force it. A cooker that still leaks with a
    new ring is not used.
warm-milk =
    Milk that stood warm for hours without souring is thrown out; so is anything pink, or with an off smell.
raw-batter = Batter that is still raw is not eaten: flour and eggs both carry germs.
boiled-dry = Let a pot that has boiled dry cool before you pour anything into it.

kidney-beans =
    Kidney beans and their kin that are not soft are not safe either: soak them and boil them hard for at least 10 minutes,
    better 30, before any slow cooking.
cooker =
    Never fill a pressure cooker past two thirds, half for beans and grains; keep the vent clear and let the pressure fall
    before you open it.
hot-fat = Hot fat burns and catches fire: never above 375 °F (190 °C), never left alone, the lid at hand.
hot-sugar = Hot sugar sticks and burns deep: long sleeves, a deep pot, no children near.

raw-meat =
    Do not serve it until the middle reads { $safe } on a thermometer; that is the same at every elevation.
raw-meat-by-kind =
    Do not serve it until the middle reads 165 °F (74 °C) for poultry, 160 °F (71 °C) for ground meat on a thermometer; that
    is the same at every elevation.
