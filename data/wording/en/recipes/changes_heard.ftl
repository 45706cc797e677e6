unknown-fault = I do not know the fault { $words }; near to it: { $near }
what-changed = say what was changed, such as: baking powder 2 tsp to 1 1/2 tsp
nothing-suggested = nothing has been suggested for this recipe yet; say what was changed
