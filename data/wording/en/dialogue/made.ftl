# What is said about the conversation itself, and of the kitchen it is held in.

nothing-yet = There is nothing to go back to yet. Ask me about a dish, with your elevation.
drop = All right. What else?
clean-slate = A clean slate. What are you cooking?
clean-slate-in-kitchen = A clean slate; I still have your kitchen at { $place }. What are you cooking?
kitchen-forgotten = Forgotten: I no longer know your elevation or your equipment.
nothing-to-scale = I have no amount to work with yet: say how much, or for how many.

kitchen = I have your kitchen at { $place }.
kitchen-by-name = I have your kitchen, { $name }, at { $place }.
last-question = The last question was about { $last }.
no-kitchen-but-last = You have not told me where your kitchen is; the last question was about { $last }.
no-kitchen = I do not know your elevation yet; tell me in feet or metres, or name a town.
equipment = Equipment: { $owned }.
